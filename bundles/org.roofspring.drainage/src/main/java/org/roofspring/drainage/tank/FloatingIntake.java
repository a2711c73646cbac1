package org.roofspring.drainage.tank;

import org.roofspring.drainage.Source;
import org.roofspring.drainage.internal.Channel;
import org.roofspring.drainage.internal.Require;

/**
 * An intake that hangs from a float, so that water is drawn from below the scum and above the sediment.
 *
 * @param flowM3PerS      drawn at most, from 1e-6 to 1 m3/s
 * @param boreM           of its mouth, from 0.005 to 0.5 m
 * @param floorClearanceM that the mouth keeps from the floor, from 0 to 2 m
 */
public record FloatingIntake(double flowM3PerS, double boreM, double floorClearanceM) {
    /** Source of {@link #submergenceM}. */
    public static final Source SUBMERGENCE_SOURCE = Source.fromMemory(
            "ANSI/HI 9.8, Rotodynamic pumps for pump intake design: S = D (1 + 2.3 Fr)");
    /** Clearance unless another is given [m]. */
    public static final double DEFAULT_FLOOR_CLEARANCE_M = 0.1;
    /** Source of {@link #DEFAULT_FLOOR_CLEARANCE_M}. */
    public static final Source CLEARANCE_SOURCE = Source.commonPractice("an intake a hand's breadth off the floor");

    public FloatingIntake {
        Require.range("flowM3PerS", flowM3PerS, 1e-6, 1, "a flow from 0.000001 to 1 m3/s");
        Require.range("boreM", boreM, 0.005, 0.5, "a bore from 0.005 to 0.5 m");
        Require.range("floorClearanceM", floorClearanceM, 0, 2, "a clearance from 0 to 2 m");
    }

    /** Velocity in the mouth [m/s]. */
    public double velocityMPerS() {
        return flowM3PerS / (Math.PI / 4 * boreM * boreM);
    }

    /** Depth of the mouth below the surface [m] that keeps a vortex from drawing air. */
    public double submergenceM() {
        double froude = velocityMPerS() / Math.sqrt(Channel.GRAVITY * boreM);
        return boreM * (1 + 2.3 * froude);
    }

    /** Level over the floor [m] below which nothing more should be drawn. */
    public double lowestLevelM() {
        return floorClearanceM + submergenceM();
    }

    /**
     * Volume that stays in the tank [m3].
     *
     * @param floorAreaM2 of an upright tank, from 0.01 to 10000 m2
     */
    public double deadVolumeM3(double floorAreaM2) {
        return lowestLevelM()
                * Require.range("floorAreaM2", floorAreaM2, 0.01, 1e4, "a floor area from 0.01 to 10000 m2");
    }
}
