package org.roofspring.cli.internal;

import java.io.IOException;
import java.nio.file.Path;

import org.roofspring.calc.Source;
import org.roofspring.calc.Working.Input;
import org.roofspring.calc.Working.Step;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.rain.GapFilling;
import org.roofspring.storage.CatchmentInflow;
import org.roofspring.storage.YieldRule;

import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Rain, roof and demand, as {@code storage}, {@code size} and their like take them. */
final class CatchmentOptions {
    @Option(names = "--rain", required = true, paramLabel = "FILE", description = "daily rain record")
    private Path rain;

    @Option(names = "--roof", required = true, converter = QuantityOption.Area.class, description = "plan area of the roof, such as 120m2")
    private Quantity roof;

    @Option(names = "--runoff", required = true, converter = QuantityOption.Ratio.class, description = "runoff coefficient, 0 to 1")
    private Quantity runoff;

    @Option(names = "--loss", defaultValue = "0mm", converter = QuantityOption.Length.class,
            description = "depth taken off each wet day: initial loss and first flush [${DEFAULT-VALUE}]")
    private Quantity loss;

    @Option(names = "--demand", required = true, converter = QuantityOption.Flow.class, description = "daily demand, such as 400L/d")
    private Quantity demand;

    @Option(names = "--rule", defaultValue = "yas", description = "yas (yield after spillage) or ybs (yield before spillage) [${DEFAULT-VALUE}]")
    private String rule;

    @Option(names = "--gaps", defaultValue = "refuse", description = "missing days: refuse, zero or mean [${DEFAULT-VALUE}]")
    private String gaps;

    @Mixin
    private RainOptions rainOptions;

    /** The record and how its gaps were filled. */
    GapFilling filledRain() throws IOException {
        return RainOptions.fill(rainOptions.read(rain).record(), gaps);
    }

    CatchmentInflow catchment() {
        Check.notNegative("--loss", loss);
        return new CatchmentInflow(Check.notNegative("--roof", roof),
                Check.between("--runoff", runoff, Quantity.of(0), Quantity.of(1)), loss.in(Units.MM));
    }

    double demandM3PerDay() {
        Check.notNegative("--demand", demand);
        return demand.in(Units.M3_PER_D);
    }

    YieldRule rule() {
        return Check.word("--rule", rule, "yas", "ybs").equals("yas") ? YieldRule.YAS : YieldRule.YBS;
    }

    /** How the inflow comes about, for the workings. */
    Step inflowStep(double rainMm, double inflowM3) {
        return Step.of("Q", "inflow over the record; the loss is taken off each wet day", "A C sum(max(0, P - l))",
                Quantity.of(inflowM3, Units.M3), Source.definition("1 mm on 1 m2 is 1 L"), new Input("A", "plan area", roof),
                new Input("C", "runoff coefficient", runoff), new Input("l", "loss on each wet day", loss),
                new Input("P", "rain over the record", Quantity.of(rainMm, Units.MM)));
    }
}
