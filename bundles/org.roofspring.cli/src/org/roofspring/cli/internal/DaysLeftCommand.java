package org.roofspring.cli.internal;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;

import org.roofspring.calc.Finding;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.standard.PumpDutyCalculation;
import org.roofspring.calc.standard.RainRecordCalculation;
import org.roofspring.calc.standard.RoofDrainageCalculation;
import org.roofspring.calc.standard.StorageOutlookCalculation;
import org.roofspring.quantity.Quantity;
import org.roofspring.site.Site;
import org.roofspring.site.Tank;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** How long the water of a site lasts. */
@Command(name = "days-left",
        description = "How long the water of a site lasts with the weather of every year of its record: days left, "
        + "chance of "
                + "going short, ration, drought card and dipstick table.")
public final class DaysLeftCommand extends AnswerCommand {
    @Parameters(paramLabel = "SITE", description = "a .site file")
    private Path file;

    @Option(names = "--level", converter = QuantityOption.Length.class,
            description = "height of the water today, in place of that in the site; with --date")
    private Quantity level;

    @Option(names = "--date", converter = DayOption.class, paramLabel = "DAY",
            description = "day on which it was read, such as 2025-02-01")
    private LocalDate date;

    @Option(names = "--tank", paramLabel = "ID", description = "tank that was read, by its identifier or name [the "
            + "largest]")
    private String tank;

    @Option(names = "--csv", description = "write the figures as comma-separated values and nothing else")
    private boolean csv;

    private SiteInput input;

    @Override
    String name(String elementId) {
        return input.name(elementId);
    }

    @Override
    Outcome answer() throws IOException {
        if (csv && json()) {
            throw new Failures.BadInputException("--csv and --json are both given; one of them is accepted");
        }
        if (level == null != (date == null) || level == null && tank != null) {
            throw new Failures.BadInputException(
                    "A reading needs --level and --date, the day it was read; --tank may say which tank");
        }
        input = SiteInput.load(file);
        if (level != null) {
            Check.notNegative("--level", level);
            Tank read = tank(input.site());
            read.setCurrentHeight(level);
            read.setCurrentDate(date);
        }
        return input.outcome(new StorageOutlookCalculation(), new RainRecordCalculation(), new PumpDutyCalculation(),
                new RoofDrainageCalculation());
    }

    private Tank tank(Site site) {
        List<Tank> tanks = site.getTanks().stream().filter(one -> one.isInUse() && one.getCapacity() != null).toList();
        if (tank == null) {
            return tanks.stream().max(Comparator.comparingDouble(one -> one.getCapacity().si()))
                    .orElseThrow(() -> new Failures.NoAnswerException("There is no tank with a capacity."));
        }
        return tanks.stream().filter(one -> tank.equals(one.getId()) || tank.equals(one.getName())).findFirst()
                .orElseThrow(() -> new Failures.BadInputException("--tank: there is no tank \"" + tank + "\" in " + file
                        + "; accepted are " + String.join(", ", tanks.stream().map(Tank::getId).toList())));
    }

    @Override
    String written(Outcome.Completed completed) {
        if (!csv) {
            return super.written(completed);
        }
        StringBuilder text = new StringBuilder(CsvText.row("finding", "title", "value", "unit"));
        for (Finding finding : completed.findings()) {
            CsvText.value(finding.value()).ifPresent(value -> text.append(
                    CsvText.row(finding.id(), finding.title(), value.number(), value.unit())));
        }
        return text.toString().stripTrailing();
    }
}
