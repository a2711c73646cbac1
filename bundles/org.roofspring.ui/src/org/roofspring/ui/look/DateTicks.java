package org.roofspring.ui.look;

import java.time.LocalDate;
import java.time.Period;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;

/**
 * Where the marks of a time axis stand: at the first days of years or months, or every so many days, as close as there
 * is room for their labels.
 */
public final class DateTicks {
    private static final double DAYS_OF_A_MONTH = 365.2425 / 12;
    private static final List<Period> STEPS = List.of(Period.ofDays(1), Period.ofDays(7), Period.ofDays(14), Period.ofMonths(1),
            Period.ofMonths(3), Period.ofMonths(6), Period.ofYears(1), Period.ofYears(2), Period.ofYears(5), Period.ofYears(10),
            Period.ofYears(20), Period.ofYears(50), Period.ofYears(100));

    /**
     * A mark.
     *
     * @param day   days after the first day of the record
     * @param label such as 1985, 1985-04 or 1985-04-15
     */
    public record Tick(double day, String label) {
    }

    private DateTicks() {
    }

    /**
     * @param first first day of the record
     * @param from  days after it at the left end
     * @param to    days after it at the right end; greater than {@code from}
     * @param most  how many labels there is room for; at least 1
     */
    public static List<Tick> of(LocalDate first, double from, double to, int most) {
        Period step = STEPS.getLast();
        for (Period candidate : STEPS) {
            if ((to - from) / days(candidate) <= most) {
                step = candidate;
                break;
            }
        }
        List<Tick> ticks = new ArrayList<>();
        LocalDate date = begin(first.plusDays((long) Math.floor(from)), step);
        for (; ChronoUnit.DAYS.between(first, date) <= to; date = date.plus(step)) {
            long day = ChronoUnit.DAYS.between(first, date);
            if (day >= from) {
                ticks.add(new Tick(day, label(date, step)));
            }
        }
        return ticks;
    }

    private static double days(Period step) {
        return step.toTotalMonths() * DAYS_OF_A_MONTH + step.getDays();
    }

    /** The first mark at or before a day. */
    private static LocalDate begin(LocalDate day, Period step) {
        if (step.getYears() > 0) {
            return LocalDate.of(Math.floorDiv(day.getYear(), step.getYears()) * step.getYears(), 1, 1);
        }
        if (step.getMonths() > 0) {
            int month = (day.getMonthValue() - 1) / step.getMonths() * step.getMonths() + 1;
            return LocalDate.of(day.getYear(), month, 1);
        }
        return LocalDate.ofEpochDay(Math.floorDiv(day.toEpochDay(), (long) step.getDays()) * step.getDays());
    }

    private static String label(LocalDate date, Period step) {
        String iso = date.toString();
        return step.getYears() > 0 ? iso.substring(0, iso.length() - 6) : step.getMonths() > 0 ? iso.substring(0, iso.length() - 3) : iso;
    }
}
