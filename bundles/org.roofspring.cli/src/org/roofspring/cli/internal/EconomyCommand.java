package org.roofspring.cli.internal;

import java.io.IOException;
import java.nio.file.Path;

import org.roofspring.calc.Outcome;
import org.roofspring.calc.standard.PumpDutyCalculation;
import org.roofspring.calc.standard.PumpRunningCalculation;
import org.roofspring.calc.standard.RainRecordCalculation;
import org.roofspring.calc.standard.RoofDrainageCalculation;
import org.roofspring.calc.standard.SiteEconomyCalculation;
import org.roofspring.calc.standard.StorageBalanceCalculation;

import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** What the water of a site costs. */
@Command(name = "economy", description = "Life-cycle cost of a site, for each m3 and person, beside other supplies, and"
        + " what turns the answer.")
public final class EconomyCommand extends AnswerCommand {
    @Parameters(paramLabel = "SITE", description = "a .site file")
    private Path file;

    private SiteInput input;

    @Override
    String name(String elementId) {
        return input.name(elementId);
    }

    @Override
    Outcome answer() throws IOException {
        input = SiteInput.load(file);
        return input.outcome(new SiteEconomyCalculation(), new RainRecordCalculation(), new PumpDutyCalculation(),
                new RoofDrainageCalculation(), new StorageBalanceCalculation(), new PumpRunningCalculation());
    }
}
