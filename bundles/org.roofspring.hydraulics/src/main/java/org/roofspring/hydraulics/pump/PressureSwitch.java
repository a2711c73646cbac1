package org.roofspring.hydraulics.pump;

import org.roofspring.hydraulics.internal.Require;

/**
 * Pressures at which a pump on a pressure vessel starts and stops, over that of the air around.
 *
 * @param cutInPa  the pump starts [Pa], 1000 to 1e7
 * @param cutOutPa the pump stops [Pa], at least 10 000 above cut-in, to 1e7
 */
public record PressureSwitch(double cutInPa, double cutOutPa) {
    public PressureSwitch {
        Require.within("cut-in pressure", cutInPa, 1000, 1e7, "Pa");
        Require.within("cut-out pressure", cutOutPa, cutInPa + 10_000, 2e7, "Pa");
    }
}
