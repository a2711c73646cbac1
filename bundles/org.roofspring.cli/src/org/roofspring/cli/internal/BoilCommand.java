package org.roofspring.cli.internal;

import java.util.Locale;

import org.roofspring.calc.Outcome;
import org.roofspring.calc.standard.answer.BoilAnswer;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.treatment.disinfection.Boiling;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Boiling by altitude. */
@Command(name = "boil", description = "At what temperature water boils, and how long to keep it boiling.")
public final class BoilCommand extends AnswerCommand {
    @Option(names = "--altitude", required = true, converter = QuantityOption.Length.class,
            description = "above sea level, such as 1800m")
    private Quantity altitude;

    @Option(names = "--agency", defaultValue = "cdc", description = "whose rule: cdc or epa [${DEFAULT-VALUE}]")
    private String agency;

    @Override
    Outcome answer() {
        String name = Check.word("--agency", agency, "cdc", "epa");
        double altitudeM = Check.between("--altitude", altitude, Quantity.of(-450, Units.M),
                Quantity.of(9000, Units.M));
        return BoilAnswer.of(null, altitudeM, Boiling.Agency.valueOf(name.toUpperCase(Locale.ROOT)));
    }
}
