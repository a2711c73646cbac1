package org.roofspring.hydraulics.pump;

import org.roofspring.hydraulics.PhysicalConstants;
import org.roofspring.hydraulics.internal.Require;

/** The elementary formulas of pumping; textbook definitions. */
public final class PumpLaws {
    private PumpLaws() {
    }

    /**
     * Power given to the water, P = rho g Q H [W].
     *
     * @param densityKgPerM3 [kg/m3], 900 to 1200
     * @param flowM3PerS     [m3/s], 0 to 1000
     * @param headM          [m], 0 to 1e6
     */
    public static double hydraulicPowerW(double densityKgPerM3, double flowM3PerS, double headM) {
        Require.within("density", densityKgPerM3, 900, 1200, "kg/m3");
        Require.within("flow", flowM3PerS, 0, 1000, "m3/s");
        Require.within("head", headM, 0, 1e6, "m");
        return densityKgPerM3 * PhysicalConstants.GRAVITY_M_PER_S2 * flowM3PerS * headM;
    }

    /**
     * Net positive suction head available [m], (p - pv) / (rho g) + z - hf. A negative answer means that the water
     * boils before it reaches the pump.
     *
     * @param surfacePressurePa  absolute pressure on the suction water [Pa], 0 to 1e8
     * @param vapourPressurePa   of the water [Pa], 0 to 1e6
     * @param densityKgPerM3     [kg/m3], 900 to 1200
     * @param surfaceAbovePumpM  height of the suction water above the pump [m], negative for a lift, -1000 to 1000
     * @param suctionLossM       head lost on the way to the pump [m], 0 to 1e6
     */
    public static double npshAvailableM(double surfacePressurePa, double vapourPressurePa, double densityKgPerM3,
            double surfaceAbovePumpM, double suctionLossM) {
        Require.within("pressure on the suction water", surfacePressurePa, 0, 1e8, "Pa");
        Require.within("vapour pressure", vapourPressurePa, 0, 1e6, "Pa");
        Require.within("density", densityKgPerM3, 900, 1200, "kg/m3");
        Require.within("height of the suction water above the pump", surfaceAbovePumpM, -1000, 1000, "m");
        Require.within("head lost in the suction", suctionLossM, 0, 1e6, "m");
        return (surfacePressurePa - vapourPressurePa) / (densityKgPerM3 * PhysicalConstants.GRAVITY_M_PER_S2)
                + surfaceAbovePumpM - suctionLossM;
    }

    /**
     * Specific speed n Q^(1/2) / H^(3/4) [rpm m^0.75 s^-0.5], for one pump and one stage at its best efficiency.
     *
     * @param rotationRpm [rpm], 1 to 1e6
     * @param flowM3PerS  [m3/s], 0 to 1000
     * @param headM       [m], 0.001 to 1e6
     */
    public static double specificSpeed(double rotationRpm, double flowM3PerS, double headM) {
        Require.within("rotational speed", rotationRpm, 1, 1e6, "rpm");
        Require.within("flow", flowM3PerS, 0, 1000, "m3/s");
        Require.within("head", headM, 1e-3, 1e6, "m");
        return rotationRpm * Math.sqrt(flowM3PerS) / Math.pow(headM, 0.75);
    }
}
