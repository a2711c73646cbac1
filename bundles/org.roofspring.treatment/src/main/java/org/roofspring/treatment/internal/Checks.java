package org.roofspring.treatment.internal;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Collection;
import java.util.List;
import java.util.Map;

/** Refuses arguments with one sentence: what was given and what is accepted. */
public final class Checks {
    private static final double SMALLEST = 1e-12;

    private Checks() {
    }

    /**
     * @param name in words with the parameter's own name, such as {@code "residual (residualMgPerL)"}
     * @param unit shown behind the limits; empty for a pure number
     * @return the value, from {@code low} to {@code high}, both included
     */
    public static double within(String name, double value, double low, double high, String unit) {
        if (!(value >= low && value <= high)) {
            throw new IllegalArgumentException(name + " must be from " + plain(low) + " to " + plain(high)
                    + behind(unit) + ", not " + plain(value));
        }
        return value;
    }

    /** The value, above 0 (at least 1e-12, so that it can be divided by) and at most {@code high}. */
    public static double positive(String name, double value, double high, String unit) {
        if (value > 0 && value < SMALLEST) {
            throw new IllegalArgumentException(name + " must be at least 1e-12" + behind(unit) + ", not " + value);
        }
        if (!(value > 0 && value <= high)) {
            throw new IllegalArgumentException(name + " must be above 0 and at most " + plain(high)
                    + behind(unit) + ", not " + plain(value));
        }
        return value;
    }

    /** The object, refused with a sentence when it is missing. */
    public static <T> T present(String name, T value) {
        if (value == null) {
            throw new IllegalArgumentException(name + " is missing");
        }
        return value;
    }

    /** The text, refused when it is missing or blank. */
    public static String text(String name, String value) {
        if (value == null || value.isBlank()) {
            throw new IllegalArgumentException(name + " must be a text that is not blank");
        }
        return value;
    }

    /** An unchangeable copy without missing elements. */
    public static <T> List<T> list(String name, Collection<? extends T> values) {
        if (values == null || values.stream().anyMatch(value -> value == null)) {
            throw new IllegalArgumentException(name + " must be a list without missing elements");
        }
        return List.copyOf(values);
    }

    /** An unchangeable copy without missing keys or values. */
    public static <K, V> Map<K, V> map(String name, Map<? extends K, ? extends V> values) {
        if (values == null || values.entrySet().stream().anyMatch(e -> e.getKey() == null || e.getValue() == null)) {
            throw new IllegalArgumentException(name + " must be a map without missing keys or values");
        }
        return Map.copyOf(values);
    }

    /** A number for running text, to four digits. */
    public static String shown(double value) {
        return plain(new BigDecimal(value).round(new MathContext(4)).doubleValue());
    }

    /** A number as people write it, in full: 5, 0.25, 1.0E7. */
    public static String plain(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e7 ? Long.toString((long) value)
                : Double.toString(value);
    }

    private static String behind(String unit) {
        return unit.isEmpty() ? "" : " " + unit;
    }
}
