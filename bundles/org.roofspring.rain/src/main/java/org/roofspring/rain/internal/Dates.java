package org.roofspring.rain.internal;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.ResolverStyle;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads the dates of one column, which keep one pattern throughout. Where it is not told, every pattern that fits all
 * rows so far is kept; day and month are told apart by a day above 12, or by which order makes the days follow on.
 */
final class Dates {
    static final String ACCEPTED = "a date of the calendar such as 2024-02-29 is accepted";
    /** A time of day behind the date, as exports of daily values write it. */
    private static final Pattern TIME = Pattern.compile(
            "[T ]\\d{1,2}:\\d{2}(:\\d{2}(\\.\\d+)?)?(Z|[+-]\\d{2}:?\\d{2})?");
    private static final Pattern YEAR_FIRST = Pattern.compile("(\\d{4})([-/.])(\\d{1,2})\\2(\\d{1,2})");
    private static final Pattern YEAR_LAST = Pattern.compile("(\\d{1,2})([-/.])(\\d{1,2})\\2(\\d{4})");
    private static final Pattern COMPACT = Pattern.compile("(\\d{4})(\\d{2})(\\d{2})");

    private enum Order { YEAR_MONTH_DAY, DAY_MONTH_YEAR, MONTH_DAY_YEAR }

    /** One reading of the column, dropped at the first row that it does not fit. */
    private static final class Reading {
        final Order order;
        int[] epochDays = new int[512];
        int followOn;

        Reading(Order order) {
            this.order = order;
        }

        void add(int row, long epochDay) {
            if (row == epochDays.length) {
                epochDays = Arrays.copyOf(epochDays, row * 2);
            }
            epochDays[row] = (int) epochDay;
            followOn += row > 0 && epochDays[row] == epochDays[row - 1] + 1 ? 1 : 0;
        }
    }

    private final DateTimeFormatter told;
    private final List<Reading> readings = new ArrayList<>();
    private int rows;

    /**
     * A column of dates.
     *
     * @param pattern null: found
     * @throws IllegalArgumentException when the pattern is not one
     */
    Dates(String pattern) {
        told = pattern == null ? null : formatter(pattern);
        for (Order order : told == null ? Order.values() : new Order[] {Order.YEAR_MONTH_DAY}) {
            readings.add(new Reading(order));
        }
    }

    private static DateTimeFormatter formatter(String pattern) {
        try {
            // a year of the calendar (u), not of an era (y), is what strict resolving needs
            return new DateTimeFormatterBuilder().parseCaseInsensitive().appendPattern(pattern.replace('y', 'u'))
                    .toFormatter(Locale.ENGLISH).withResolverStyle(ResolverStyle.STRICT);
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException("the date pattern " + RainFile.quoted(pattern)
                    + " is not one (" + e.getMessage() + "); a pattern such as dd.MM.yyyy is accepted", e);
        }
    }

    /** Whether a text has the shape of a date, so that a first line with one is not a header. */
    static boolean looksLike(String text) {
        String date = withoutTime(text);
        return YEAR_FIRST.matcher(date).matches() || YEAR_LAST.matcher(date).matches()
                || COMPACT.matcher(date).matches();
    }

    /** Takes the date of the next row; gives what is wrong with it, or null. */
    String add(String text) {
        if (text.isEmpty()) {
            return "the row has no date";
        }
        if (told != null) {
            try {
                readings.get(0).add(rows, LocalDate.parse(text, told).toEpochDay());
            } catch (DateTimeException e) {
                return RainFile.quoted(text) + " is not a date of the pattern that was told";
            }
            rows++;
            return null;
        }
        String date = withoutTime(text);
        boolean shaped = false;
        Iterator<Reading> live = readings.iterator();
        List<Reading> fitting = new ArrayList<>(3);
        while (live.hasNext()) {
            Reading reading = live.next();
            long epochDay = epochDay(date, reading.order);
            shaped |= epochDay == Long.MAX_VALUE;
            if (epochDay < Long.MAX_VALUE - 1) {
                reading.add(rows, epochDay);
                fitting.add(reading);
            }
        }
        if (fitting.isEmpty()) {
            return RainFile.quoted(text) + (shaped ? " is not in the calendar"
                    : looksLike(text) ? " is not written like the dates above it" : " is not a date");
        }
        if (fitting.size() < readings.size()) {
            readings.retainAll(fitting);
        }
        rows++;
        return null;
    }

    private static String withoutTime(String text) {
        if (text.length() <= 10) {
            return text;
        }
        int end = text.indexOf('T') > 0 ? text.indexOf('T') : text.indexOf(' ');
        return end > 0 && TIME.matcher(text.substring(end)).matches() ? text.substring(0, end) : text;
    }

    /** Days since 1970; MAX_VALUE when of that shape but not in the calendar, MAX_VALUE - 1 when of another shape. */
    private static long epochDay(String text, Order order) {
        if (order == Order.YEAR_MONTH_DAY && text.length() == 10 && text.charAt(4) == '-' && text.charAt(7) == '-') {
            return calendar(digits(text, 0, 4), digits(text, 5, 7), digits(text, 8, 10));
        }
        Matcher matcher = (order != Order.YEAR_MONTH_DAY ? YEAR_LAST
                : text.length() == 8 && text.indexOf('-') < 0 && text.indexOf('/') < 0 && text.indexOf('.') < 0
                ? COMPACT : YEAR_FIRST).matcher(text);
        if (!matcher.matches()) {
            return Long.MAX_VALUE - 1;
        }
        if (matcher.pattern() == COMPACT) {
            return calendar(group(matcher, 1), group(matcher, 2), group(matcher, 3));
        }
        boolean dotted = matcher.group(2).equals(".");
        boolean short2 = order == Order.YEAR_MONTH_DAY && matcher.group(2).equals("-");
        if (order == Order.MONTH_DAY_YEAR && dotted || short2) {
            // dots mean day first; a hyphenated date that is too short was cut
            return Long.MAX_VALUE - 1;
        }
        return switch (order) {
            case YEAR_MONTH_DAY -> calendar(group(matcher, 1), group(matcher, 3), group(matcher, 4));
            case DAY_MONTH_YEAR -> calendar(group(matcher, 4), group(matcher, 3), group(matcher, 1));
            case MONTH_DAY_YEAR -> calendar(group(matcher, 4), group(matcher, 1), group(matcher, 3));
        };
    }

    private static int group(Matcher matcher, int group) {
        return Integer.parseInt(matcher.group(group));
    }

    private static int digits(String text, int from, int to) {
        int value = 0;
        for (int i = from; i < to; i++) {
            int digit = text.charAt(i) - '0';
            if (digit < 0 || digit > 9) {
                return -1;
            }
            value = value * 10 + digit;
        }
        return value;
    }

    private static long calendar(int year, int month, int day) {
        if (year < 0 || month < 0 || day < 0) {
            return Long.MAX_VALUE - 1;
        }
        if (year < 1 || month < 1 || month > 12 || day < 1 || day > 31) {
            return Long.MAX_VALUE;
        }
        if (day > 28 && day > YearMonth.of(year, month).lengthOfMonth()) {
            return Long.MAX_VALUE;
        }
        return LocalDate.of(year, month, day).toEpochDay();
    }

    /**
     * Days since 1970 of every row, once all are in; an array that may be longer than the rows.
     *
     * @return null when day and month cannot be told apart
     */
    int[] resolve() {
        Reading best = readings.get(0);
        for (Reading reading : readings.subList(1, readings.size())) {
            if (Arrays.equals(reading.epochDays, 0, rows, best.epochDays, 0, rows)) {
                continue;
            }
            if (reading.followOn == best.followOn) {
                return null;
            }
            best = reading.followOn > best.followOn ? reading : best;
        }
        return best.epochDays;
    }
}
