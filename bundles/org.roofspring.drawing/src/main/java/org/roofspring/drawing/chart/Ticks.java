package org.roofspring.drawing.chart;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The marks of an axis and their labels.
 *
 * @param at     values of the axis, rising
 * @param labels one for each
 * @param low    where the axis begins, at or below the first value shown
 * @param high   where it ends
 */
public record Ticks(List<Double> at, List<String> labels, double low, double high) {
    private static final double[] STEPS = { 1, 2, 5, 10 };
    private static final int[] YEAR_STEPS = { 1, 2, 5, 10, 20, 50, 100, 200, 500, 1000 };
    private static final double DAYS_PER_YEAR = 365.25;

    public Ticks {
        at = List.copyOf(at);
        labels = List.copyOf(labels);
        if (at.size() != labels.size()) {
            throw new IllegalArgumentException("every tick has a label: " + at.size() + " and " + labels.size());
        }
    }

    /**
     * Round numbers: 1, 2 or 5 times a power of ten apart, the axis reaching out to full ticks.
     *
     * @param low  least value to show, finite
     * @param high greatest value to show, finite, not below {@code low}
     * @param most about how many gaps there is room for, 1 to 100
     */
    public static Ticks numbers(double low, double high, int most) {
        check(low, high, most);
        double from = low;
        double to = high;
        if (to - from <= Math.max(Math.abs(from), Math.abs(to)) * 1e-9) {
            double margin = from == 0 ? 1 : Math.abs(from) * 0.5;
            from = from > 0 ? 0 : from - margin;
            to = to + margin;
        }
        double raw = (to - from) / most;
        double power = Math.pow(10, Math.floor(Math.log10(raw)));
        double step = STEPS[STEPS.length - 1] * power;
        for (double candidate : STEPS) {
            if (candidate * power >= raw * (1 - 1e-9)) {
                step = candidate * power;
                break;
            }
        }
        long first = (long) Math.floor(from / step + 1e-9);
        long last = (long) Math.ceil(to / step - 1e-9);
        int decimals = (int) Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
        List<Double> at = new ArrayList<>();
        List<String> labels = new ArrayList<>();
        for (long i = first; i <= last; i++) {
            at.add(i * step);
            labels.add(label(i * step, decimals));
        }
        return new Ticks(at, labels, first * step, last * step);
    }

    private static String label(double value, int decimals) {
        if (Math.abs(value) >= 1e9 || decimals > 6) {
            return String.format(Locale.ROOT, "%.3g", value);
        }
        String plain = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
        boolean negative = plain.startsWith("-");
        String digits = negative ? plain.substring(1) : plain;
        int point = digits.indexOf('.');
        StringBuilder grouped = new StringBuilder(digits);
        for (int i = (point < 0 ? digits.length() : point) - 3; i > 0; i -= 3) {
            grouped.insert(i, '\u202f');
        }
        boolean zero = digits.chars().allMatch(c -> c == '0' || c == '.');
        return (negative && !zero ? "\u2212" : "") + grouped;
    }

    /**
     * Whole years. The axis ends where the data do.
     *
     * @param low  first year, with its share
     * @param high last year, not before the first
     * @param most about how many gaps there is room for, 1 to 100
     */
    public static Ticks years(double low, double high, int most) {
        check(low, high, most);
        int step = yearStep(high - low, most);
        List<Double> at = new ArrayList<>();
        List<String> labels = new ArrayList<>();
        for (int year = (int) Math.ceil(low / step) * step; year <= high; year += step) {
            at.add((double) year);
            labels.add(Integer.toString(year));
        }
        return new Ticks(at, labels, low, Math.max(high, low + 1e-3));
    }

    private static int yearStep(double years, int most) {
        for (int candidate : YEAR_STEPS) {
            if (years / candidate <= most) {
                return candidate;
            }
        }
        return YEAR_STEPS[YEAR_STEPS.length - 1];
    }

    /**
     * First days of years or, for a short time, of months. The axis ends where the data do.
     *
     * @param firstDay days since 1970-01-01
     * @param lastDay  days since 1970-01-01, not before the first
     * @param most     about how many gaps there is room for, 1 to 100
     */
    public static Ticks days(double firstDay, double lastDay, int most) {
        check(firstDay, lastDay, most);
        double years = (lastDay - firstDay) / DAYS_PER_YEAR;
        if (years < 3 && years * 12 <= most * 6) {
            return months(firstDay, lastDay, most);
        }
        int step = yearStep(years, most);
        List<Double> at = new ArrayList<>();
        List<String> labels = new ArrayList<>();
        int year = Math.ceilDiv(LocalDate.ofEpochDay((long) Math.ceil(firstDay)).getYear(), step) * step;
        for (;; year += step) {
            double day = LocalDate.of(year, 1, 1).toEpochDay();
            if (day > lastDay) {
                break;
            }
            if (day >= firstDay) {
                at.add(day);
                labels.add(Integer.toString(year));
            }
        }
        return new Ticks(at, labels, firstDay, Math.max(lastDay, firstDay + 1));
    }

    private static Ticks months(double firstDay, double lastDay, int most) {
        int count = (int) Math.ceil((lastDay - firstDay) / (DAYS_PER_YEAR / 12));
        int step = count <= most ? 1 : count <= 2 * most ? 2 : count <= 3 * most ? 3 : 6;
        List<Double> at = new ArrayList<>();
        List<String> labels = new ArrayList<>();
        LocalDate month = LocalDate.ofEpochDay((long) Math.floor(firstDay)).withDayOfMonth(1);
        for (; month.toEpochDay() <= lastDay; month = month.plusMonths(1)) {
            boolean marked = (month.getMonthValue() - 1) % step == 0 && month.toEpochDay() >= firstDay;
            if (marked) {
                at.add((double) month.toEpochDay());
                labels.add(month.getMonth() == Month.JANUARY ? Integer.toString(month.getYear())
                        : monthName(month.getMonth()));
            }
        }
        return new Ticks(at, labels, firstDay, Math.max(lastDay, firstDay + 1));
    }

    /** Three letters of a month, the same in every locale. */
    public static String monthName(Month month) {
        String name = month.name();
        return name.charAt(0) + name.substring(1, 3).toLowerCase(Locale.ROOT);
    }

    private static void check(double low, double high, int most) {
        if (!Double.isFinite(low) || !Double.isFinite(high) || high < low) {
            throw new IllegalArgumentException("an axis needs finite ends in order, not " + low + " to " + high);
        }
        if (most < 1 || most > 100) {
            throw new IllegalArgumentException("an axis has 1 to 100 gaps between ticks, not " + most);
        }
    }
}
