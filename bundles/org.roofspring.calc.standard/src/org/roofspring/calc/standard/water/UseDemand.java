package org.roofspring.calc.standard.water;

import java.time.LocalDate;
import java.time.MonthDay;

import org.roofspring.quantity.Units;
import org.roofspring.site.Holiday;
import org.roofspring.site.SitePackage;
import org.roofspring.site.Use;
import org.roofspring.site.UseCalendar;
import org.roofspring.site.UsePeriod;
import org.roofspring.site.Weekday;
import org.roofspring.storage.Season;

/** What a use asks for on each day, following its calendar. */
public final class UseDemand {

    private UseDemand() {
    }

    /** Demand on a day with full use [m3]; nothing where the amount is not given. */
    public static double fullM3PerDay(Use use) {
        return use.getAmountEach() == null ? 0 : Given.si(use, SitePackage.Literals.USE__COUNT, 1) * use.getAmountEach().in(Units.M3_PER_D);
    }

    /** Demand [m3] of each day. */
    public static double[] seriesM3(Use use, LocalDate firstDay, int days) {
        double fullM3 = fullM3PerDay(use);
        double[] demand = new double[days];
        for (int day = 0; day < days; day++) {
            demand[day] = fullM3 * factor(use.getCalendar(), firstDay.plusDays(day));
        }
        return demand;
    }

    /** Share of the full amount that is used on a date: 0 on other weekdays, in holidays and out of all periods. */
    public static double factor(UseCalendar calendar, LocalDate date) {
        if (calendar == null) {
            return 1;
        }
        Weekday weekday = Weekday.values()[date.getDayOfWeek().getValue() - 1];
        if (!calendar.getWeekdays().isEmpty() && !calendar.getWeekdays().contains(weekday)) {
            return 0;
        }
        double factor = calendar.getPeriods().isEmpty() ? 1 : 0;
        for (UsePeriod period : calendar.getPeriods()) {
            if (within(period.getFrom(), period.getTo(), date)) {
                factor = Math.max(factor, Given.si(period, SitePackage.Literals.USE_PERIOD__FACTOR, 1));
            }
        }
        for (Holiday holiday : calendar.getHolidays()) {
            if (within(holiday.getFrom(), holiday.getTo() == null ? holiday.getFrom() : holiday.getTo(), date)) {
                factor = Math.min(factor, Given.si(holiday, SitePackage.Literals.HOLIDAY__FACTOR, 0));
            }
        }
        return factor;
    }

    private static boolean within(MonthDay from, MonthDay to, LocalDate date) {
        return from != null && to != null && new Season(from, to).contains(date);
    }
}
