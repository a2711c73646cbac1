package org.roofspring.cli.internal;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import org.roofspring.calc.Inputs;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.standard.RainRecordCalculation;
import org.roofspring.calc.standard.upkeep.UpkeepFindings;
import org.roofspring.calc.standard.upkeep.UpkeepPlan;
import org.roofspring.icalendar.CalendarText;
import org.roofspring.icalendar.DayEntry;
import org.roofspring.site.Site;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Which work is due, on screen and as a calendar file. */
@Command(name = "upkeep", description = "Work that falls due on a site: by date, by season and by use.")
public final class UpkeepCommand extends AnswerCommand {
    private static final int MOST_DAYS = 36_525;

    @Parameters(paramLabel = "SITE", description = "a .site file")
    private Path file;

    @Option(names = "--from", paramLabel = "DATE", converter = DayOption.class,
            description = "first day [the latest day noted in the site]")
    private LocalDate from;

    @Option(names = "--days", paramLabel = "N", defaultValue = "" + UpkeepFindings.DAYS,
            description = "days to look at, 1 to " + MOST_DAYS + " [${DEFAULT-VALUE}]")
    private int days;

    @Option(names = "--ics", paramLabel = "FILE", description = "write the days as an iCalendar file")
    private Path calendar;

    @Option(names = "--force", description = "overwrite the file of --ics")
    private boolean force;

    private SiteInput input;

    @Override
    String name(String elementId) {
        return input.name(elementId);
    }

    @Override
    Outcome answer() throws IOException {
        if (days < 1 || days > MOST_DAYS) {
            throw new Failures.BadInputException("--days must be from 1 to " + MOST_DAYS + ", not " + days);
        }
        if (calendar != null) {
            WholeFile.check(calendar, force);
        }
        input = SiteInput.load(file);
        Site site = input.snapshot().site();
        if (!UpkeepPlan.applies(site)) {
            throw new Failures.NoAnswerException(
                    "There is neither an upkeep task nor a treatment step that is changed.");
        }
        LocalDate first = from != null ? from : UpkeepPlan.latestDay(site).orElseThrow(
                () -> new Failures.NoAnswerException("No day is noted in the site to look ahead from; give --from"));
        Inputs inputs = rain(site);
        if (calendar != null) {
            write(site, UpkeepPlan.of(site, inputs, first, days));
        }
        return UpkeepFindings.of(site, inputs, first, days);
    }

    /** The rain record, for the season; a site without one has no first rain to work before. */
    private Inputs rain(Site site) {
        boolean known = site.getRain() != null && new RainRecordCalculation().check(input.snapshot()).applies();
        return known && input.outcome(new RainRecordCalculation()) instanceof Outcome.Completed rain
                ? new Inputs(Map.of("rain.record", rain)) : Inputs.none();
    }

    private void write(Site site, UpkeepPlan plan) throws IOException {
        if (plan.due().isEmpty()) {
            throw new Failures.NoAnswerException("Nothing is due in these " + days
                    + " days, so there is no calendar to write");
        }
        List<DayEntry> entries = plan.due().stream().map(due -> new DayEntry(due.day().task().id() + "-"
                + due.day().date() + "@" + site.getId(), due.day().date(), due.day().task().name(), text(due)))
                .toList();
        String text = CalendarText.of(entries, plan.from().atStartOfDay(ZoneOffset.UTC).toInstant());
        WholeFile.write(calendar, text.getBytes(StandardCharsets.UTF_8));
    }

    private static String text(UpkeepPlan.Due due) {
        List<String> lines = new ArrayList<>();
        lines.add("Why: " + due.day().occasion().words()
                + (due.day().overdue() ? ", overdue since " + due.day().dueSince() : ""));
        if (due.who() != null && !due.who().isBlank()) {
            lines.add("Who: " + due.who());
        }
        due.checklist().forEach(step -> lines.add("- " + step));
        due.spares().forEach(part -> lines.add("Bring: " + part));
        if (due.hazard() != null && !due.hazard().isBlank()) {
            lines.add("Mind: " + due.hazard());
        }
        return String.join("\n", lines);
    }
}
