package org.roofspring.drainage.siting;

import org.roofspring.drainage.Source;
import org.roofspring.drainage.internal.Require;

/**
 * A latrine, soak pit or refuse heap near a tank.
 *
 * @param kind      of the source
 * @param distanceM from its edge to the tank, on plan, from 0 to 10000 m
 * @param riseM     of the ground at the source over the ground at the tank, below 0 where the tank stands higher, from
 *                  -1000 to 1000 m
 */
public record PollutionSource(Kind kind, double distanceM, double riseM) {
    /** Distance to keep from a tank set in the ground, unless another is given [m]. */
    public static final double DEFAULT_DISTANCE_M = 30;
    /** Source of {@link #DEFAULT_DISTANCE_M}. */
    public static final Source DISTANCE_SOURCE = Source.fromMemory(
            "The Sphere Handbook, excreta management: 30 m from a latrine to a ground water source, here applied to a"
                    + " tank set in the ground");

    /** What pollutes. */
    public enum Kind {
        LATRINE, SOAK_PIT, REFUSE, ANIMAL_PEN
    }

    /** How a source stands to a tank. */
    public enum Verdict {
        /** Far enough, and not uphill. */
        CLEAR,
        /** Far enough, but its seepage and run-off come down towards the tank. */
        UPHILL,
        /** Nearer than the distance to keep. */
        TOO_NEAR,
        /** Both. */
        TOO_NEAR_AND_UPHILL
    }

    public PollutionSource {
        Require.given("kind", kind);
        Require.range("distanceM", distanceM, 0, 10000, "a distance from 0 to 10000 m");
        Require.range("riseM", riseM, -1000, 1000, "a rise from -1000 to 1000 m");
    }

    /** Fall of the ground from the source to the tank per length; 0 where the two touch on level ground. */
    public double slopeRatio() {
        return riseM == 0 ? 0 : riseM / Math.max(distanceM, 0.01);
    }

    /**
     * How the source stands to a tank.
     *
     * @param keepDistanceM to keep, from 0 to 1000 m; the local code comes first
     */
    public Verdict verdict(double keepDistanceM) {
        Require.range("keepDistanceM", keepDistanceM, 0, 1000, "a distance from 0 to 1000 m");
        boolean near = distanceM < keepDistanceM;
        boolean uphill = riseM > 0;
        if (near) {
            return uphill ? Verdict.TOO_NEAR_AND_UPHILL : Verdict.TOO_NEAR;
        }
        return uphill ? Verdict.UPHILL : Verdict.CLEAR;
    }
}
