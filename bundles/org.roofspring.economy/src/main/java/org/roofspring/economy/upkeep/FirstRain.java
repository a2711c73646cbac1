package org.roofspring.economy.upkeep;

import java.time.LocalDate;
import java.time.MonthDay;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

import org.roofspring.economy.internal.Checks;

/**
 * When the dry season ends: of each year of a record, the day after its longest dry spell, and of those days an early
 * one. Years are taken from the first day of the wettest month, so that no dry season is cut in two.
 */
public final class FirstRain {
    /** A day with less is dry [mm]; the usual mark of a wet day. */
    public static final double WET_DAY_MM = 1;
    /** A spell with fewer days is no dry season [d]; a choice of this program. */
    public static final int DRY_SEASON_DAYS = 30;
    /** Share of the years in which the first rain comes no later than the early day [-]. */
    public static final double EARLY_SHARE = 0.1;
    private static final int COMMON_YEAR = 2001;

    private FirstRain() {
    }

    /**
     * The day that the first rain does not come before, in nine years out of ten; empty where fewer than half of the
     * years, or fewer than three, have a dry season.
     *
     * @param firstDay of the record
     * @param depthMm  of each day, 0 or more [mm]
     */
    public static Optional<MonthDay> earlyDay(LocalDate firstDay, double[] depthMm) {
        Checks.present("first day (firstDay)", firstDay);
        for (double depth : Checks.present("depths (depthMm)", depthMm)) {
            Checks.within("depth of a day (depthMm)", depth, 0, 1e5);
        }
        if (depthMm.length == 0) {
            return Optional.empty();
        }
        int wettest = wettestMonth(firstDay, depthMm);
        List<Integer> days = new ArrayList<>();
        int years = 0;
        LocalDate end = firstDay.plusDays(depthMm.length);
        LocalDate start = LocalDate.of(firstDay.getYear(), wettest, 1);
        for (start = start.isBefore(firstDay) ? start.plusYears(1) : start; !start.plusYears(1).isAfter(end);
                start = start.plusYears(1)) {
            years++;
            int begin = (int) (start.toEpochDay() - firstDay.toEpochDay());
            int dry = endOfLongestSpell(depthMm, begin, begin + start.lengthOfYear());
            if (dry >= 0) {
                days.add(daysAfter(wettest, firstDay.plusDays(dry)));
            }
        }
        if (days.size() < 3 || days.size() * 2 < years) {
            return Optional.empty();
        }
        Collections.sort(days);
        int early = days.get((int) Math.ceil(EARLY_SHARE * days.size()) - 1);
        return Optional.of(MonthDay.from(LocalDate.of(COMMON_YEAR, wettest, 1).plusDays(early)));
    }

    /** Days from the first of the month to a day of the year, in a year that is no leap year. */
    private static int daysAfter(int month, LocalDate date) {
        LocalDate start = LocalDate.of(COMMON_YEAR, month, 1);
        LocalDate day = MonthDay.from(date).atYear(COMMON_YEAR);
        return (int) ChronoUnit.DAYS.between(start, day.isBefore(start) ? day.plusYears(1) : day);
    }

    private static int wettestMonth(LocalDate firstDay, double[] depthMm) {
        double[] sums = new double[13];
        for (int day = 0; day < depthMm.length; day++) {
            sums[firstDay.plusDays(day).getMonthValue()] += depthMm[day];
        }
        int wettest = 1;
        for (int month = 2; month <= 12; month++) {
            wettest = sums[month] > sums[wettest] ? month : wettest;
        }
        return wettest;
    }

    /** Index of the wet day that ends it, or -1 where no spell is a dry season. */
    private static int endOfLongestSpell(double[] depthMm, int begin, int end) {
        int longest = DRY_SEASON_DAYS - 1;
        int ended = -1;
        int dry = 0;
        for (int day = begin; day < Math.min(end, depthMm.length); day++) {
            if (depthMm[day] < WET_DAY_MM) {
                dry++;
                continue;
            }
            if (dry > longest) {
                longest = dry;
                ended = day;
            }
            dry = 0;
        }
        return ended;
    }
}
