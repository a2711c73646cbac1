package org.roofspring.drainage.internal;

/** Argument checks that answer with one sentence: which parameter, its value, what is accepted. */
public final class Require {
    private Require() {
    }

    /**
     * A finite value between two bounds, both included.
     *
     * @param name     of the parameter, with its unit as in {@code lengthM}
     * @param accepted what the bounds are, in words, such as {@code "a length from 0.1 to 500 m"}
     * @return the value
     */
    public static double range(String name, double value, double least, double most, String accepted) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(name + " is " + value + "; " + accepted + " is accepted");
        }
        return value;
    }

    /** A share from 0 to 1. */
    public static double share(String name, double value) {
        return range(name, value, 0, 1, "a share from 0 to 1");
    }

    /** Anything but null. */
    public static <T> T given(String name, T value) {
        if (value == null) {
            throw new IllegalArgumentException(name + " is missing");
        }
        return value;
    }
}
