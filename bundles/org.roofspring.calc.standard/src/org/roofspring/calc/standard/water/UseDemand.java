package org.roofspring.calc.standard.water;

import java.time.LocalDate;

import org.roofspring.quantity.Units;
import org.roofspring.site.SitePackage;
import org.roofspring.site.Use;
import org.roofspring.site.UseCalendar;

/** What a use asks for on each day, following its calendar. */
public final class UseDemand {

    private UseDemand() {
    }

    /** Demand on a day with full use [m3]; nothing where the amount is not given. */
    public static double fullM3PerDay(Use use) {
        return use.getAmountEach() == null ? 0
                : Given.si(use, SitePackage.Literals.USE__COUNT, 1) * use.getAmountEach().in(Units.M3_PER_D);
    }

    /** Demand [m3] of each day. */
    public static double[] seriesM3(Use use, LocalDate firstDay, int days) {
        double fullM3 = fullM3PerDay(use);
        CalendarFactors factors = CalendarFactors.of(use.getCalendar());
        double[] demand = new double[days];
        for (int day = 0; day < days; day++) {
            demand[day] = fullM3 * factors.on(firstDay.plusDays(day));
        }
        return demand;
    }

    /** Share of the full amount that is used on a date; for many dates, take {@link CalendarFactors} once. */
    public static double factor(UseCalendar calendar, LocalDate date) {
        return CalendarFactors.of(calendar).on(date);
    }
}
