package org.roofspring.cli.internal;

import org.roofspring.calc.Outcome;
import org.roofspring.calc.standard.answer.PipeAnswer;
import org.roofspring.hydraulics.PipeRun;
import org.roofspring.hydraulics.WaterProperties;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Head loss of a pipe at one flow. */
@Command(name = "pipe", description = "Velocity and head loss of a pipe run at one flow.")
public final class PipeCommand extends AnswerCommand {
    @Option(names = "--flow", required = true, converter = QuantityOption.Flow.class, description = "flow, such as 1.2L/s")
    private Quantity flow;

    @Option(names = "--bore", required = true, converter = QuantityOption.Length.class, description = "inner diameter, such as 41.8mm")
    private Quantity bore;

    @Option(names = "--length", required = true, converter = QuantityOption.Length.class, description = "length, such as 60m")
    private Quantity length;

    @Option(names = "--roughness", defaultValue = "0.0015mm", converter = QuantityOption.Length.class,
            description = "absolute roughness [${DEFAULT-VALUE}, smooth plastic or drawn copper]")
    private Quantity roughness;

    @Option(names = "--fittings", defaultValue = "0", converter = QuantityOption.Ratio.class,
            description = "sum of the fittings' loss coefficients K [${DEFAULT-VALUE}]")
    private Quantity fittings;

    @Option(names = "--temperature", defaultValue = "20degC", converter = QuantityOption.Temperature.class,
            description = "of the water [${DEFAULT-VALUE}]")
    private Quantity temperature;

    @Override
    Outcome answer() {
        double flowM3PerS = Check.notNegative("--flow", flow);
        double boreM = Check.positive("--bore", bore);
        double lengthM = Check.notNegative("--length", length);
        double roughnessM = Check.notNegative("--roughness", roughness);
        double fittingsK = Check.notNegative("--fittings", fittings);
        double temperatureC = Check.between("--temperature", temperature,
                Quantity.of(WaterProperties.LOWEST_TEMPERATURE_C, Units.DEG_C), Quantity.of(WaterProperties.HIGHEST_TEMPERATURE_C, Units.DEG_C));
        return PipeAnswer.of(null, new PipeRun(boreM, lengthM, roughnessM, fittingsK), flowM3PerS, WaterProperties.at(temperatureC));
    }
}
