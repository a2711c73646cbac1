package org.roofspring.cli.internal;

import java.io.IOException;
import java.nio.file.Path;

import org.roofspring.calc.Outcome;
import org.roofspring.calc.standard.PumpDutyCalculation;
import org.roofspring.calc.standard.RainRecordCalculation;
import org.roofspring.calc.standard.RoofDrainageCalculation;
import org.roofspring.calc.standard.SiteStagesCalculation;
import org.roofspring.quantity.Quantity;
import org.roofspring.site.SiteFactory;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** In which order to build, and what a budget buys. */
@Command(name = "stages", description = "What each stage and option of a site gives and costs, the order that gives most"
        + " for the money, and what a budget buys.")
public final class StagesCommand extends AnswerCommand {
    @Parameters(paramLabel = "SITE", description = "a .site file")
    private Path file;

    @Option(names = "--budget", paramLabel = "MONEY", converter = QuantityOption.Money.class,
            description = "money there is, such as 30000cur, in the currency of the site [budget of its target]")
    private Quantity budget;

    private SiteInput input;

    @Override
    String name(String elementId) {
        return input.name(elementId);
    }

    @Override
    Outcome answer() throws IOException {
        input = SiteInput.load(file);
        if (budget != null) {
            Check.notNegative("--budget", budget);
            if (input.site().getTarget() == null) {
                input.site().setTarget(SiteFactory.eINSTANCE.createTarget());
            }
            // the site is this command's own copy: the budget asked for takes the place of that of the file
            input.site().getTarget().setBudget(budget);
        }
        return input.outcome(new SiteStagesCalculation(), new RainRecordCalculation(), new PumpDutyCalculation(),
                new RoofDrainageCalculation());
    }
}
