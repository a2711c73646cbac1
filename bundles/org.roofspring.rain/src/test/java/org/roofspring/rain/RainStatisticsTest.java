package org.roofspring.rain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.time.LocalDate;
import java.time.Month;
import java.util.List;
import org.junit.jupiter.api.Test;

class RainStatisticsTest {
    private static final double NAN = Double.NaN;

    private static RainRecord seattle() throws IOException {
        return RainReader.read(TestFiles.SEATTLE).record();
    }

    /**
     * Regression values, calculated from the file by an independent script; not published. The file is the daily
     * weather of Seattle of the npm package vega-datasets 3.2.1.
     */
    @Test
    void seattleRegression() throws IOException {
        RainStatistics statistics = RainStatistics.of(seattle());
        assertEquals(1461, statistics.days());
        assertEquals(0, statistics.missingDays());
        double[] yearsMm = {1226.0, 828.0, 1232.8, 1139.2};
        for (int year = 0; year < 4; year++) {
            assertEquals(yearsMm[year], statistics.yearlyTotals().get(year).totalMm(), 1e-9);
            assertTrue(statistics.yearlyTotals().get(year).complete());
        }
        assertEquals(4426.0, statistics.totalMm(), 1e-9);
        assertEquals(1106.5, statistics.annualMeanMm().orElseThrow(), 1e-9);
        assertEquals(828.0, statistics.driestYear().orElseThrow().totalMm(), 1e-9);
        assertEquals(2013, statistics.driestYear().orElseThrow().year());
        assertEquals(623, statistics.wetDays());
        int[] wet = {177, 152, 150, 144};
        for (int year = 0; year < 4; year++) {
            int from = 2012 + year;
            assertEquals(wet[year], statistics.monthlyTotals().stream().filter(m -> m.month().getYear() == from)
                    .mapToInt(MonthTotal::wetDays).sum());
        }
        assertEquals(55.9, statistics.wettestDay().orElseThrow().depthMm());
        assertEquals(48, statistics.longestDrySpell().orElseThrow().days());
        assertEquals(419.0 / 623, statistics.p11().orElseThrow(), 1e-15);
        assertEquals(204.0 / 837, statistics.p01().orElseThrow(), 1e-15);
        assertEquals(0.672552, statistics.p11().orElseThrow(), 5e-7);
        assertEquals(0.243728, statistics.p01().orElseThrow(), 5e-7);
        assertEquals(0.426420, statistics.wetDayRatio().orElseThrow(), 5e-7);
        assertEquals(1106.5, java.util.Arrays.stream(statistics.monthlyMeansMm()).sum(), 1);
    }

    @Test
    void missingDaysAreLeftOut() {
        RainStatistics statistics = RainStatistics.of(RainRecord.of(LocalDate.of(2023, 1, 1),
                new double[] {0, 0, NAN, 0, 5, 3, NAN, 2, 0}));
        assertEquals(2, statistics.missingDays());
        assertEquals(10, statistics.totalMm());
        assertEquals(3, statistics.wetDays());
        // pairs present: dd, dw, ww, wd
        assertEquals(0.5, statistics.p01().orElseThrow());
        assertEquals(0.5, statistics.p11().orElseThrow());
        assertEquals(List.of(new DrySpell(LocalDate.of(2023, 1, 1), 2, false),
                new DrySpell(LocalDate.of(2023, 1, 4), 1, false), new DrySpell(LocalDate.of(2023, 1, 9), 1, false)),
                statistics.drySpells());
        assertTrue(statistics.driestYear().isEmpty());
        assertTrue(statistics.annualMeanIsScaled());
        assertEquals(10.0 / 7 * 365.2425, statistics.annualMeanMm().orElseThrow(), 1e-9);
        assertEquals(new WindowMinimum(2, LocalDate.of(2023, 1, 1), 0), statistics.minimumOver(2).orElseThrow());
        assertEquals(new WindowMinimum(3, LocalDate.of(2023, 1, 4), 8), statistics.minimumOver(3).orElseThrow());
        assertTrue(statistics.minimumOver(4).isEmpty());
    }

    @Test
    void thresholdMakesSmallRainDry() {
        RainStatistics statistics = RainStatistics.of(RainRecord.of(LocalDate.of(2023, 1, 1),
                new double[] {1, 0.9, 1, 1.1}), 1);
        assertEquals(1, statistics.wetDays());
        assertEquals(new DrySpell(LocalDate.of(2023, 1, 1), 3, false), statistics.longestDrySpell().orElseThrow());
        assertThrows(IllegalArgumentException.class, () -> RainStatistics.of(statistics.record(), -1));
        assertThrows(IllegalArgumentException.class, () -> RainStatistics.of(statistics.record(), NAN));
        assertThrows(IllegalArgumentException.class,
                () -> RainStatistics.of(statistics.record(), Double.POSITIVE_INFINITY));
        assertThrows(IllegalArgumentException.class, () -> statistics.minimumOver(0));
    }

    @Test
    void nothingPresentHasNoFigures() {
        RainStatistics statistics = RainStatistics.of(RainRecord.of(LocalDate.of(2023, 1, 1), new double[] {NAN}));
        assertTrue(statistics.annualMeanMm().isEmpty());
        assertTrue(statistics.wetDayRatio().isEmpty());
        assertTrue(statistics.p01().isEmpty());
        assertTrue(statistics.wettestDay().isEmpty());
        assertTrue(statistics.longestDrySpell().isEmpty());
        assertThrows(MissingRainException.class, statistics::monthlyMeansMm);
    }

    @Test
    void annualMaximaOfCompleteYears() throws IOException {
        List<DayDepth> maxima = RainStatistics.of(seattle().slice(LocalDate.of(2012, 3, 1),
                LocalDate.of(2015, 12, 31))).annualMaxima();
        assertEquals(3, maxima.size());
        assertEquals(2013, maxima.get(0).date().getYear());
        // the record's wettest day, 55.9 mm, is of 2015
        assertEquals(55.9, maxima.get(2).depthMm());
    }

    @Test
    void hydrologicalYears() throws IOException {
        RainRecord record = seattle();
        // driest July; the rains reach an even share in October, where hydrologists begin the water year there
        assertEquals(Month.OCTOBER, HydrologicalYear.startMonth(record));
        List<HydrologicalYear> years = HydrologicalYear.split(record, Month.OCTOBER);
        assertEquals(5, years.size());
        assertEquals(new HydrologicalYear(2011, 0, 274, false), years.get(0));
        assertEquals(new HydrologicalYear(2012, 274, 365, true), years.get(1));
        assertEquals(new HydrologicalYear(2015, 1369, 92, false), years.get(4));
        assertEquals(1461, years.stream().mapToInt(HydrologicalYear::days).sum());
        double[] dry = new double[365];
        assertEquals(Month.JANUARY, HydrologicalYear.startMonth(RainRecord.of(LocalDate.of(2023, 1, 1), dry)));
    }
}
