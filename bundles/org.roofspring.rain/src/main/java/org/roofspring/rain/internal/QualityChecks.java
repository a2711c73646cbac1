package org.roofspring.rain.internal;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.roofspring.rain.DayDepth;
import org.roofspring.rain.DayMark;
import org.roofspring.rain.QualityReport;
import org.roofspring.rain.QualityReport.CopiedMonth;
import org.roofspring.rain.QualityReport.Gap;
import org.roofspring.rain.QualityReport.Homogeneity;
import org.roofspring.rain.QualityReport.Repeat;
import org.roofspring.rain.RainRecord;
import org.roofspring.rain.RainStatistics;
import org.roofspring.rain.YearTotal;

/**
 * Checks of a record for what often goes wrong in the keeping of one. Their limits are common practice without a
 * source: they point at days to look at, and change nothing.
 */
final class QualityChecks {
    /** The same depth on this many days in a row is suspect ... */
    private static final int REPEAT_DAYS = 4;
    /** ... when it is at least this [mm]; gauges read in steps repeat small depths by chance. */
    private static final double REPEAT_DEPTH_MM = 2;
    /** Wet days that a month needs before its being equal to another is suspect. */
    private static final int COPY_WET_DAYS = 5;
    /** A reading after a gap is suspect when it is among this upper part of the wet days. */
    private static final double UPPER_PART = 0.02;
    private static final int YEARS_FOR_SHIFT = 10;
    /** Low bits of a key that hold the number of a month; a record has at most 120,000 months. */
    private static final long MONTH_BITS = 0x1FFFF;

    private final LocalDate firstDay;
    private final double[] depthMm;
    private final byte[] marks;

    private QualityChecks(ParsedStation station) {
        this.firstDay = station.firstDay();
        this.depthMm = station.depthMm();
        this.marks = station.marks();
    }

    /** What the parser counted, and what these checks find in the record that was made of it. */
    static QualityReport report(ParsedStation station, RainRecord record) {
        QualityChecks checks = new QualityChecks(station);
        Findings findings = station.findings();
        List<Gap> gaps = record.isComplete() ? List.of() : checks.gaps();
        List<DayDepth> suspectTotals = gaps.isEmpty() ? List.of() : checks.suspectTotals(gaps);
        List<Repeat> repeats = checks.repeats();
        List<CopiedMonth> copiedMonths = checks.copiedMonths();
        Optional<Homogeneity> homogeneity = homogeneity(RainStatistics.of(record).completeYears());
        return new QualityReport(record.firstDay(), record.lastDay(), record.days(), record.missingDays(), gaps,
                repeats, copiedMonths, List.copyOf(findings.multiDayTotals), suspectTotals,
                List.copyOf(findings.impossible),
                Collections.unmodifiableSortedMap(new TreeMap<>(findings.failedQuality)), findings.traces,
                findings.presumedZeroDays, findings.duplicateRows, findings.rowsOutOfOrder, homogeneity,
                List.copyOf(findings.notes));
    }

    private List<Gap> gaps() {
        List<Gap> gaps = new ArrayList<>();
        int start = -1;
        for (int day = 0; day <= depthMm.length; day++) {
            boolean missing = day < depthMm.length && Double.isNaN(depthMm[day]);
            if (missing && start < 0) {
                start = day;
            } else if (!missing && start >= 0) {
                gaps.add(new Gap(firstDay.plusDays(start), day - start));
                start = -1;
            }
        }
        return List.copyOf(gaps);
    }

    private List<Repeat> repeats() {
        List<Repeat> repeats = new ArrayList<>();
        int start = 0;
        for (int day = 1; day <= depthMm.length; day++) {
            if (day < depthMm.length && depthMm[day] == depthMm[start]) {
                continue;
            }
            if (day - start >= REPEAT_DAYS && depthMm[start] >= REPEAT_DEPTH_MM
                    && marks[start] == DayMark.MEASURED.ordinal()) {
                repeats.add(new Repeat(firstDay.plusDays(start), day - start, depthMm[start]));
            }
            start = day;
        }
        return List.copyOf(repeats);
    }

    /** Months are sorted by a hash of their days, so that equal ones stand side by side. */
    private List<CopiedMonth> copiedMonths() {
        long months = ChronoUnit.MONTHS.between(firstDay.withDayOfMonth(1), firstDay.plusDays(depthMm.length)) + 1;
        int[] firstDays = new int[(int) months];
        long[] keys = new long[(int) months];
        int count = 0;
        YearMonth month = YearMonth.from(firstDay);
        int day = 1 - firstDay.getDayOfMonth();
        while (day + month.lengthOfMonth() <= depthMm.length) {
            if (day >= 0 && wetDays(day, month.lengthOfMonth()) >= COPY_WET_DAYS) {
                firstDays[count] = day;
                keys[count] = hash(day, month.lengthOfMonth()) & ~MONTH_BITS | count;
                count++;
            }
            day += month.lengthOfMonth();
            month = month.plusMonths(1);
        }
        Arrays.sort(keys, 0, count);
        List<CopiedMonth> copies = new ArrayList<>();
        for (int at = 1; at < count; at++) {
            int earlier = firstDays[(int) (keys[at - 1] & MONTH_BITS)];
            int later = firstDays[(int) (keys[at] & MONTH_BITS)];
            if ((keys[at - 1] & ~MONTH_BITS) == (keys[at] & ~MONTH_BITS) && isCopy(earlier, later)) {
                copies.add(new CopiedMonth(YearMonth.from(firstDay.plusDays(later)),
                        YearMonth.from(firstDay.plusDays(earlier))));
            }
        }
        copies.sort(Comparator.comparing(CopiedMonth::month));
        return List.copyOf(copies);
    }

    private int wetDays(int from, int length) {
        int wet = 0;
        for (int day = from; day < from + length; day++) {
            wet += depthMm[day] > 0 ? 1 : 0;
        }
        return wet;
    }

    private long hash(int from, int length) {
        long hash = length;
        for (int day = from; day < from + length; day++) {
            hash = hash * 1_000_003 + Double.doubleToRawLongBits(depthMm[day]);
        }
        return hash * 0x9E3779B97F4A7C15L;
    }

    private boolean isCopy(int earlier, int later) {
        int length = firstDay.plusDays(earlier).lengthOfMonth();
        return firstDay.plusDays(later).lengthOfMonth() == length
                && Arrays.equals(depthMm, earlier, earlier + length, depthMm, later, later + length);
    }

    private List<DayDepth> suspectTotals(List<Gap> gaps) {
        double limitMm = upperLimitMm();
        List<DayDepth> suspects = new ArrayList<>();
        for (Gap gap : gaps) {
            int after = (int) (gap.firstDay().toEpochDay() - firstDay.toEpochDay()) + gap.days();
            if (after < depthMm.length && depthMm[after] > limitMm) {
                suspects.add(new DayDepth(firstDay.plusDays(after), depthMm[after]));
            }
        }
        return List.copyOf(suspects);
    }

    /** The depth [mm] that few wet days exceed, to a tenth: counted in bins, since sorting decades takes longer. */
    private double upperLimitMm() {
        int[] bins = new int[(int) (10 * Findings.LARGEST_OBSERVED_MM) + 2];
        int wet = 0;
        for (double depth : depthMm) {
            if (depth > 0) {
                bins[Math.min((int) Math.ceil(10 * depth), bins.length - 1)]++;
                wet++;
            }
        }
        int above = 0;
        int bin = bins.length - 1;
        while (bin > 0 && above + bins[bin] <= wet * UPPER_PART) {
            above += bins[bin--];
        }
        return bin / 10.0;
    }

    /**
     * The test of Pettitt (1979): U(t) = 2 (r1 + ... + rt) - t (n + 1) with the ranks r of the n totals, K = max |U|,
     * probability about 2 exp(-6 K^2 / (n^3 + n^2)).
     */
    static Optional<Homogeneity> homogeneity(List<YearTotal> years) {
        int n = years.size();
        if (n < YEARS_FOR_SHIFT) {
            return Optional.empty();
        }
        double[] ranks = ranks(years.stream().mapToDouble(YearTotal::totalMm).toArray());
        double u = 0;
        double most = -1;
        int split = 1;
        for (int t = 1; t < n; t++) {
            u += 2 * ranks[t - 1] - (n + 1);
            if (Math.abs(u) > most) {
                most = Math.abs(u);
                split = t;
            }
        }
        double probability = Math.min(1, 2 * Math.exp(-6 * most * most / ((double) n * n * n + (double) n * n)));
        return Optional.of(new Homogeneity(n, years.get(split - 1).year(), mean(years.subList(0, split)),
                mean(years.subList(split, n)), probability));
    }

    private static double[] ranks(double[] values) {
        Integer[] order = IntStream.range(0, values.length).boxed()
                .sorted(Comparator.comparingDouble(i -> values[i])).toArray(Integer[]::new);
        double[] ranks = new double[values.length];
        int from = 0;
        while (from < order.length) {
            int to = from;
            while (to + 1 < order.length && values[order[to + 1]] == values[order[from]]) {
                to++;
            }
            for (int place = from; place <= to; place++) {
                ranks[order[place]] = (from + to) / 2.0 + 1;
            }
            from = to + 1;
        }
        return ranks;
    }

    private static double mean(List<YearTotal> years) {
        return years.stream().mapToDouble(YearTotal::totalMm).average().orElseThrow();
    }
}
