package org.roofspring.rain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.Month;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;

class WeatherSynthesisTest {
    private static final LocalDate START = LocalDate.of(2001, 1, 1);
    private static final int CENTURIES = 365_243;

    private static RainRecord upland() throws IOException {
        return RainReader.read(Path.of("../../demo-data/rain/upland-40y.csv")).record();
    }

    @Test
    void fitCountsPairsOfEachMonth() throws IOException {
        RainRecord record = upland();
        WeatherSynthesis fitted = WeatherSynthesis.fit(record);
        for (Month month : Month.values()) {
            int dry = 0;
            int dryThenWet = 0;
            int wet = 0;
            int wetThenWet = 0;
            for (int day = 1; day < record.days(); day++) {
                if (record.date(day).getMonth() == month) {
                    boolean rains = record.depthMm(day) > 0;
                    if (record.depthMm(day - 1) > 0) {
                        wet++;
                        wetThenWet += rains ? 1 : 0;
                    } else {
                        dry++;
                        dryThenWet += rains ? 1 : 0;
                    }
                }
            }
            assertEquals((double) dryThenWet / dry, fitted.month(month).p01());
            assertEquals((double) wetThenWet / wet, fitted.month(month).p11());
        }
        assertEquals("fitted to the record 1985-01-01 to 2024-12-31", fitted.basis());
    }

    @Test
    void longSynthesisGivesTheFitBack() throws IOException {
        WeatherSynthesis fitted = WeatherSynthesis.fit(upland());
        WeatherSynthesis again = WeatherSynthesis.fit(fitted.generate(START, CENTURIES, 42, () -> false));
        for (Month month : Month.values()) {
            MonthWeather first = fitted.month(month);
            MonthWeather second = again.month(month);
            assertEquals(first.p01(), second.p01(), 0.01);
            assertEquals(first.amount().meanMm(), second.amount().meanMm(), 0.12 * first.amount().meanMm());
        }
        MonthWeather january = fitted.month(Month.JANUARY);
        assertEquals(january.p11(), again.month(Month.JANUARY).p11(), 0.01);
        assertEquals(january.amount().shape(), again.month(Month.JANUARY).amount().shape(), 0.02);
        assertEquals(january.meanDailyMm(), RainStatistics.of(fitted.generate(START, CENTURIES, 43, () -> false))
                .meanDailyMmByMonth()[0], 0.03 * january.meanDailyMm());
    }

    @Test
    void seedDecides() throws IOException {
        WeatherSynthesis fitted = WeatherSynthesis.fit(upland());
        RainRecord one = fitted.generate(START, 1000, 7, () -> false);
        assertEquals(one, fitted.generate(START, 1000, 7, () -> false));
        assertNotEquals(one, fitted.generate(START, 1000, 8, () -> false));
        assertEquals(1000, one.count(DayMark.SYNTHETIC));
        assertEquals(1, fitted.generate(LocalDate.of(2000, 2, 29), 1, 7, () -> false).days());
        assertThrows(IllegalArgumentException.class, () -> fitted.generate(START, 0, 7, () -> false));
        assertThrows(IllegalArgumentException.class, () -> fitted.generate(START, Integer.MAX_VALUE, 7, () -> false));
        assertThrows(CancellationException.class, () -> fitted.generate(START, 1000, 7, () -> true));
    }

    @Test
    void recordsThatCannotBeFitted() {
        assertTrue(assertThrows(MissingRainException.class,
                () -> WeatherSynthesis.fit(RainRecord.of(START, new double[365]))).getMessage().contains("never"));
        double[] halfYear = new double[181];
        Arrays.fill(halfYear, 1);
        assertTrue(assertThrows(MissingRainException.class,
                () -> WeatherSynthesis.fit(RainRecord.of(START, halfYear))).getMessage().contains("month 7"));
    }

    @Test
    void sameRainEveryDay() {
        double[] depthMm = new double[730];
        Arrays.fill(depthMm, 5);
        RainRecord made = WeatherSynthesis.fit(RainRecord.of(START, depthMm)).generate(START, 400, 1, () -> false);
        for (double mm : made.completeDepthsMm()) {
            assertEquals(5, mm, 0.05);
        }
    }

    @Test
    void normalsNeedWetDaysOrADonor() throws IOException {
        MonthlyNormals bare = new MonthlyNormals(Collections.nCopies(12, 50.0), List.of());
        assertTrue(assertThrows(MissingRainException.class, () -> WeatherSynthesis.fromNormals(bare)).getMessage()
                .contains("wet-day counts or the record of a donor"));
        MonthlyNormals normals = RainReader.readNormals(TestFiles.RESOURCES.resolve("normals.csv"), ReadOptions.AUTO);
        RainStatistics made = RainStatistics.of(WeatherSynthesis.fromNormals(normals)
                .generate(START, CENTURIES, 3, () -> false));
        assertEquals(normals.annualMm(), made.annualMeanMm().orElseThrow(), 0.02 * normals.annualMm());
        double[] wetDays = made.meanWetDaysByMonth();
        for (Month month : Month.values()) {
            // the chain takes some days to settle at the turn of a month
            assertEquals(normals.wetDays(month).orElseThrow(), wetDays[month.ordinal()], 0.45);
        }
        RainRecord donor = upland();
        WeatherSynthesis scaled = WeatherSynthesis.fromNormals(bare, donor, "Invented Upland");
        assertTrue(scaled.basis().contains("Invented Upland"));
        assertEquals(WeatherSynthesis.fit(donor).month(Month.MARCH).p11(), scaled.month(Month.MARCH).p11());
        assertEquals(50, scaled.month(Month.MARCH).meanDailyMm() * 31, 1e-9);
        double[] dryJanuary = new double[365];
        dryJanuary[100] = 5;
        assertThrows(MissingRainException.class, () -> WeatherSynthesis.fromNormals(bare,
                RainRecord.of(START, dryJanuary), "dry"));
    }

    @Test
    void comparisonSaysWhereTheSynthesisFallsShort() throws IOException {
        RainRecord record = upland();
        SynthesisComparison comparison = SynthesisComparison.of(record, 40, 1, () -> false);
        assertEquals(17, comparison.rows().size());
        SynthesisComparison.Row spread = comparison.rows(SynthesisComparison.Figure.YEARLY_SPREAD).get(0);
        assertEquals(RainStatistics.of(record).annualSpreadMm().orElseThrow(), spread.record());
        // the upland's seasons have a wetness of their own, which a chain cannot make
        assertTrue(spread.fallsShort());
        assertTrue(comparison.fallsShort());
        assertTrue(comparison.verdict().startsWith("The yearly spread (standard deviation) falls short: "),
                comparison.verdict());
        assertTrue(comparison.verdict().contains("would be too small"));
        assertTrue(comparison.verdict().endsWith("Synthetic rain stands beside the record, never in place of it."));
        SynthesisComparison.Row share = comparison.rows(SynthesisComparison.Figure.WET_DAY_SHARE).get(0);
        assertEquals(share.record(), share.synthetic(), 0.01);
        assertFalse(share.fallsShort());
        for (SynthesisComparison.Row row : comparison.rows(SynthesisComparison.Figure.MONTH_MEAN)) {
            assertTrue(row.low() <= row.synthetic() && row.synthetic() <= row.high());
        }
        assertThrows(IllegalArgumentException.class, () -> SynthesisComparison.of(record, 19, 1, () -> false));
        assertThrows(CancellationException.class, () -> SynthesisComparison.of(record, 40, 1, () -> true));
    }

    /** A record that the chain itself made is matched, so the verdict can also be good. */
    @Test
    void comparisonFindsItsOwnRainInOrder() throws IOException {
        RainRecord made = WeatherSynthesis.fit(upland()).generate(START, 40 * 365, 5, () -> false);
        SynthesisComparison comparison = SynthesisComparison.of(made, 40, 9, () -> false);
        assertFalse(comparison.fallsShort(), comparison.verdict());
        assertTrue(comparison.verdict().startsWith("Yearly spread and dry spells are within"));
    }

    @Test
    void comparisonOfARecordWithGaps() throws IOException {
        double[] depthMm = upland().completeDepthsMm();
        for (int day = 200; day < depthMm.length; day += 400) {
            depthMm[day] = Double.NaN;
        }
        SynthesisComparison comparison = SynthesisComparison.of(RainRecord.of(START, depthMm), 20, 1, () -> false);
        assertFalse(comparison.rows().isEmpty());
        for (SynthesisComparison.Row row : comparison.rows()) {
            assertTrue(Double.isFinite(row.low() + row.synthetic() + row.high()), row.label());
        }
    }
}
