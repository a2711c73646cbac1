package org.roofspring.hydraulics.pump;

import org.roofspring.hydraulics.PhysicalConstants;
import org.roofspring.hydraulics.PipeRun;
import org.roofspring.hydraulics.internal.Require;

/**
 * Depth of water over an intake that keeps air from being drawn in by a vortex: S = D (1 + 2.3 F), F = V / sqrt(g D) at
 * the mouth (ANSI/HI 9.8, from memory; verify against it). A submersible also needs what its maker asks to keep its
 * motor cool.
 */
public final class Submergence {
    private Submergence() {
    }

    /**
     * Least depth of water over the mouth [m].
     *
     * @param flowM3PerS [m3/s], 0 to 1000
     * @param mouthM     inside diameter of the mouth D [m], 0.005 to 10
     */
    public static double leastM(double flowM3PerS, double mouthM) {
        Require.within("flow", flowM3PerS, 0, PipeRun.HIGHEST_FLOW_M3_PER_S, "m3/s");
        Require.within("diameter of the mouth", mouthM, 0.005, 10, "m");
        double velocityMPerS = flowM3PerS / (Math.PI / 4 * mouthM * mouthM);
        return mouthM * (1 + 2.3 * velocityMPerS / Math.sqrt(PhysicalConstants.GRAVITY_M_PER_S2 * mouthM));
    }
}
