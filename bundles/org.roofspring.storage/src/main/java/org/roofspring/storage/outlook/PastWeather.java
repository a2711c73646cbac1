package org.roofspring.storage.outlook;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import org.roofspring.storage.system.SystemSeries;

/**
 * What the roofs sent and the air took on every day of a record. The arrays are not copied and not to be written to.
 *
 * @param firstDate date of day 0
 * @param inflowM3 for each stage, what its roofs send [m&sup3;]; a year or more
 * @param evaporationMm off open water [mm]; a series of length 0 for none
 */
public record PastWeather(LocalDate firstDate, List<double[]> inflowM3, double[] evaporationMm) {

    private static final int SHORTEST_DAYS = 365;

    /** Copies the list and checks the lengths. */
    public PastWeather {
        inflowM3 = List.copyOf(inflowM3);
        if (inflowM3.isEmpty() || inflowM3.getFirst().length < SHORTEST_DAYS) {
            throw new IllegalArgumentException("inflowM3 has "
                    + (inflowM3.isEmpty() ? 0 : inflowM3.getFirst().length) + " days; accepted is 365 or more");
        }
        int days = inflowM3.getFirst().length;
        for (double[] series : inflowM3) {
            requireLength(series, days, "inflowM3");
        }
        if (evaporationMm.length > 0) {
            requireLength(evaporationMm, days, "evaporationMm");
        }
    }

    private static void requireLength(double[] series, int days, String name) {
        if (series.length != days) {
            throw new IllegalArgumentException(
                    name + " has a series of " + series.length + " days; accepted is " + days + " as in the first");
        }
    }

    int days() {
        return inflowM3.getFirst().length;
    }

    /**
     * Days of the record that are like a date, one for each year of it: the same day of the year. The next day where
     * a record of just one year has a leap day in that one's place.
     */
    List<Integer> daysLike(LocalDate date) {
        List<Integer> like = new ArrayList<>();
        int lastYear = firstDate.plusDays(days() - 1L).getYear();
        for (int year = firstDate.getYear(); year <= lastYear; year++) {
            long day = MonthDay.from(date).atYear(year).toEpochDay() - firstDate.toEpochDay();
            if (day >= 0 && day < days()) {
                like.add((int) day);
            }
        }
        return like.isEmpty() ? daysLike(date.plusDays(1)) : like;
    }

    /** Whether a run of so many days that begins on a day of the record needs more days than there are. */
    boolean endsBefore(int firstDay, int runDays) {
        return runDays > days() - firstDay;
    }

    /** A stretch of the record with a demand of its own; beyond the end comes the same season of the first year. */
    SystemSeries from(int firstDay, List<double[]> demandM3, int runDays) {
        int[] day = new int[runDays];
        int at = firstDay;
        for (int i = 0; i < runDays; i++, at++) {
            if (at == days()) {
                at = daysLike(firstDate.plusDays(days())).getFirst();
            }
            day[i] = at;
        }
        return new SystemSeries(inflowM3.stream().map(series -> pick(series, day)).toList(), demandM3,
                evaporationMm.length == 0 ? evaporationMm : pick(evaporationMm, day));
    }

    private static double[] pick(double[] series, int[] day) {
        double[] picked = new double[day.length];
        for (int i = 0; i < picked.length; i++) {
            picked[i] = series[day[i]];
        }
        return picked;
    }
}
