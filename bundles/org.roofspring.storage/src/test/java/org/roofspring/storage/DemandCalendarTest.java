package org.roofspring.storage;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import org.junit.jupiter.api.Test;

class DemandCalendarTest {

    @Test
    void schoolWeekTermAndHoliday() {
        DemandCalendar school = new DemandCalendar(2, EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY),
                List.of(season(1, 10, 6, 30), season(9, 1, 12, 15)), List.of(season(10, 14, 10, 18)), 0.1, List.of());
        assertEquals(2, school.volumeM3(LocalDate.of(2024, 10, 11))); // Friday
        assertEquals(0.2, school.volumeM3(LocalDate.of(2024, 10, 12))); // Saturday
        assertEquals(0.2, school.volumeM3(LocalDate.of(2024, 10, 14))); // Monday of the break
        assertEquals(2, school.volumeM3(LocalDate.of(2024, 10, 21)));
        assertEquals(0.2, school.volumeM3(LocalDate.of(2024, 7, 1)));
        assertEquals(2, school.volumeM3(LocalDate.of(2025, 1, 10)));
    }

    @Test
    void seasonMayRunOverTheNewYear() {
        Season rains = season(11, 15, 2, 29);
        assertEquals(List.of(false, true, true, true, true, false), List.of(LocalDate.of(2023, 11, 14),
                LocalDate.of(2023, 11, 15), LocalDate.of(2023, 12, 31), LocalDate.of(2024, 1, 1),
                LocalDate.of(2024, 2, 29), LocalDate.of(2024, 3, 1)).stream().map(rains::contains).toList());
    }

    @Test
    void seriesFollowsTheDateAcrossALeapDay() {
        List<Double> months = new java.util.ArrayList<>(Collections.nCopies(12, 1.0));
        months.set(1, 3.0);
        DemandCalendar garden = new DemandCalendar(0.5, EnumSet.allOf(DayOfWeek.class), List.of(), List.of(), 1,
                months);
        assertArrayEquals(new double[] {1.5, 1.5, 0.5}, garden.seriesM3(LocalDate.of(2024, 2, 28), 3));
        assertArrayEquals(new double[] {1.5, 0.5, 0.5}, garden.seriesM3(LocalDate.of(2023, 2, 28), 3));
        assertArrayEquals(new double[] {0.4, 0.4}, DemandCalendar.everyDay(0.4).seriesM3(LocalDate.EPOCH, 2));
    }

    @Test
    void badNumbersAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> DemandCalendar.everyDay(-1));
        assertThrows(IllegalArgumentException.class, () -> new DemandCalendar(1, EnumSet.allOf(DayOfWeek.class),
                List.of(), List.of(), Double.NaN, List.of()));
        assertThrows(IllegalArgumentException.class, () -> new DemandCalendar(1, EnumSet.allOf(DayOfWeek.class),
                List.of(), List.of(), 1, List.of(1.0)));
        assertThrows(IllegalArgumentException.class, () -> new DemandCalendar(1, EnumSet.allOf(DayOfWeek.class),
                List.of(), List.of(), 1, Collections.nCopies(12, 11.0)));
    }

    private static Season season(int fromMonth, int fromDay, int toMonth, int toDay) {
        return new Season(MonthDay.of(fromMonth, fromDay), MonthDay.of(toMonth, toDay));
    }
}
