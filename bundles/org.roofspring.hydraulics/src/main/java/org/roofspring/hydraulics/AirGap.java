package org.roofspring.hydraulics;

import org.roofspring.hydraulics.internal.Require;

/**
 * The free fall between an outlet and the highest water below it, which keeps used water from being drawn back: at
 * least twice the diameter of the outlet and at least 25 mm (ASME A112.1.2, from memory; verify against it and the
 * local plumbing code, which goes before it).
 */
public final class AirGap {
    private AirGap() {
    }

    /**
     * Least air gap [m].
     *
     * @param outletDiameterM [m], 0.001 to 1
     */
    public static double leastM(double outletDiameterM) {
        return Math.max(0.025, 2 * Require.within("diameter of the outlet", outletDiameterM, 0.001, 1, "m"));
    }
}
