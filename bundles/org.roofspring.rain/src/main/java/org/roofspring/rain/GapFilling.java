package org.roofspring.rain;

import java.time.LocalDate;
import java.time.Month;
import java.util.Locale;

/**
 * A record with its missing days filled, and what was done.
 *
 * @param record      without missing days; filled days are marked {@link DayMark#FILLED}
 * @param method      how
 * @param filledDays  how many days
 * @param addedMm     rain added by filling, in all [mm]
 */
public record GapFilling(RainRecord record, GapMethod method, int filledDays, double addedMm) {
    /** Days either side of a day of the year whose mean fills it; common practice, no source. */
    private static final int HALF_WINDOW_DAYS = 7;
    private static final int DAYS_OF_LEAP_YEAR = 366;

    /**
     * Fills the missing days of a record.
     *
     * @throws MissingRainException when the method is {@link GapMethod#REFUSE} and a day is missing, or when no day
     *                              is present from which the method could take a mean
     */
    public static GapFilling fill(RainRecord record, GapMethod method) {
        if (record.isComplete()) {
            return new GapFilling(record, method, 0, 0);
        }
        return switch (method) {
            case REFUSE -> throw refusal(record);
            case ZERO -> filled(record, method, new double[DAYS_OF_LEAP_YEAR]);
            case MONTH_MEAN -> filled(record, method, monthMeansMm(record));
            case CLIMATOLOGY -> filled(record, method, windowMeansMm(record));
        };
    }

    /** One sentence for a report. */
    public String statement() {
        if (filledDays == 0) {
            return "No day is missing.";
        }
        return String.format(Locale.ROOT, "%d of %d days (%.1f %%) are filled, %.1f mm in all: %s.", filledDays,
                record.days(), 100.0 * filledDays / record.days(), addedMm, method.statement());
    }

    private static MissingRainException refusal(RainRecord record) {
        try {
            record.completeDepthsMm();
        } catch (MissingRainException e) {
            return e;
        }
        throw new IllegalStateException("the record has missing days");
    }

    private static GapFilling filled(RainRecord record, GapMethod method, double[] fillMmByDayOfYear) {
        int filledDays = 0;
        double addedMm = 0;
        double[] depthMm = new double[record.days()];
        DayMark[] marks = new DayMark[record.days()];
        for (int day = 0; day < depthMm.length; day++) {
            if (record.isMissing(day)) {
                depthMm[day] = fillMmByDayOfYear[leapDayOfYear(record.date(day))];
                if (Double.isNaN(depthMm[day])) {
                    throw new MissingRainException("the rain of " + record.date(day) + " cannot be filled by \""
                            + method.id() + "\": no year of the record has a reading at that time of the year");
                }
                marks[day] = DayMark.FILLED;
                filledDays++;
                addedMm += depthMm[day];
            } else {
                depthMm[day] = record.depthMm(day);
                marks[day] = record.mark(day);
            }
        }
        return new GapFilling(RainRecord.of(record.firstDay(), depthMm, marks), method, filledDays, addedMm);
    }

    private static double[] monthMeansMm(RainRecord record) {
        double[] sumMm = new double[12];
        int[] count = new int[12];
        LocalDate date = record.firstDay();
        for (int day = 0; day < record.days(); day++, date = date.plusDays(1)) {
            if (!record.isMissing(day)) {
                sumMm[date.getMonthValue() - 1] += record.depthMm(day);
                count[date.getMonthValue() - 1]++;
            }
        }
        double[] mm = new double[DAYS_OF_LEAP_YEAR];
        LocalDate leapYear = LocalDate.of(2000, Month.JANUARY, 1);
        for (int day = 0; day < mm.length; day++) {
            int month = leapYear.plusDays(day).getMonthValue() - 1;
            mm[day] = sumMm[month] / count[month];
        }
        return mm;
    }

    private static double[] windowMeansMm(RainRecord record) {
        double[] sumMm = new double[DAYS_OF_LEAP_YEAR];
        int[] count = new int[DAYS_OF_LEAP_YEAR];
        LocalDate date = record.firstDay();
        for (int day = 0; day < record.days(); day++, date = date.plusDays(1)) {
            if (!record.isMissing(day)) {
                sumMm[leapDayOfYear(date)] += record.depthMm(day);
                count[leapDayOfYear(date)]++;
            }
        }
        double[] mm = new double[DAYS_OF_LEAP_YEAR];
        for (int day = 0; day < mm.length; day++) {
            double windowMm = 0;
            int windowDays = 0;
            for (int off = -HALF_WINDOW_DAYS; off <= HALF_WINDOW_DAYS; off++) {
                int other = Math.floorMod(day + off, DAYS_OF_LEAP_YEAR);
                windowMm += sumMm[other];
                windowDays += count[other];
            }
            mm[day] = windowMm / windowDays;
        }
        return mm;
    }

    /** Day of the year from 0 as if every year had a 29 February, so that a date has one place. */
    private static int leapDayOfYear(LocalDate date) {
        int dayOfYear = date.getDayOfYear() - 1;
        return date.isLeapYear() || date.getMonthValue() < 3 ? dayOfYear : dayOfYear + 1;
    }
}
