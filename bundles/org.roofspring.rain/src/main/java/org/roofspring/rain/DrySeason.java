package org.roofspring.rain;

import java.time.Month;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/**
 * The dry months of a place.
 *
 * @param first first dry month
 * @param last  last dry month; may be in the next calendar year
 */
public record DrySeason(Month first, Month last) {
    /** A month is dry when it has less than this part of an even share; our own definition. */
    private static final double DRY = 0.5;

    /**
     * The longest run of months that each have less than half of an even share of the yearly rain; of equal runs the
     * one with the driest month. Empty when no month is so dry.
     *
     * @throws MissingRainException when a month of the calendar has no reading in any year
     */
    public static Optional<DrySeason> find(RainRecord record) {
        double[] dailyMm = RainStatistics.of(record).meanDailyMmByMonth();
        double limitMm = DRY * Arrays.stream(dailyMm).average().orElseThrow();
        DrySeason best = null;
        double leastMm = Double.POSITIVE_INFINITY;
        for (int first = 0; first < 12; first++) {
            if (!(dailyMm[first] < limitMm) || dailyMm[(first + 11) % 12] < limitMm) {
                continue;
            }
            int length = 0;
            double driestMm = Double.POSITIVE_INFINITY;
            while (dailyMm[(first + length) % 12] < limitMm) {
                driestMm = Math.min(driestMm, dailyMm[(first + length) % 12]);
                length++;
            }
            if (best == null || length > best.months().size()
                    || length == best.months().size() && driestMm < leastMm) {
                best = new DrySeason(Month.of(first + 1), Month.of(first + 1).plus(length - 1L));
                leastMm = driestMm;
            }
        }
        return Optional.ofNullable(best);
    }

    /** Its months. */
    public Set<Month> months() {
        Set<Month> months = EnumSet.of(first);
        for (Month month = first; month != last; month = month.plus(1)) {
            months.add(month.plus(1));
        }
        return months;
    }
}
