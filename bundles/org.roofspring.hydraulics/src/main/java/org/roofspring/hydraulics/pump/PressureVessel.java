package org.roofspring.hydraulics.pump;

import org.roofspring.hydraulics.internal.Require;

/**
 * A vessel with a cushion of air behind a membrane.
 *
 * @param volumeM3    whole volume [m3], 1e-4 to 100
 * @param prechargePa air pressure of the empty vessel, over that of the air around [Pa], 1000 to 1e7
 */
public record PressureVessel(double volumeM3, double prechargePa) {
    /** How far the precharge is set below the cut-in pressure [Pa]; common practice, no source. */
    public static final double PRECHARGE_BELOW_CUT_IN_PA = 20_000;

    public PressureVessel {
        Require.within("volume of the pressure vessel", volumeM3, 1e-4, 100, "m3");
        Require.within("precharge of the pressure vessel", prechargePa, 1000, 1e7, "Pa");
    }

    /** A vessel whose precharge is set by the usual rule for a cut-in pressure [Pa], 21 000 to 1e7. */
    public static PressureVessel forCutIn(double volumeM3, double cutInPa) {
        Require.within("cut-in pressure", cutInPa, 21_000, 1e7, "Pa");
        return new PressureVessel(volumeM3, cutInPa - PRECHARGE_BELOW_CUT_IN_PA);
    }

    /**
     * Water in the vessel [m3] at a pressure over that of the air around: V (1 - p0/p), absolute pressures, at steady
     * temperature (Boyle's law).
     *
     * @param pressurePa    [Pa], 0 to 1e8
     * @param airPressurePa [Pa], 20 000 to 120 000
     */
    public double waterM3(double pressurePa, double airPressurePa) {
        Require.within("pressure in the vessel", pressurePa, 0, 1e8, "Pa");
        Require.within("air pressure", airPressurePa, 20_000, 120_000, "Pa");
        return pressurePa <= prechargePa ? 0
                : volumeM3 * (1 - (prechargePa + airPressurePa) / (pressurePa + airPressurePa));
    }

    /**
     * Water that can be drawn between the switch pressures [m3].
     *
     * @param pressureSwitch settings
     * @param airPressurePa  [Pa], 20 000 to 120 000
     */
    public double drawdownM3(PressureSwitch pressureSwitch, double airPressurePa) {
        Require.present("pressure switch", pressureSwitch);
        return waterM3(pressureSwitch.cutOutPa(), airPressurePa) - waterM3(pressureSwitch.cutInPa(), airPressurePa);
    }
}
