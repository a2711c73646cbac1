package org.roofspring.cli.internal;

import org.roofspring.calc.Outcome;
import org.roofspring.calc.standard.answer.SolarAnswer;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.treatment.disinfection.SolarDisinfection.Sky;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Bottles in the sun. */
@Command(name = "solar",
        description = "How long clear bottles lie in the sun, and whether bottle and water are suitable.")
public final class SolarCommand extends AnswerCommand {
    @Option(names = "--volume", required = true, converter = QuantityOption.Volume.class,
            description = "of one bottle, such as 1.5L")
    private Quantity volume;

    @Option(names = "--sky", required = true, description = "clear or cloudy (more than half under cloud)")
    private String sky;

    @Option(names = "--turbidity", required = true, converter = QuantityOption.Turbidity.class,
            description = "of the water, such as 10NTU")
    private Quantity turbidity;

    @Override
    Outcome answer() {
        Sky over = Check.word("--sky", sky, "clear", "cloudy").equals("clear") ? Sky.CLEAR : Sky.CLOUDY;
        Check.positive("--volume", volume);
        double volumeM3 = Check.between("--volume", volume, Quantity.of(0, Units.L), Quantity.of(1e6, Units.M3));
        double turbidityNtu = Check.between("--turbidity", turbidity, Quantity.of(0, Units.NTU),
                Quantity.of(1e6, Units.NTU));
        return SolarAnswer.of(null, volumeM3, over, turbidityNtu);
    }
}
