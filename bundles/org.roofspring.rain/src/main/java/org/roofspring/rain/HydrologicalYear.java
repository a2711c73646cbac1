package org.roofspring.rain;

import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;

/**
 * Twelve months of a record that begin in a chosen month, so that a dry season falls within one year.
 *
 * @param startYear calendar year in which it begins
 * @param firstIndex index of its first day in the record
 * @param days       days of it that lie in the record
 * @param whole      whether the record covers all of it; missing days do not count against that
 */
public record HydrologicalYear(int startYear, int firstIndex, int days, boolean whole) {

    /**
     * Splits a record; only the first and the last year can be other than whole.
     *
     * @param record any record
     * @param start  month in which a year begins
     */
    public static List<HydrologicalYear> split(RainRecord record, Month start) {
        List<HydrologicalYear> years = new ArrayList<>();
        LocalDate first = record.firstDay();
        LocalDate begin = LocalDate.of(first.getYear(), start, 1);
        if (begin.isAfter(first)) {
            begin = begin.minusYears(1);
        }
        while (!begin.isAfter(record.lastDay())) {
            LocalDate end = begin.plusYears(1);
            long from = Math.max(0, begin.toEpochDay() - first.toEpochDay());
            long until = Math.min(record.days(), end.toEpochDay() - first.toEpochDay());
            boolean whole = until - from == end.toEpochDay() - begin.toEpochDay();
            years.add(new HydrologicalYear(begin.getYear(), (int) from, (int) (until - from), whole));
            begin = end;
        }
        return List.copyOf(years);
    }

    /**
     * The month in which the rains set in: from the driest month onwards, the first whose mean daily rain reaches
     * the mean of the twelve months. A year that begins there ends with the dry season, and a dry season is not
     * split between two years. January where it never rained.
     *
     * <p>Our own definition; hydrologists put the start of the year near the least storage.
     *
     * @throws MissingRainException when a month of the calendar has no reading at all
     */
    public static Month startMonth(RainRecord record) {
        double[] meanDailyMm = RainStatistics.of(record).meanDailyMmByMonth();
        int driest = 0;
        double sum = 0;
        for (int month = 0; month < 12; month++) {
            if (meanDailyMm[month] < meanDailyMm[driest]) {
                driest = month;
            }
            sum += meanDailyMm[month];
        }
        // a rounding error in the mean must not hide a month that is equal to it
        double mean = sum / 12 * (1 - 1e-12);
        for (int step = 1; step < 12; step++) {
            int month = (driest + step) % 12;
            if (sum > 0 && meanDailyMm[month] >= mean) {
                return Month.of(month + 1);
            }
        }
        return Month.JANUARY;
    }
}
