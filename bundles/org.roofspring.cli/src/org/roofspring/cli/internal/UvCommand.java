package org.roofspring.cli.internal;

import org.roofspring.calc.Outcome;
import org.roofspring.calc.standard.answer.UvAnswer;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.treatment.disinfection.UvDoseTable;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Credit of an ultraviolet dose. */
@Command(name = "uv", description = "What an ultraviolet dose earns: the largest tabulated credit that it reaches.")
public final class UvCommand extends AnswerCommand {
    @Option(names = "--dose", required = true, converter = QuantityOption.UvDose.class,
            description = "validated dose, such as 40mJ/cm2")
    private Quantity dose;

    @Override
    Outcome answer() {
        return UvAnswer.of(null, Check.between("--dose", dose, Quantity.of(0, Units.MJ_PER_CM2),
                Quantity.of(UvDoseTable.MAX_DOSE_MJ_PER_CM2, Units.MJ_PER_CM2)));
    }
}
