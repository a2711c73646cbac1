package org.roofspring.calc.standard.upkeep;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.eclipse.emf.common.util.EList;
import org.roofspring.calc.Caution;
import org.roofspring.calc.Caution.Severity;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.Inputs;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.Source;
import org.roofspring.calc.Working.Step;
import org.roofspring.calc.standard.answer.AnswerBuilder;
import org.roofspring.calc.standard.water.Names;
import org.roofspring.economy.upkeep.CommonTask;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.Component;
import org.roofspring.site.NamedElement;
import org.roofspring.site.Site;
import org.roofspring.site.UpkeepTask;

/** What work is due when, what it takes, and which usual work no task names. */
public final class UpkeepFindings {
    /** Days that are looked at where nobody says. */
    public static final int DAYS = 365;
    private static final Source USUAL = Source.commonPractice("intervals of upkeep, to be changed by whoever knows the"
            + " system");
    private static final Source ENTERED = new Source(Source.Standing.USER, "upkeep tasks of the site");

    private UpkeepFindings() {
    }

    /** The findings from a day on. */
    public static Outcome.Completed of(Site site, Inputs inputs, LocalDate from, int days) {
        UpkeepPlan plan = UpkeepPlan.of(site, inputs, from, days);
        AnswerBuilder answer = new AnswerBuilder(null);
        answer.text("from", "Looked at", from + ", for " + days + " days");
        List<List<Object>> rows = new ArrayList<>();
        plan.due().forEach(due -> rows.add(List.of(due.day().date().toString(), due.day().task().name(),
                due.day().occasion().words(), due.day().overdue() ? due.day().dueSince().toString() : "",
                due.who() == null ? "" : due.who())));
        answer.add("due", "Work that is due", new FindingValue.Table(List.of("Day", "Task", "Why", "Overdue since",
                "Who"),
                rows), Step.of("t",
                "the earliest of: so long after it was done; a day of the year; so much water; before"
                        + " the first rain; each taken as done when due", "min", null, ENTERED));
        long overdue = plan.due().stream().filter(due -> due.day().overdue()).count();
        answer.number("overdue", "Tasks overdue", Quantity.of(overdue), Step.of("n", "tasks due before " + from,
                "count", Quantity.of(overdue), ENTERED));
        double hours = 0;
        double money = 0;
        for (UpkeepPlan.Due due : plan.due()) {
            hours += due.task().map(UpkeepTask::getEffort).map(effort -> effort.in(Units.H)).orElse(0.0);
            money += due.task().map(UpkeepTask::getCost).map(Quantity::si).orElse(0.0);
        }
        Quantity work = Quantity.of(hours, Units.H);
        answer.number("work", "Work in these days", work, Step.of("h", "of all tasks each time they are due", "sum",
                work, ENTERED));
        Quantity cost = Quantity.of(money, Units.MONEY);
        answer.number("cost", "Material in these days", cost, Step.of("k", "of all tasks each time they are due", "sum",
                cost, ENTERED));
        plan.firstRain().ifPresent(day -> answer.text("firstRain", "First rain, an early year",
                day.toString().substring(2)));
        tasks(answer, site);
        proposals(answer, site);
        cautions(answer, site);
        return answer.build();
    }

    private static void tasks(AnswerBuilder answer, Site site) {
        List<List<Object>> rows = new ArrayList<>();
        for (UpkeepTask task : site.getUpkeep()) {
            rows.add(Arrays.asList(Names.of(task), lines(task.getChecklist()), lines(task.getSpares()),
                    lines(task.getHazard()), lines(task.getSource())));
        }
        answer.add("tasks", "Checklists and spares", new FindingValue.Table(
                List.of("Task", "Checklist", "Spares", "Mind", "Source of the interval"), rows));
    }

    private static String lines(String text) {
        return text == null ? "" : String.join("; ", text.strip().split("\\R"));
    }

    /** Usual work on parts that no task names. */
    private static void proposals(AnswerBuilder answer, Site site) {
        List<List<Object>> rows = new ArrayList<>();
        propose(rows, site, site.getGutters(), CommonTask.Part.GUTTER);
        propose(rows, site, site.getScreens(), CommonTask.Part.SCREEN);
        propose(rows, site, site.getDiverters(), CommonTask.Part.DIVERTER);
        propose(rows, site, site.getTanks(), CommonTask.Part.TANK);
        propose(rows, site, site.getPumps(), CommonTask.Part.PUMP);
        propose(rows, site, site.getTaps(), CommonTask.Part.TAP);
        propose(rows, site, site.getTrains(), CommonTask.Part.TRAIN);
        answer.add("proposals", "Usual work that no task names", new FindingValue.Table(
                List.of("Part", "Work", "Interval", "Before the first rain", "Checklist", "Spares", "Mind"), rows),
                Step.of("t", "what is usually done on a part, where no task of the site names it", "rule in words",
                null,
                        USUAL));
    }

    private static void propose(List<List<Object>> rows, Site site, EList<? extends Component> parts,
            CommonTask.Part part) {
        List<String> without = parts.stream().filter(Component::isInUse)
                .filter(element -> site.getUpkeep().stream().noneMatch(task -> task.getElements().contains(element)))
                .map((NamedElement element) -> Names.of(element)).toList();
        if (!without.isEmpty()) {
            CommonTask.of(part).forEach(task -> rows.add(List.of(String.join(", ", without), task.words(),
                    Quantity.of(task.intervalDays(), Units.D), task.beforeFirstRain(), String.join("; ",
                    task.checklist()), String.join("; ", task.spares()), task.hazard())));
        }
    }

    private static void cautions(AnswerBuilder answer, Site site) {
        answer.caution(new Caution("upkeep.danger", Severity.DANGER, null,
                "Work on roofs, in tanks and on pumps can kill: nobody works alone on a ladder, nobody enters a tank "
                + "without training, gas test and attendant, and electricity is switched off and locked first.",
                List.of(), "Follow the local code; ask a licensed electrician, and trained people for confined spaces.",
                Source.commonPractice("falls, confined spaces and electricity")));
        for (UpkeepTask task : site.getUpkeep()) {
            if (task.getInterval() == null && task.getDueOn().isEmpty() && task.getAfterVolume() == null
                    && !task.isBeforeFirstRain()) {
                answer.caution(new Caution("upkeep.no-occasion", Severity.WARNING, task.getId(),
                        "{0} has neither interval, day, volume nor season, so it is never due.",
                        List.of(Names.of(task)), "", ENTERED));
            }
        }
    }
}
