package org.roofspring.hydraulics.pump;

import org.roofspring.hydraulics.WaterProperties;
import org.roofspring.hydraulics.internal.Require;

/**
 * How a pumped line stands at a moment. Levels are heights above any one datum.
 *
 * @param suctionLevelM   level of the water drawn from [m], -1000 to 10 000
 * @param dischargeLevelM level that the water is lifted to: of the water over a submerged outlet, of a free outlet
 *                        itself [m], -1000 to 10 000
 * @param temperatureC    of the water [degC], 0 to 60
 * @param airPressurePa   [Pa], 20 000 to 120 000
 * @param worn            whether pipe is aged and the strainer fouled
 */
public record SystemState(double suctionLevelM, double dischargeLevelM, double temperatureC, double airPressurePa,
        boolean worn) {
    public SystemState {
        Require.within("level of the suction water", suctionLevelM, -1000, 10_000, "m");
        Require.within("level of the discharge", dischargeLevelM, -1000, 10_000, "m");
        Require.within("water temperature", temperatureC, WaterProperties.LOWEST_TEMPERATURE_C,
                WaterProperties.HIGHEST_TEMPERATURE_C, "degC");
        Require.within("air pressure", airPressurePa, 20_000, 120_000, "Pa");
    }
}
