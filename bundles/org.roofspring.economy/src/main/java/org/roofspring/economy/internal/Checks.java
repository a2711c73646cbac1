package org.roofspring.economy.internal;

import java.util.Collection;
import java.util.List;

/** Refuses arguments with one sentence: what was given and what is accepted. */
public final class Checks {
    private Checks() {
    }

    /**
     * @param name in words with the parameter's own name, such as {@code "amount (amountCur)"}
     * @return the value, from {@code low} to {@code high}, both included
     */
    public static double within(String name, double value, double low, double high) {
        if (!(value >= low && value <= high)) {
            throw new IllegalArgumentException(name + " must be from " + plain(low) + " to " + plain(high) + ", not "
                    + plain(value));
        }
        return value;
    }

    /** The number, from {@code low} to {@code high}, both included. */
    public static int within(String name, int value, int low, int high) {
        if (value < low || value > high) {
            throw new IllegalArgumentException(name + " must be from " + low + " to " + high + ", not " + value);
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

    /** A number as people write it, in full: 5, 0.25, 1.0E12. */
    public static String plain(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e7 ? Long.toString((long) value)
                : Double.toString(value);
    }
}
