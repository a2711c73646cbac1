package org.roofspring.storage;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.roofspring.storage.internal.FixedVolume;

/**
 * A demand that follows the calendar: school terms and holidays, weekdays, a growing season.
 *
 * <p>On a day that is on (its weekday is listed, a season contains it or no season is given, no break contains it) the
 * demand is {@code volumeM3PerDay}; on any other day it is {@code offRatio} of that. Either is multiplied by the
 * month's ratio, where months are given.
 *
 * @param volumeM3PerDay demand of a day that is on [m&sup3; a day], 0 to 2,000,000
 * @param weekdays days of the week that are on
 * @param seasons terms or growing seasons; none means the whole year
 * @param breaks holidays, taken out of the seasons
 * @param offRatio share of the demand on days that are off [-], 0 to 1
 * @param monthRatios twelve factors, January first [-], 0 to 10; none means 1 throughout
 */
public record DemandCalendar(double volumeM3PerDay, Set<DayOfWeek> weekdays, List<Season> seasons,
        List<Season> breaks, double offRatio, List<Double> monthRatios) {

    /** Checks the numbers and copies the lists. */
    public DemandCalendar {
        FixedVolume.toUnits(volumeM3PerDay, "volumeM3PerDay");
        if (!(offRatio >= 0 && offRatio <= 1)) {
            throw new IllegalArgumentException("offRatio is " + offRatio + "; accepted is 0 to 1");
        }
        weekdays = Set.copyOf(weekdays);
        seasons = List.copyOf(seasons);
        breaks = List.copyOf(breaks);
        monthRatios = List.copyOf(monthRatios);
        if (!monthRatios.isEmpty() && monthRatios.size() != 12) {
            throw new IllegalArgumentException(
                    "monthRatios has " + monthRatios.size() + " values; accepted is none or twelve");
        }
        for (double ratio : monthRatios) {
            if (!(ratio >= 0 && ratio <= 10)) {
                throw new IllegalArgumentException("monthRatios holds " + ratio + "; accepted is 0 to 10");
            }
        }
    }

    /** The same demand every day. */
    public static DemandCalendar everyDay(double volumeM3PerDay) {
        return new DemandCalendar(volumeM3PerDay, Set.of(DayOfWeek.values()), List.of(), List.of(), 1, List.of());
    }

    /** Demand on a date [m&sup3;]. */
    public double volumeM3(LocalDate date) {
        boolean on = weekdays.contains(date.getDayOfWeek())
                && (seasons.isEmpty() || seasons.stream().anyMatch(season -> season.contains(date)))
                && breaks.stream().noneMatch(pause -> pause.contains(date));
        double month = monthRatios.isEmpty() ? 1 : monthRatios.get(date.getMonthValue() - 1);
        return volumeM3PerDay * (on ? 1 : offRatio) * month;
    }

    /**
     * Demand day by day [m&sup3;].
     *
     * @param firstDate date of day 0
     * @param days length of the series, 0 to {@value TankBalance#MOST_DAYS}
     */
    public double[] seriesM3(LocalDate firstDate, int days) {
        double[] series = new double[TankBalance.checkedDays(days)];
        for (int day = 0; day < days; day++) {
            series[day] = volumeM3(firstDate.plusDays(day));
        }
        return series;
    }
}
