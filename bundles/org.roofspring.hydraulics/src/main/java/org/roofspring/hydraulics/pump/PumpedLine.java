package org.roofspring.hydraulics.pump;

import java.util.List;

import org.roofspring.hydraulics.AgeingRun;
import org.roofspring.hydraulics.HeadLoss;
import org.roofspring.hydraulics.WaterProperties;
import org.roofspring.hydraulics.internal.Require;

/**
 * A pump's way from the water it draws to where it delivers, apart from levels and weather.
 *
 * @param pumpLevelM     level of the pump [m], -1000 to 10 000
 * @param suction        suction pipe; none for a submersible
 * @param cleanStrainer  head that strainer and foot valve take when clean
 * @param fouledStrainer and when fouled
 * @param delivery       delivery pipe with its fittings
 */
public record PumpedLine(double pumpLevelM, List<AgeingRun> suction, HeadLoss cleanStrainer, HeadLoss fouledStrainer,
        List<AgeingRun> delivery) {
    public PumpedLine {
        Require.within("level of the pump", pumpLevelM, -1000, 10_000, "m");
        suction = Require.list("suction pipes", suction);
        Require.present("head loss of the clean strainer", cleanStrainer);
        Require.present("head loss of the fouled strainer", fouledStrainer);
        delivery = Require.list("delivery pipes", delivery);
    }

    /** What the pump works against in a state. */
    public SystemCurve at(SystemState state) {
        Require.present("state", state);
        WaterProperties water = WaterProperties.at(state.temperatureC());
        HeadLoss suctionLoss = inTurn(suction, water, state.worn(), state.worn() ? fouledStrainer : cleanStrainer);
        return new SystemCurve(state.dischargeLevelM() - state.suctionLevelM(),
                inTurn(delivery, water, state.worn(), HeadLoss.none()),
                new Suction(pumpLevelM - state.suctionLevelM(), suctionLoss), water, state.airPressurePa());
    }

    private static HeadLoss inTurn(List<AgeingRun> runs, WaterProperties water, boolean aged, HeadLoss first) {
        HeadLoss all = first;
        for (AgeingRun run : runs) {
            all = all.then(run.run(aged).carrying(water));
        }
        return all;
    }
}
