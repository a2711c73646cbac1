package org.roofspring.drawing.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;

import org.junit.jupiter.api.Test;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

class TicksTest {
    @Test
    void roundNumbers() {
        assertEquals(List.of("0", "20", "40", "60", "80", "100", "120", "140"), Ticks.numbers(0, 124.77, 7).labels());
        assertEquals(List.of("0.0", "0.2", "0.4", "0.6", "0.8", "1.0"), Ticks.numbers(0, 1, 5).labels());
        assertEquals(List.of("\u221210", "\u22125", "0", "5"), Ticks.numbers(-7, 4, 4).labels());
        assertEquals(List.of("0", "5\u202f000", "10\u202f000"), Ticks.numbers(0, 9_000, 2).labels());
    }

    @Test
    void aSingleValueStillHasAnAxis() {
        Ticks ticks = Ticks.numbers(7, 7, 4);
        assertTrue(ticks.low() <= 7 && ticks.high() >= 7 && ticks.high() > ticks.low());
        assertTrue(Ticks.numbers(0, 0, 4).high() > 0);
    }

    @Test
    void yearsAndMonths() {
        assertEquals(List.of("1990", "2000", "2010", "2020"), Ticks.days(day("1985-01-01"), day("2024-12-31"),
                5).labels());
        assertEquals(List.of("Mar", "May", "Jul", "Sep", "Nov", "2026"), Ticks.days(day("2025-02-01"),
                day("2026-01-31"), 6).labels());
        assertEquals(List.of("1985", "1990", "1995"), Ticks.years(1984.6, 1995.4, 3).labels());
    }

    private static double day(String date) {
        return LocalDate.parse(date).toEpochDay();
    }

    @Property(tries = 500)
    void coverTheDataWithAFewEvenTicks(@ForAll @DoubleRange(min = -1e8, max = 1e8) double low,
            @ForAll @DoubleRange(min = 0, max = 1e8) double span, @ForAll @IntRange(min = 1, max = 40) int most) {
        Ticks ticks = Ticks.numbers(low, low + span, most);
        // less than can be seen: a value this little beyond a tick makes no tick of its own
        double slack = 1e-6 * Math.max(Math.max(1, span), Math.max(Math.abs(low), Math.abs(low + span)));
        assertTrue(ticks.low() <= low + slack && ticks.high() >= low + span - slack, () -> ticks.toString());
        assertTrue(ticks.at().size() >= 2 && ticks.at().size() <= most + 3, () -> ticks.toString());
        assertEquals(ticks.labels().size(), ticks.labels().stream().distinct().count(), () -> ticks.toString());
    }

    @Test
    void refusesAbsurdEnds() {
        assertThrows(IllegalArgumentException.class, () -> Ticks.numbers(1, 0, 5));
        assertThrows(IllegalArgumentException.class, () -> Ticks.numbers(0, Double.NaN, 5));
        assertThrows(IllegalArgumentException.class, () -> Ticks.numbers(0, 1, 0));
    }
}
