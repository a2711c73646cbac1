package org.roofspring.calc.standard.water;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.roofspring.site.Holiday;
import org.roofspring.site.SitePackage;
import org.roofspring.site.UseCalendar;
import org.roofspring.site.UsePeriod;
import org.roofspring.site.Weekday;
import org.roofspring.storage.Season;

/**
 * Share of the full amount that is used on a date: 0 on other weekdays, in holidays and out of all periods. Read once
 * from a calendar, asked for each day of decades.
 */
public final class CalendarFactors {

    /** A stretch of every year with its factor. */
    private record Stretch(Season season, double factor) {
    }

    private final boolean[] weekday = new boolean[Weekday.values().length];
    private final boolean everyDay;
    private final List<Stretch> periods = new ArrayList<>();
    private final List<Stretch> holidays = new ArrayList<>();

    private CalendarFactors(UseCalendar calendar) {
        for (Weekday day : Weekday.values()) {
            weekday[day.ordinal()] = calendar == null || calendar.getWeekdays().isEmpty()
                    || calendar.getWeekdays().contains(day);
        }
        everyDay = calendar == null || calendar.getPeriods().isEmpty();
        if (calendar == null) {
            return;
        }
        for (UsePeriod period : calendar.getPeriods()) {
            season(period.getFrom(), period.getTo()).ifPresent(season -> periods.add(
                    new Stretch(season, Given.si(period, SitePackage.Literals.USE_PERIOD__FACTOR, 1))));
        }
        for (Holiday holiday : calendar.getHolidays()) {
            season(holiday.getFrom(), holiday.getTo() == null ? holiday.getFrom() : holiday.getTo())
                    .ifPresent(season -> holidays.add(
                            new Stretch(season, Given.si(holiday, SitePackage.Literals.HOLIDAY__FACTOR, 0))));
        }
    }

    /** @param calendar may be null: then every day is alike */
    public static CalendarFactors of(UseCalendar calendar) {
        return new CalendarFactors(calendar);
    }

    private static Optional<Season> season(MonthDay from, MonthDay to) {
        return from == null || to == null ? Optional.empty() : Optional.of(new Season(from, to));
    }

    /** The share on a date. */
    public double on(LocalDate date) {
        if (!weekday[date.getDayOfWeek().getValue() - 1]) {
            return 0;
        }
        double factor = everyDay ? 1 : 0;
        for (Stretch period : periods) {
            factor = period.season().contains(date) ? Math.max(factor, period.factor()) : factor;
        }
        for (Stretch holiday : holidays) {
            factor = holiday.season().contains(date) ? Math.min(factor, holiday.factor()) : factor;
        }
        return factor;
    }
}
