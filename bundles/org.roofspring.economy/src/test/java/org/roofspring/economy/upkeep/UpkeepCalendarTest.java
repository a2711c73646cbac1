package org.roofspring.economy.upkeep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.roofspring.economy.upkeep.DueDay.Occasion;

/** Days on which work is due. */
class UpkeepCalendarTest {
    private static final LocalDate FROM = LocalDate.of(2025, 2, 1);
    private static final Optional<MonthDay> RAIN = Optional.of(MonthDay.of(9, 20));

    private static UpkeepTask task(double intervalDays, double volumeM3, double flow, boolean rain, LocalDate done,
            MonthDay... days) {
        return new UpkeepTask("t", "Task", intervalDays > 0 ? OptionalDouble.of(intervalDays) : OptionalDouble.empty(),
                List.of(days), volumeM3 > 0 ? OptionalDouble.of(volumeM3) : OptionalDouble.empty(), flow, rain,
                Optional.ofNullable(done));
    }

    private static List<DueDay> due(UpkeepTask task, int days) {
        return UpkeepCalendar.due(List.of(task), RAIN, FROM, days);
    }

    @Test
    void byInterval() {
        List<DueDay> due = due(task(30, 0, 0, false, FROM.minusDays(10)), 90);
        assertEquals(List.of(FROM.plusDays(20), FROM.plusDays(50), FROM.plusDays(80)),
                due.stream().map(DueDay::date).toList());
        assertFalse(due.getFirst().overdue());
    }

    @Test
    void overdueIsDueAtOnceAndSaysSinceWhen() {
        DueDay first = due(task(30, 0, 0, false, FROM.minusDays(45)), 30).getFirst();
        assertEquals(FROM, first.date());
        assertEquals(FROM.minusDays(15), first.dueSince());
        assertTrue(first.overdue());
    }

    /** 90 m3 at 0.7 m3 a day: 128.6 days, so on the 129th. */
    @Test
    void byWaterThatHasPassed() {
        DueDay first = due(task(180, 90, 0.7, false, FROM), 365).getFirst();
        assertEquals(FROM.plusDays(129), first.date());
        assertEquals(Occasion.VOLUME, first.occasion());
        assertEquals(Occasion.INTERVAL, due(task(100, 90, 0.7, false, FROM), 365).getFirst().occasion());
        assertTrue(due(task(0, 90, 0, false, FROM), 365).isEmpty());
    }

    @Test
    void byDayOfTheYear() {
        UpkeepTask gutters = task(0, 0, 0, false, LocalDate.of(2024, 12, 16), MonthDay.of(9, 25), MonthDay.of(12, 15));
        assertEquals(List.of(LocalDate.of(2025, 9, 25), LocalDate.of(2025, 12, 15)),
                due(gutters, 365).stream().map(DueDay::date).toList());
        // a week early counts, a month early does not
        assertEquals(LocalDate.of(2026, 9, 10), due(task(0, 0, 0, false, LocalDate.of(2025, 9, 3),
                MonthDay.of(9, 10)), 700).getFirst().date());
        assertEquals(LocalDate.of(2025, 9, 10), due(task(0, 0, 0, false, LocalDate.of(2025, 8, 3),
                MonthDay.of(9, 10)), 700).getFirst().date());
        assertEquals(LocalDate.of(2025, 2, 28), due(task(0, 0, 0, false, null, MonthDay.of(2, 29)), 60).getFirst()
                .date());
    }

    @Test
    void beforeTheFirstRain() {
        DueDay first = due(task(0, 0, 0, true, FROM), 365).getFirst();
        assertEquals(LocalDate.of(2025, 9, 20), first.date());
        assertEquals(Occasion.FIRST_RAIN, first.occasion());
        assertTrue(UpkeepCalendar.due(List.of(task(0, 0, 0, true, FROM)), Optional.empty(), FROM, 365).isEmpty());
    }

    @Test
    void neverDone() {
        assertEquals(Occasion.NEVER_DONE, due(task(30, 0, 0, false, null), 30).getFirst().occasion());
        assertTrue(due(task(0, 0, 0, false, null), 365).isEmpty());
        assertFalse(task(0, 0, 0, false, null).hasOccasion());
    }

    @Test
    void refusals() {
        for (double bad : new double[] {-1, Double.NaN, Double.POSITIVE_INFINITY, 1e9}) {
            assertThrows(IllegalArgumentException.class, () -> new UpkeepTask("t", "T", OptionalDouble.of(bad),
                    List.of(), OptionalDouble.empty(), 0, false, Optional.empty()));
            assertThrows(IllegalArgumentException.class, () -> new UpkeepTask("t", "T", OptionalDouble.empty(),
                    List.of(), OptionalDouble.of(bad), 0, false, Optional.empty()));
            assertThrows(IllegalArgumentException.class, () -> task(1, 0, bad, false, null));
        }
        assertThrows(IllegalArgumentException.class, () -> UpkeepCalendar.due(List.of(), RAIN, FROM, 0));
        assertThrows(IllegalArgumentException.class, () -> UpkeepCalendar.due(null, RAIN, FROM, 1));
        assertThrows(IllegalArgumentException.class, () -> FirstRain.earlyDay(FROM, new double[] {Double.NaN}));
    }

    /** Ten years whose rain comes on 1 October, but on 15 September in one. */
    @Test
    void firstRainOfMadeUpYears() {
        LocalDate first = LocalDate.of(2001, 1, 1);
        double[] rain = new double[365 * 10 + 2];
        for (int day = 0; day < rain.length; day++) {
            LocalDate date = first.plusDays(day);
            MonthDay begin = date.getYear() == 2004 ? MonthDay.of(9, 15) : MonthDay.of(10, 1);
            boolean wet = date.getMonthValue() < 5 || !MonthDay.from(date).isBefore(begin);
            rain[day] = wet ? date.getMonthValue() == 1 ? 9 : 5 : 0;
        }
        assertEquals(Optional.of(MonthDay.of(9, 15)), FirstRain.earlyDay(first, rain));
        assertEquals(Optional.empty(), FirstRain.earlyDay(first, new double[0]));
        assertEquals(Optional.empty(), FirstRain.earlyDay(first, new double[4000]));
    }

    /** Every day asked in turn gives the same days as the calendar of a task by interval. */
    @Property(tries = 200)
    void agreesWithAskingEveryDay(@ForAll @IntRange(min = 1, max = 60) int interval,
            @ForAll @IntRange(min = 0, max = 400) int since, @ForAll @IntRange(min = 1, max = 300) int days) {
        LocalDate done = FROM.minusDays(since);
        List<DueDay> due = due(task(interval, 0, 0, false, done), days);
        int found = 0;
        for (int day = 0; day < days; day++) {
            if (!FROM.plusDays(day).isBefore(done.plusDays(interval))) {
                assertEquals(FROM.plusDays(day), due.get(found++).date());
                done = FROM.plusDays(day);
            }
        }
        assertEquals(found, due.size());
    }
}
