package org.roofspring.storage.outlook;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Shares of a number of years, counted in decimal so that 10 % of 30 is 3 and not a little more. */
final class Shares {

    private Shares() {
    }

    /** Fewest of the years that make up the share. */
    static int atLeast(double ratio, int years) {
        return product(ratio, years).setScale(0, RoundingMode.CEILING).intValueExact();
    }

    /** Most of the years that stay within the share. */
    static int atMost(double ratio, int years) {
        return product(ratio, years).setScale(0, RoundingMode.FLOOR).intValueExact();
    }

    /** Place in a sorted list of the value that the share of the list does not exceed, from 0. */
    static int place(double ratio, int size) {
        return Math.max(1, atLeast(ratio, size)) - 1;
    }

    static void check(double ratio, String name) {
        if (!(ratio >= 0 && ratio <= 1)) {
            throw new IllegalArgumentException(name + " is " + ratio + "; accepted is 0 to 1");
        }
    }

    private static BigDecimal product(double ratio, int years) {
        return BigDecimal.valueOf(ratio).multiply(BigDecimal.valueOf(years));
    }
}
