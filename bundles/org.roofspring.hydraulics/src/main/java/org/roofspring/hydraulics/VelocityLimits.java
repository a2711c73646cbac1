package org.roofspring.hydraulics;

import org.roofspring.hydraulics.internal.Require;

/**
 * How fast water should move in a pipe. Below the lower limit grit settles and air stays; above the upper one noise,
 * surge and wear grow. The defaults are common practice without a source; a local code goes before them.
 *
 * @param slowestMPerS [m/s], 0 to 10
 * @param fastestMPerS [m/s], above the slowest, to 20
 */
public record VelocityLimits(double slowestMPerS, double fastestMPerS) {
    /** Suction pipe: common practice, no source. */
    public static final VelocityLimits SUCTION = new VelocityLimits(0.3, 1.2);
    /** Delivery and supply pipe: common practice, no source. */
    public static final VelocityLimits DELIVERY = new VelocityLimits(0.5, 2.0);

    /** Where a velocity lies. */
    public enum Verdict {
        TOO_SLOW, WITHIN, TOO_FAST
    }

    public VelocityLimits {
        Require.within("slowest velocity", slowestMPerS, 0, 10, "m/s");
        Require.within("fastest velocity", fastestMPerS, Math.nextUp(slowestMPerS), 20, "m/s");
    }

    /** Judges a velocity [m/s], nil or more. */
    public Verdict judge(double velocityMPerS) {
        Require.within("velocity", velocityMPerS, 0, Double.MAX_VALUE, "m/s");
        return velocityMPerS < slowestMPerS ? Verdict.TOO_SLOW
                : velocityMPerS > fastestMPerS ? Verdict.TOO_FAST : Verdict.WITHIN;
    }

    /** Smallest bore that keeps a flow [m3/s] at or below the fastest velocity [m]. */
    public double smallestBoreM(double flowM3PerS) {
        Require.within("flow", flowM3PerS, 0, PipeRun.HIGHEST_FLOW_M3_PER_S, "m3/s");
        return Math.sqrt(4 * flowM3PerS / (Math.PI * fastestMPerS));
    }
}
