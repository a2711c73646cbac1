package org.roofspring.hydraulics.gravity;

import org.roofspring.hydraulics.WaterProperties;
import org.roofspring.hydraulics.internal.Require;

/**
 * How a gravity supply stands at a moment.
 *
 * @param waterLevelM  level of the water in the tank [m], -1000 to 11 000
 * @param temperatureC of the water [degC], 0 to 60
 * @param worn         whether pipe is aged and filters are due for change
 */
public record GravityState(double waterLevelM, double temperatureC, boolean worn) {
    public GravityState {
        Require.within("level of the water in the tank", waterLevelM, -1000, 11_000, "m");
        Require.within("water temperature", temperatureC, WaterProperties.LOWEST_TEMPERATURE_C,
                WaterProperties.HIGHEST_TEMPERATURE_C, "degC");
    }

    GravityState withWaterLevelM(double other) {
        return new GravityState(other, temperatureC, worn);
    }
}
