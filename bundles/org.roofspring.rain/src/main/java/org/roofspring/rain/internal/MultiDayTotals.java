package org.roofspring.rain.internal;

import java.time.LocalDate;
import java.util.Map;
import java.util.TreeMap;
import org.roofspring.rain.DayMark;
import org.roofspring.rain.MultiDayPolicy;
import org.roofspring.rain.QualityReport.MultiDayTotal;

/** Totals of several days (GHCN elements MDPR, the total, and DAPR, the number of days), set against the days. */
final class MultiDayTotals {
    /** Longer periods are not believed. */
    private static final int LONGEST_DAYS = 366;

    private record Total(double depthMm, long line) {
    }

    private final Map<Long, Total> totals = new TreeMap<>();
    private final Map<Long, Integer> lengths = new TreeMap<>();

    void total(long lastEpochDay, double depthMm, long line) {
        totals.put(lastEpochDay, new Total(depthMm, line));
    }

    void length(long lastEpochDay, int days) {
        lengths.put(lastEpochDay, days);
    }

    /** Spreads or refuses every total; it is never taken as the rain of the day it was read on. */
    void apply(DayTable days, Findings findings, MultiDayPolicy policy) {
        totals.forEach((lastDay, total) -> {
            int length = lengths.getOrDefault(lastDay, 0);
            if (length < 1 || length > LONGEST_DAYS) {
                length = 0;
            }
            if (!Findings.isPossible(total.depthMm / Math.max(length, 1))) {
                findings.impossible(lastDay, total.depthMm, total.line);
                return;
            }
            // a period in which some day has its own reading contradicts itself
            boolean free = length > 0;
            for (long day = lastDay - length + 1; day <= lastDay; day++) {
                free &= !days.hasDepth(day);
            }
            boolean spread = free && policy == MultiDayPolicy.SPREAD;
            for (long day = lastDay - Math.max(length, 1) + 1; day <= lastDay; day++) {
                if (spread) {
                    days.set(day, total.depthMm / length, DayMark.SPREAD);
                } else if (!days.hasDepth(day)) {
                    days.set(day, Double.NaN, DayMark.IN_MULTI_DAY_TOTAL);
                }
            }
            findings.multiDayTotals.add(new MultiDayTotal(LocalDate.ofEpochDay(lastDay), length, total.depthMm,
                    spread));
        });
    }
}
