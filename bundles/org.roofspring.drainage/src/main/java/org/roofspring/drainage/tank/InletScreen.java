package org.roofspring.drainage.tank;

import org.roofspring.drainage.Source;
import org.roofspring.drainage.internal.Channel;
import org.roofspring.drainage.internal.Require;

/**
 * A screen that water passes under a small depth over it: {@code Q = Cd A open (1 - blocked) sqrt(2 g h)}.
 *
 * @param areaM2         of the screen, from 1e-4 to 100 m2
 * @param openRatio      share of it that is holes, from 0.05 to 0.95
 * @param blockedRatio   share of the holes that leaves and silt cover, from 0 to 0.95
 * @param headM          depth of water over it, from 0.001 to 1 m
 * @param dischargeRatio Cd of the holes, from 0.1 to 1
 */
public record InletScreen(double areaM2, double openRatio, double blockedRatio, double headM, double dischargeRatio) {
    /** Blockage unless another is given. */
    public static final double DEFAULT_BLOCKED_RATIO = 0.5;
    /** Source of {@link #DEFAULT_BLOCKED_RATIO}. */
    public static final Source BLOCKED_SOURCE = Source.fromMemory(
            "EN 12056-3:2000, which halves the flow through an outlet with a strainer");

    public InletScreen {
        Require.range("areaM2", areaM2, 1e-4, 100, "a screen area from 0.0001 to 100 m2");
        Require.range("openRatio", openRatio, 0.05, 0.95, "an open share from 0.05 to 0.95");
        Require.range("blockedRatio", blockedRatio, 0, 0.95, "a blocked share from 0 to 0.95");
        Require.range("headM", headM, 0.001, 1, "a depth from 0.001 to 1 m");
        Require.range("dischargeRatio", dischargeRatio, 0.1, 1, "a discharge coefficient from 0.1 to 1");
    }

    /** With ordinary blockage and sharp-edged holes. */
    public InletScreen(double areaM2, double openRatio, double headM) {
        this(areaM2, openRatio, DEFAULT_BLOCKED_RATIO, headM, Diverter.DEFAULT_DISCHARGE_RATIO);
    }

    /** What it passes [m3/s]. */
    public double capacityM3PerS() {
        return dischargeRatio * areaM2 * openRatio * (1 - blockedRatio) * Math.sqrt(2 * Channel.GRAVITY * headM);
    }

    /** Area of a like screen that passes a flow [m2]; the flow from 0 to 100 m3/s. */
    public double areaForM2(double flowM3PerS) {
        return areaM2 * Require.range("flowM3PerS", flowM3PerS, 0, 100, "a flow from 0 to 100 m3/s")
                / capacityM3PerS();
    }
}
