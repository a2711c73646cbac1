package org.roofspring.drainage.tank;

import org.roofspring.drainage.Source;
import org.roofspring.drainage.internal.Require;

/** The vent that lets a closed tank breathe: as much air must pass as water comes in or goes out at most. */
public final class Vent {
    /** Pressure or suction the tank may see, unless another is given [Pa]: a centimetre of water. */
    public static final double DEFAULT_PRESSURE_PA = 100;
    /** Source of {@link #DEFAULT_PRESSURE_PA}. */
    public static final Source PRESSURE_SOURCE = Source.assumed(
            "a thin-walled tank bears a centimetre of water of pressure or suction; ask its maker");

    private static final double AIR_KG_PER_M3 = 1.2;

    private Vent() {
    }

    /**
     * Open area that the vent needs [m2], mesh included: {@code A = Q / (Cd sqrt(2 dp / rho)) / open}.
     *
     * @param flowM3PerS the greater of all inlets running at once, and of all outlets and a siphoning overflow, from 0
     *                   to 100 m3/s
     * @param pressurePa that the tank may see, from 1 to 10000 Pa
     * @param openRatio  share of the mesh that is holes and not blocked, from 0.01 to 1
     */
    public static double areaM2(double flowM3PerS, double pressurePa, double openRatio) {
        Require.range("flowM3PerS", flowM3PerS, 0, 100, "a flow from 0 to 100 m3/s");
        Require.range("pressurePa", pressurePa, 1, 10000, "a pressure from 1 to 10000 Pa");
        Require.range("openRatio", openRatio, 0.01, 1, "an open share from 0.01 to 1");
        return flowM3PerS / (Diverter.DEFAULT_DISCHARGE_RATIO * Math.sqrt(2 * pressurePa / AIR_KG_PER_M3)) / openRatio;
    }

    /** Diameter of a round vent of that area [m]; arguments as in {@link #areaM2}. */
    public static double diameterM(double flowM3PerS, double pressurePa, double openRatio) {
        return Math.sqrt(4 / Math.PI * areaM2(flowM3PerS, pressurePa, openRatio));
    }
}
