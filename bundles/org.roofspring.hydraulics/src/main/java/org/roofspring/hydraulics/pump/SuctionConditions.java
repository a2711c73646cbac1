package org.roofspring.hydraulics.pump;

import java.util.List;

import org.roofspring.hydraulics.HeadLoss;
import org.roofspring.hydraulics.PipeRun;
import org.roofspring.hydraulics.WaterProperties;
import org.roofspring.hydraulics.internal.Require;

/**
 * What bears on the suction of a pump.
 *
 * @param liftM         height of the pump above the suction water [m], negative where flooded, -1000 to 1000
 * @param pipes         suction pipe with its fittings
 * @param strainer      head that strainer and foot valve take beyond the fittings of the pipes
 * @param temperatureC  of the water [degC], 0 to 60
 * @param airPressurePa [Pa], 20 000 to 120 000
 */
public record SuctionConditions(double liftM, List<PipeRun> pipes, HeadLoss strainer, double temperatureC,
        double airPressurePa) {
    public SuctionConditions {
        Require.within("suction lift", liftM, -1000, 1000, "m");
        pipes = Require.list("suction pipes", pipes);
        Require.present("head loss of the strainer", strainer);
        WaterProperties.at(temperatureC);
        Require.within("air pressure", airPressurePa, 20_000, 120_000, "Pa");
    }

    /** Head that pipe and strainer take [m] at a flow [m3/s]. */
    public double lossM(double flowM3PerS) {
        WaterProperties water = WaterProperties.at(temperatureC);
        return strainer.headM(flowM3PerS)
                + pipes.stream().mapToDouble(pipe -> pipe.carrying(water).headM(flowM3PerS)).sum();
    }

    /** NPSH available [m] at a flow [m3/s]; negative where the water boils before it gets to the pump. */
    public double npshAvailableM(double flowM3PerS) {
        WaterProperties water = WaterProperties.at(temperatureC);
        return water.headM(airPressurePa - water.vapourPressurePa()) - liftM - lossM(flowM3PerS);
    }

    SuctionConditions withLiftM(double other) {
        return new SuctionConditions(other, pipes, strainer, temperatureC, airPressurePa);
    }

    SuctionConditions withPipes(List<PipeRun> other) {
        return new SuctionConditions(liftM, other, strainer, temperatureC, airPressurePa);
    }

    SuctionConditions withStrainer(HeadLoss other) {
        return new SuctionConditions(liftM, pipes, other, temperatureC, airPressurePa);
    }

    SuctionConditions withTemperatureC(double other) {
        return new SuctionConditions(liftM, pipes, strainer, other, airPressurePa);
    }

    SuctionConditions withAirPressurePa(double other) {
        return new SuctionConditions(liftM, pipes, strainer, temperatureC, other);
    }
}
