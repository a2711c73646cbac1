package org.roofspring.ui.tests.chart;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

import org.junit.jupiter.api.Test;
import org.roofspring.ui.look.DateTicks;
import org.roofspring.ui.parts.chart.TraceThinner;

/** Thinning to pixels, and the marks of the time axis. */
class ChartArithmeticTest {
    @Test
    void aShortSeriesIsKeptWhole() {
        double[] values = { 3, 1, 2 };
        TraceThinner.Thinned thinned = TraceThinner.thin(values, 0, 3, 100);
        assertArrayEquals(values, thinned.values());
        assertArrayEquals(new int[] { 0, 1, 2 }, thinned.index());
    }

    /** Column by column the least and the greatest value of the whole series are there, in rising order of time. */
    @Test
    void extremesOfEveryColumnAreKept() {
        Random random = new Random(11);
        for (int run = 0; run < 200; run++) {
            int length = 1 + random.nextInt(3000);
            double[] values = random.doubles(length, 0, 100).toArray();
            int from = random.nextInt(length);
            int to = from + random.nextInt(length - from + 1);
            int columns = 1 + random.nextInt(300);
            TraceThinner.Thinned thinned = TraceThinner.thin(values, from, to, columns);
            assertTrue(thinned.values().length <= 2 * columns);
            for (int i = 0; i < thinned.index().length; i++) {
                assertEquals(values[thinned.index()[i]], thinned.values()[i]);
                assertTrue(i == 0 || thinned.index()[i] > thinned.index()[i - 1]);
            }
            for (int column = 0; column < columns && to - from > 2 * columns; column++) {
                int begin = from + (int) ((long) (to - from) * column / columns);
                int end = from + (int) ((long) (to - from) * (column + 1) / columns);
                double[] inside = Arrays.copyOfRange(values, begin, end);
                double[] kept = Arrays.stream(thinned.index()).filter(i -> i >= begin && i < end).mapToDouble(i -> values[i]).toArray();
                assertEquals(Arrays.stream(inside).min().orElseThrow(), Arrays.stream(kept).min().orElseThrow());
                assertEquals(Arrays.stream(inside).max().orElseThrow(), Arrays.stream(kept).max().orElseThrow());
            }
        }
    }

    @Test
    void impossibleSpansAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> TraceThinner.thin(new double[3], 0, 4, 10));
        assertThrows(IllegalArgumentException.class, () -> TraceThinner.thin(new double[3], 2, 1, 10));
        assertThrows(IllegalArgumentException.class, () -> TraceThinner.thin(new double[3], 0, 3, 0));
    }

    @Test
    void decadesYearsMonthsAndDaysAreMarked() {
        LocalDate first = LocalDate.of(1985, 1, 1);
        assertEquals(List.of("1985", "1990", "1995", "2000", "2005", "2010", "2015", "2020"), labels(first, 0, 14609, 8));
        assertEquals(List.of("1985", "1986", "1987"), labels(first, 0, 1000, 5));
        assertEquals(List.of("1985-01", "1985-02", "1985-03"), labels(first, 0, 80, 3));
        assertEquals(List.of("1985-01-01", "1985-01-02", "1985-01-03"), labels(first, 0, 2, 4));
    }

    @Test
    void marksFallOnTheirDays() {
        LocalDate first = LocalDate.of(1984, 12, 30);
        for (DateTicks.Tick tick : DateTicks.of(first, 100, 9000, 10)) {
            LocalDate day = first.plusDays((long) tick.day());
            assertEquals(1, day.getDayOfYear());
            assertEquals(tick.label(), String.valueOf(day.getYear()));
            assertTrue(tick.day() >= 100 && tick.day() <= 9000);
        }
    }

    @Test
    void thereAreNeverMoreLabelsThanFit() {
        Random random = new Random(3);
        for (int run = 0; run < 500; run++) {
            double from = random.nextDouble() * 20000;
            double to = from + 1 + random.nextDouble() * 40000;
            int most = 1 + random.nextInt(20);
            assertTrue(DateTicks.of(LocalDate.of(1900, 2, 3), from, to, most).size() <= most + 1);
        }
    }

    private static List<String> labels(LocalDate first, double from, double to, int most) {
        return DateTicks.of(first, from, to, most).stream().map(DateTicks.Tick::label).toList();
    }
}
