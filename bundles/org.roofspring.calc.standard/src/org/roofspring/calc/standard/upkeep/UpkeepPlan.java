package org.roofspring.calc.standard.upkeep;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.roofspring.calc.FindingValue;
import org.roofspring.calc.Inputs;
import org.roofspring.calc.standard.treatment.SiteReading;
import org.roofspring.calc.standard.water.Names;
import org.roofspring.calc.standard.water.UseDemand;
import org.roofspring.economy.upkeep.DueDay;
import org.roofspring.economy.upkeep.FirstRain;
import org.roofspring.economy.upkeep.UpkeepCalendar;
import org.roofspring.economy.upkeep.UpkeepTask;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.NamedElement;
import org.roofspring.site.Site;
import org.roofspring.site.TreatmentStep;
import org.roofspring.site.TreatmentTrain;
import org.roofspring.site.Use;

/**
 * The upkeep of a site within some days: each task with the days on which it is due.
 *
 * @param from      first day
 * @param days      looked at
 * @param firstRain early day of the first rain; empty where there is no dry season or no rain record
 * @param due       in order of days
 */
public record UpkeepPlan(LocalDate from, int days, Optional<MonthDay> firstRain, List<Due> due) {
    private static final int DAYS_OF_YEAR = 365;

    public UpkeepPlan {
        due = List.copyOf(due);
    }

    /**
     * A day of work.
     *
     * @param day  when and why
     * @param task of the site; empty where it follows from a treatment step that no task names
     */
    public record Due(DueDay day, Optional<org.roofspring.site.UpkeepTask> task) {
        /** Steps to go through, one by one; may be empty. */
        public List<String> checklist() {
            return lines(task.map(org.roofspring.site.UpkeepTask::getChecklist).orElse(null));
        }

        /** Parts and tools; may be empty. */
        public List<String> spares() {
            return lines(task.map(org.roofspring.site.UpkeepTask::getSpares).orElse(null));
        }

        /** Who does it; may be empty. */
        public String who() {
            return task.map(org.roofspring.site.UpkeepTask::getWho).orElse("");
        }

        /** What can hurt; may be empty. */
        public String hazard() {
            return task.map(org.roofspring.site.UpkeepTask::getHazard).orElse("");
        }

        private static List<String> lines(String text) {
            return text == null ? List.of()
                    : Arrays.stream(text.split("\\R")).map(String::strip).filter(line -> !line.isEmpty()).toList();
        }
    }

    /** The day from which a plan is made where nobody names one: the latest day noted in the site. */
    public static Optional<LocalDate> latestDay(Site site) {
        return SiteReading.of(site).day();
    }

    /** Whether the site has anything that is kept up. */
    public static boolean applies(Site site) {
        return !tasks(site).isEmpty();
    }

    /**
     * The plan from a day on.
     *
     * @param inputs the rain record, where there is one
     * @param days   1 to 36525
     */
    public static UpkeepPlan of(Site site, Inputs inputs, LocalDate from, int days) {
        Optional<MonthDay> firstRain = inputs.finding("rain.record", "daily")
                .map(finding -> (FindingValue.Daily) finding.value())
                .flatMap(rain -> FirstRain.earlyDay(rain.firstDay(), rain.values()));
        List<Due> due = UpkeepCalendar.due(tasks(site), firstRain, from, days).stream()
                .map(day -> new Due(day, site.getUpkeep().stream()
                        .filter(task -> day.task().id().equals(task.getId())).findFirst())).toList();
        return new UpkeepPlan(from, days, firstRain, due);
    }

    private static List<UpkeepTask> tasks(Site site) {
        List<UpkeepTask> tasks = new ArrayList<>();
        for (org.roofspring.site.UpkeepTask task : site.getUpkeep()) {
            OptionalDouble volume = task.getAfterVolume() == null ? OptionalDouble.empty()
                    : OptionalDouble.of(task.getAfterVolume().si());
            double flow = task.getElements().stream().mapToDouble(part -> flowM3PerDay(site, part)).max().orElse(0);
            List<TreatmentStep> steps = task.getElements().stream().filter(TreatmentStep.class::isInstance)
                    .map(TreatmentStep.class::cast).toList();
            // of the steps that it serves, the one that is used up first rules
            volume = volume.isPresent() ? volume : steps.stream().filter(step -> step.getChangeVolume() != null)
                    .mapToDouble(step -> step.getChangeVolume().si()).min();
            tasks.add(new UpkeepTask(task.getId(), Names.of(task), days(task.getInterval()), List.copyOf(
                    task.getDueOn()), volume, flow, task.isBeforeFirstRain(), Optional.ofNullable(task.getLastDone())));
        }
        for (TreatmentTrain train : site.getTrains()) {
            train.getSteps().stream().filter(step -> train.isInUse() && step.isActive()
                    && (step.getChangeInterval() != null || step.getChangeVolume() != null)
                    && site.getUpkeep().stream().noneMatch(task -> task.getElements().contains(step)))
                    .forEach(step -> tasks.add(new UpkeepTask(step.getId(), "Change or clean " + Names.of(step),
                            days(step.getChangeInterval()), List.of(), step.getChangeVolume() == null
                                    ? OptionalDouble.empty() : OptionalDouble.of(step.getChangeVolume().si()),
                            flowM3PerDay(site, step), false, Optional.ofNullable(step.getLastChanged()))));
        }
        return tasks;
    }

    private static OptionalDouble days(Quantity span) {
        return span == null ? OptionalDouble.empty() : OptionalDouble.of(span.in(Units.D));
    }

    /** Water that passes a part in a mean day, by the calendars of the uses that draw through it or from it. */
    private static double flowM3PerDay(Site site, NamedElement part) {
        NamedElement through = part instanceof TreatmentStep step ? (NamedElement) step.eContainer() : part;
        boolean train = through instanceof TreatmentTrain;
        return site.getUses().stream().filter(use -> use.isInUse() && use.getAmountEach() != null
                && (!train || use.getTrain() == through)).mapToDouble(UpkeepPlan::meanM3PerDay).sum();
    }

    private static double meanM3PerDay(Use use) {
        return Arrays.stream(UseDemand.seriesM3(use, LocalDate.of(2001, 1, 1), DAYS_OF_YEAR)).sum() / DAYS_OF_YEAR;
    }
}
