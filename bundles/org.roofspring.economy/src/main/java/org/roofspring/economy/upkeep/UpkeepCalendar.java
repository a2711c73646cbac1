package org.roofspring.economy.upkeep;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.roofspring.economy.internal.Checks;
import org.roofspring.economy.upkeep.DueDay.Occasion;

/** Which tasks fall due within some days, each taken as done on the day it is due. */
public final class UpkeepCalendar {
    /** Work done up to so many days before a day of the year, or before the first rain, counts for it [d]. */
    public static final int EARLY_DAYS = 14;
    private static final int MOST_DAYS = 36_525;

    private UpkeepCalendar() {
    }

    /**
     * The days, in order. A task without an occasion, or due before the first rain where there is no dry season, and
     * nothing else, does not occur.
     *
     * @param firstRain early day of the first rain after the dry season; empty where there is no dry season
     * @param from      first day asked for; what fell due before it and was not done is due on it
     * @param days      asked for, 1 to 36525
     */
    public static List<DueDay> due(List<UpkeepTask> tasks, Optional<MonthDay> firstRain, LocalDate from, int days) {
        Checks.list("tasks", tasks);
        Checks.present("day of the first rain (firstRain)", firstRain);
        Checks.present("from", from);
        Checks.within("days", days, 1, MOST_DAYS);
        LocalDate end = from.plusDays(days);
        List<DueDay> all = new ArrayList<>();
        for (UpkeepTask task : tasks) {
            Optional<DueDay> next = next(task, firstRain, task.lastDone(), from);
            while (next.isPresent() && next.get().date().isBefore(end)) {
                all.add(next.get());
                next = next(task, firstRain, Optional.of(next.get().date()), from);
            }
        }
        all.sort(Comparator.comparing(DueDay::date));
        return all;
    }

    private static Optional<DueDay> next(UpkeepTask task, Optional<MonthDay> firstRain, Optional<LocalDate> done,
            LocalDate from) {
        boolean byUse = task.intervalDays().isPresent() || task.afterVolumeM3().isPresent();
        if (done.isEmpty() && byUse) {
            return Optional.of(new DueDay(task, from, Occasion.NEVER_DONE, from));
        }
        // of a task of certain days that is not known to have been done, nobody can say that it is overdue
        LocalDate since = done.orElse(from.minusDays(EARLY_DAYS + 1L));
        List<DueDay> next = new ArrayList<>();
        task.intervalDays().ifPresent(days -> next.add(day(task, since.plusDays((long) Math.ceil(days)), from,
                Occasion.INTERVAL)));
        if (task.afterVolumeM3().isPresent() && task.flowM3PerDay() > 0) {
            double days = Math.ceil(task.afterVolumeM3().getAsDouble() / task.flowM3PerDay());
            if (days < MOST_DAYS * 10.0) {
                next.add(day(task, since.plusDays(Math.max(1, (long) days)), from, Occasion.VOLUME));
            }
        }
        task.dueOn().forEach(day -> next.add(day(task, after(since, day), from, Occasion.SEASON)));
        if (task.beforeFirstRain()) {
            firstRain.ifPresent(day -> next.add(day(task, after(since, day), from, Occasion.FIRST_RAIN)));
        }
        return next.stream().min(Comparator.comparing(DueDay::dueSince));
    }

    private static DueDay day(UpkeepTask task, LocalDate due, LocalDate from, Occasion occasion) {
        return new DueDay(task, due.isBefore(from) ? from : due, occasion, due);
    }

    /** The first such day that work of a date is too early for. */
    private static LocalDate after(LocalDate done, MonthDay day) {
        LocalDate due = day.atYear(done.getYear());
        while (!due.isAfter(done.plusDays(EARLY_DAYS))) {
            due = day.atYear(due.getYear() + 1);
        }
        return due;
    }
}
