package org.roofspring.rain.internal;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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

    private QualityChecks() {
    }

    static QualityReport report(RainRecord record, Findings findings, RainFile file) {
        file.poll();
        List<Gap> gaps = gaps(record);
        List<DayDepth> suspectTotals = suspectTotals(record, gaps);
        file.poll();
        List<Repeat> repeats = repeats(record);
        file.poll();
        List<CopiedMonth> copiedMonths = copiedMonths(record);
        file.poll();
        Optional<Homogeneity> homogeneity = homogeneity(RainStatistics.of(record).completeYears());
        return new QualityReport(record.firstDay(), record.lastDay(), record.days(), record.missingDays(), gaps,
                repeats, copiedMonths, List.copyOf(findings.multiDayTotals), suspectTotals,
                List.copyOf(findings.impossible),
                Collections.unmodifiableSortedMap(new TreeMap<>(findings.failedQuality)), findings.traces,
                findings.presumedZeroDays, findings.duplicateRows, findings.rowsOutOfOrder, homogeneity,
                List.copyOf(findings.notes));
    }

    private static List<Gap> gaps(RainRecord record) {
        if (record.isComplete()) {
            return List.of();
        }
        List<Gap> gaps = new ArrayList<>();
        int start = -1;
        for (int day = 0; day <= record.days(); day++) {
            boolean missing = day < record.days() && record.isMissing(day);
            if (missing && start < 0) {
                start = day;
            } else if (!missing && start >= 0) {
                gaps.add(new Gap(record.date(start), day - start));
                start = -1;
            }
        }
        return List.copyOf(gaps);
    }

    private static List<Repeat> repeats(RainRecord record) {
        List<Repeat> repeats = new ArrayList<>();
        int start = 0;
        for (int day = 1; day <= record.days(); day++) {
            double depth = record.depthMmOr(start, -1);
            if (day < record.days() && record.depthMmOr(day, -1) == depth) {
                continue;
            }
            if (day - start >= REPEAT_DAYS && depth >= REPEAT_DEPTH_MM
                    && record.mark(start) == DayMark.MEASURED) {
                repeats.add(new Repeat(record.date(start), day - start, depth));
            }
            start = day;
        }
        return List.copyOf(repeats);
    }

    private static List<CopiedMonth> copiedMonths(RainRecord record) {
        List<CopiedMonth> copies = new ArrayList<>();
        Map<Integer, List<Integer>> firstDaysByHash = new HashMap<>();
        YearMonth month = YearMonth.from(record.firstDay());
        int day = 1 - record.firstDay().getDayOfMonth();
        while (day + month.lengthOfMonth() <= record.days()) {
            int length = month.lengthOfMonth();
            if (day >= 0 && wetDays(record, day, length) >= COPY_WET_DAYS) {
                List<Integer> sameHash = firstDaysByHash.computeIfAbsent(hash(record, day, length),
                        key -> new ArrayList<>(1));
                for (int earlier : sameHash) {
                    if (isCopy(record, earlier, day, length)) {
                        copies.add(new CopiedMonth(month, YearMonth.from(record.date(earlier))));
                        break;
                    }
                }
                sameHash.add(day);
            }
            day += length;
            month = month.plusMonths(1);
        }
        return List.copyOf(copies);
    }

    private static int wetDays(RainRecord record, int from, int length) {
        int wet = 0;
        for (int day = from; day < from + length; day++) {
            wet += record.depthMmOr(day, 0) > 0 ? 1 : 0;
        }
        return wet;
    }

    private static int hash(RainRecord record, int from, int length) {
        long hash = 0;
        for (int day = from; day < from + Math.min(length, 28); day++) {
            hash = hash * 1_000_003 + Double.doubleToLongBits(record.depthMmOr(day, -1));
        }
        return Long.hashCode(hash * 0x9E3779B97F4A7C15L);
    }

    private static boolean isCopy(RainRecord record, int earlier, int later, int length) {
        for (int day = 0; day < length; day++) {
            if (record.depthMmOr(earlier + day, -1) != record.depthMmOr(later + day, -1)) {
                return false;
            }
        }
        return true;
    }

    private static List<DayDepth> suspectTotals(RainRecord record, List<Gap> gaps) {
        if (gaps.isEmpty()) {
            return List.of();
        }
        double[] wet = IntStream.range(0, record.days()).mapToDouble(day -> record.depthMmOr(day, 0))
                .filter(depth -> depth > 0).sorted().toArray();
        List<DayDepth> suspects = new ArrayList<>();
        if (wet.length > 0) {
            double limitMm = wet[(int) Math.floor((wet.length - 1) * (1 - UPPER_PART))];
            for (Gap gap : gaps) {
                int after = record.indexOf(gap.firstDay()) + gap.days();
                if (after < record.days() && record.depthMm(after) > limitMm) {
                    suspects.add(new DayDepth(record.date(after), record.depthMm(after)));
                }
            }
        }
        return List.copyOf(suspects);
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
