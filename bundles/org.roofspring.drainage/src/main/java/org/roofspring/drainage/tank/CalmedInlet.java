package org.roofspring.drainage.tank;

import org.roofspring.drainage.Source;
import org.roofspring.drainage.internal.Require;

/**
 * An inlet near the floor whose mouth is turned up and widened, so that incoming water does not stir the sediment.
 *
 * @param flowM3PerS that comes in at most, from 0 to 100 m3/s
 * @param mouthM2    area of the mouth, from 1e-4 to 100 m2
 */
public record CalmedInlet(double flowM3PerS, double mouthM2) {
    /** Velocity in the mouth to stay below, unless another is given [m/s]. */
    public static final double DEFAULT_VELOCITY_M_PER_S = 0.1;
    /** Source of {@link #DEFAULT_VELOCITY_M_PER_S}. */
    public static final Source VELOCITY_SOURCE = Source.assumed(
            "a tenth of a metre a second leaves fine sediment lying");

    public CalmedInlet {
        flow(flowM3PerS);
        Require.range("mouthM2", mouthM2, 1e-4, 100, "a mouth from 0.0001 to 100 m2");
    }

    /** Velocity in the mouth [m/s]. */
    public double velocityMPerS() {
        return flowM3PerS / mouthM2;
    }

    /**
     * Area of the mouth [m2] that keeps to a velocity.
     *
     * @param flowM3PerS    from 0 to 100 m3/s
     * @param velocityMPerS from 0.001 to 10 m/s
     */
    public static double mouthForM2(double flowM3PerS, double velocityMPerS) {
        return flow(flowM3PerS)
                / Require.range("velocityMPerS", velocityMPerS, 0.001, 10, "a velocity from 0.001 to 10 m/s");
    }

    private static double flow(double flowM3PerS) {
        return Require.range("flowM3PerS", flowM3PerS, 0, 100, "a flow from 0 to 100 m3/s");
    }
}
