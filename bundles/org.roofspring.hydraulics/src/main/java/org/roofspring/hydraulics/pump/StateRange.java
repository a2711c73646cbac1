package org.roofspring.hydraulics.pump;

import java.util.ArrayList;
import java.util.List;

import org.roofspring.hydraulics.Band;
import org.roofspring.hydraulics.internal.Require;

/**
 * Between which ends the state of a pumped line moves. Flow and head rise or fall all along with each of them, and the
 * least NPSH lies at an end, so that the corners hold what lies between. The one exception is flow so slow that it is
 * in the transitional regime, where warmer water may meet more friction.
 *
 * @param suctionLevelM   [m]
 * @param dischargeLevelM [m]
 * @param temperatureC    [degC]
 * @param airPressurePa   [Pa]
 * @param ages            whether worn states belong to it beside new ones
 */
public record StateRange(Band suctionLevelM, Band dischargeLevelM, Band temperatureC, Band airPressurePa,
        boolean ages) {
    public StateRange {
        Require.present("range of suction levels", suctionLevelM);
        Require.present("range of discharge levels", dischargeLevelM);
        Require.present("range of temperatures", temperatureC);
        Require.present("range of air pressures", airPressurePa);
    }

    /** Every combination of ends; 1 to 32 states. */
    public List<SystemState> corners() {
        List<SystemState> corners = new ArrayList<>();
        for (double suctionM : suctionLevelM.ends()) {
            for (double dischargeM : dischargeLevelM.ends()) {
                for (double celsius : temperatureC.ends()) {
                    for (double pressurePa : airPressurePa.ends()) {
                        corners.add(new SystemState(suctionM, dischargeM, celsius, pressurePa, false));
                        if (ages) {
                            corners.add(new SystemState(suctionM, dischargeM, celsius, pressurePa, true));
                        }
                    }
                }
            }
        }
        return corners;
    }
}
