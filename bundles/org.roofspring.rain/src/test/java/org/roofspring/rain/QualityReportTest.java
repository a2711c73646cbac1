package org.roofspring.rain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class QualityReportTest {
    private static final LocalDate START = LocalDate.of(2001, 1, 1);

    private static QualityReport report(double[] depthMm) {
        StringBuilder text = new StringBuilder("date,precipitation[mm]\n");
        for (int day = 0; day < depthMm.length; day++) {
            text.append(START.plusDays(day)).append(',').append(Double.isNaN(depthMm[day]) ? "" : depthMm[day])
                    .append('\n');
        }
        return TestFiles.read(text.toString()).quality();
    }

    @Test
    void sameDepthOnDaysInARow() {
        QualityReport quality = report(new double[] {0, 0, 0, 0, 5, 5, 5, 5, 1, 1, 1, 1, 7, 7, 7});
        assertEquals(List.of(new QualityReport.Repeat(START.plusDays(4), 4, 5)), quality.repeats());
        assertTrue(quality.sentences().contains("The same depth stands on days in a row 1 time, first 5.0 mm on 4 "
                + "days from 2001-01-05."));
    }

    @Test
    void copiedMonth() {
        double[] depthMm = random(365, 1);
        // March as January
        System.arraycopy(depthMm, 0, depthMm, 59, 31);
        QualityReport quality = report(depthMm);
        assertEquals(List.of(new QualityReport.CopiedMonth(YearMonth.of(2001, 3), YearMonth.of(2001, 1))),
                quality.copiedMonths());
        depthMm[60] += 0.1;
        assertTrue(report(depthMm).copiedMonths().isEmpty());
        // equal because they are dry
        assertTrue(report(new double[730]).copiedMonths().isEmpty());
    }

    private static double[] random(int days, long seed) {
        Random random = new Random(seed);
        double[] depthMm = new double[days];
        for (int day = 0; day < days; day++) {
            depthMm[day] = random.nextInt(3) == 0 ? random.nextInt(1, 400) / 10.0 : 0;
        }
        return depthMm;
    }

    @Test
    void largeReadingAfterAGap() {
        double[] depthMm = random(1000, 2);
        depthMm[500] = Double.NaN;
        depthMm[501] = Double.NaN;
        depthMm[502] = 95;
        depthMm[700] = Double.NaN;
        depthMm[701] = 5;
        QualityReport quality = report(depthMm);
        assertEquals(List.of(new DayDepth(START.plusDays(502), 95)), quality.suspectTotals());
        assertEquals(List.of(new QualityReport.Gap(START.plusDays(500), 2),
                new QualityReport.Gap(START.plusDays(700), 1)), quality.gaps());
        assertTrue(quality.sentences().contains("2 gaps, the longest of 2 days from 2002-05-16."));
    }

    /** Twelve years, the first six with 400 mm and the last six with 800 mm or so: K = 36. */
    @Test
    void yearlyTotalsThatShift() {
        QualityReport.Homogeneity shifted = report(years(400, 800, 12, 6)).homogeneity().orElseThrow();
        assertEquals(12, shifted.years());
        assertEquals(2006, shifted.lastYearBefore());
        assertEquals(2 * Math.exp(-6.0 * 36 * 36 / (12 * 12 * 12 + 12 * 12)), shifted.probability(), 1e-12);
        assertTrue(shifted.isSuspect());
        assertTrue(shifted.meanBeforeMm() < 410 && shifted.meanAfterMm() > 790);
        assertFalse(report(years(600, 600, 12, 6)).homogeneity().orElseThrow().isSuspect());
        assertTrue(report(years(400, 800, 9, 4)).homogeneity().isEmpty());
    }

    /** The statistic by its definition, the sum of signs over all pairs of years before and after. */
    @Test
    void shiftByTheDefinition() {
        double[] depthMm = years(500, 560, 25, 11);
        QualityReport quality = report(depthMm);
        double[] totals = RainStatistics.of(RainRecord.of(START, depthMm)).completeYears().stream()
                .mapToDouble(YearTotal::totalMm).toArray();
        int most = 0;
        for (int t = 1; t < totals.length; t++) {
            int sum = 0;
            for (int i = 0; i < t; i++) {
                for (int j = t; j < totals.length; j++) {
                    sum += (int) Math.signum(totals[i] - totals[j]);
                }
            }
            most = Math.max(most, Math.abs(sum));
        }
        double n = totals.length;
        assertEquals(Math.min(1, 2 * Math.exp(-6 * most * most / (n * n * n + n * n))),
                quality.homogeneity().orElseThrow().probability(), 1e-12);
    }

    /** Yearly totals near a level, up and down in turn so that nothing but the level shifts. */
    private static double[] years(double beforeMm, double afterMm, int years, int before) {
        double[] depthMm = new double[(int) (START.plusYears(years).toEpochDay() - START.toEpochDay())];
        for (int year = 0; year < years; year++) {
            int day = (int) (START.plusYears(year).plusDays(40).toEpochDay() - START.toEpochDay());
            depthMm[day] = (year < before ? beforeMm : afterMm) + (year % 2 == 0 ? 5 : -5) + year % 3;
        }
        return depthMm;
    }
}
