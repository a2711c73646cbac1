package org.roofspring.hydraulics.internal;

import java.math.BigDecimal;
import java.util.List;

/** Argument checks: each failure is one sentence that names the parameter, its value and the accepted range. */
public final class Require {
    private Require() {
    }

    /**
     * Accepts a number inside a closed range.
     *
     * @param what the parameter in plain words, such as "bore"
     * @param unit its unit, or "" for a pure number
     * @return the value
     */
    public static double within(String what, double value, double low, double high, String unit) {
        if (value >= low && value <= high) {
            return value;
        }
        throw new IllegalArgumentException(what + " must be from " + show(low, unit) + " to " + show(high, unit)
                + ", not " + show(value, unit));
    }

    /** Accepts a whole number inside a closed range. */
    public static int within(String what, int value, int low, int high) {
        if (value >= low && value <= high) {
            return value;
        }
        throw new IllegalArgumentException(what + " must be from " + low + " to " + high + ", not " + value);
    }

    /** Accepts a text with at least one visible character. */
    public static String text(String what, String value) {
        if (value != null && !value.isBlank()) {
            return value;
        }
        throw new IllegalArgumentException(what + " must be a text that is not empty");
    }

    /** Accepts anything but null. */
    public static <T> T present(String what, T value) {
        if (value != null) {
            return value;
        }
        throw new IllegalArgumentException(what + " must be given, not null");
    }

    /** Copies a list that has no null in it. */
    public static <T> List<T> list(String what, List<? extends T> values) {
        if (values == null || values.stream().anyMatch(value -> value == null)) {
            throw new IllegalArgumentException(what
                    + " must be a list without gaps, not null or a list with null in it");
        }
        return List.copyOf(values);
    }

    /** A number with its unit, without a needless exponent or trailing zeros. */
    public static String show(double value, String unit) {
        String number = !Double.isFinite(value) ? Double.toString(value)
                : value != 0 && (Math.abs(value) >= 1e7 || Math.abs(value) < 1e-6) ? Double.toString(value)
                : value == 0 ? "0" : BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
        return unit.isEmpty() ? number : number + " " + unit;
    }
}
