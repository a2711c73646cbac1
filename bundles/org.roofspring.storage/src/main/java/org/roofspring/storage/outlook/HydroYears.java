package org.roofspring.storage.outlook;

import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import org.roofspring.storage.BalanceResult;

/**
 * A run cut into its whole hydrological years. A dry season and the shortage that it brings should fall within one of
 * them, so that each can count as one trial; {@link #startMonth} finds such a month.
 *
 * @param startMonth month on whose first day each year begins
 * @param years whole years with a demand, in order of time
 * @param daysLeftOut days of the run before the first whole year and after the last [d]
 */
public record HydroYears(Month startMonth, List<HydroYear> years, int daysLeftOut) {

    /** Copies the list. */
    public HydroYears {
        years = List.copyOf(years);
    }

    /**
     * Cuts a run.
     *
     * @param firstDate date of day 0
     * @param result the run
     * @param startMonth month on whose first day each year begins
     */
    public static HydroYears of(LocalDate firstDate, BalanceResult result, Month startMonth) {
        int days = result.counts().days();
        List<HydroYear> years = new ArrayList<>();
        LocalDate begin = firstOn(firstDate, startMonth);
        int leftOut = days;
        while (true) {
            int from = (int) (begin.toEpochDay() - firstDate.toEpochDay());
            int to = (int) (begin.plusYears(1).toEpochDay() - firstDate.toEpochDay());
            if (to > days) {
                return new HydroYears(startMonth, years, leftOut);
            }
            leftOut -= to - from;
            HydroYear year = year(begin, result, from, to);
            if (year.demandDays() > 0) {
                years.add(year);
            }
            begin = begin.plusYears(1);
        }
    }

    private static LocalDate firstOn(LocalDate firstDate, Month month) {
        LocalDate begin = LocalDate.of(firstDate.getYear(), month, 1);
        return begin.isBefore(firstDate) ? begin.plusYears(1) : begin;
    }

    private static HydroYear year(LocalDate begin, BalanceResult result, int from, int to) {
        int demandDays = 0;
        int shortDays = 0;
        double demandM3 = 0;
        double missingM3 = 0;
        for (int day = from; day < to; day++) {
            double missing = result.missingM3(day);
            double asked = result.suppliedM3(day) + missing;
            demandDays += asked > 0 ? 1 : 0;
            shortDays += missing > 0 ? 1 : 0;
            demandM3 += asked;
            missingM3 += missing;
        }
        return new HydroYear(begin, demandDays, shortDays, demandM3, missingM3);
    }

    /**
     * The month after the wettest six months: stores are then fullest, so that the dry season that follows is not cut
     * in two. Of equals the earliest in the calendar. Our own rule; hydrologists begin their year at the other end,
     * when little is left in store, which would count one shortage that runs into the first rains twice.
     *
     * @param firstDate date of day 0
     * @param inflowM3 of each day [m&sup3;]
     */
    public static Month startMonth(LocalDate firstDate, double[] inflowM3) {
        double[] sum = new double[12];
        int[] count = new int[12];
        for (int day = 0; day < inflowM3.length; day++) {
            int month = firstDate.plusDays(day).getMonthValue() - 1;
            sum[month] += inflowM3[day];
            count[month]++;
        }
        Month best = Month.JANUARY;
        double most = -1;
        for (int start = 0; start < 12; start++) {
            double before = 0;
            for (int back = 1; back <= 6; back++) {
                int month = Math.floorMod(start - back, 12);
                before += count[month] > 0 ? sum[month] / count[month] : 0;
            }
            if (before > most) {
                most = before;
                best = Month.of(start + 1);
            }
        }
        return best;
    }

    /** Years in which some day went short. */
    public int failed() {
        return (int) years.stream().filter(HydroYear::failed).count();
    }
}
