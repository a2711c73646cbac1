package org.roofspring.storage.internal;

import java.util.Arrays;

/**
 * Conversion between volumes in m&sup3; and the whole microlitres in which balances run.
 * See the package description of {@code org.roofspring.storage} for why.
 */
public final class FixedVolume {

    /** Whole units in one cubic metre: 1 unit = 1 &micro;L = 1 mm&sup3;. */
    public static final long UNITS_PER_M3 = 1_000_000_000L;

    /** Largest single volume [m&sup3;]: below it a level in m&sup3; goes to units and back unchanged. */
    public static final double MAX_M3 = 2_000_000.0;

    /** Largest single volume in units. */
    public static final long MAX_UNITS = 2_000_000L * UNITS_PER_M3;

    /** Largest total of a series in units, 4e9 m&sup3;: sums of two such totals still fit. */
    private static final long MAX_TOTAL_UNITS = 4_000_000_000L * UNITS_PER_M3;

    private FixedVolume() {
    }

    /**
     * Nearest whole number of units.
     *
     * @param volumeM3 volume [m&sup3;], 0 to 2,000,000
     * @param name what the volume is, for the message
     * @throws IllegalArgumentException when outside the range or not a number
     */
    public static long toUnits(double volumeM3, String name) {
        if (!(volumeM3 >= 0 && volumeM3 <= MAX_M3)) {
            throw new IllegalArgumentException(name + " is " + volumeM3 + " m3; accepted is 0 to 2000000 m3");
        }
        return nearest(volumeM3);
    }

    /** Nearest whole number of units, of a volume known to be in range. */
    static long nearest(double volumeM3) {
        return (long) Math.rint(volumeM3 * UNITS_PER_M3);
    }

    /**
     * Series of daily volumes in units, in the order given.
     *
     * @throws IllegalArgumentException when a day is outside the range, naming the day (counted from 0), or when the
     *             total does not fit
     */
    public static long[] toUnits(double[] volumeM3, String name) {
        long[] units = new long[volumeM3.length];
        long total = 0;
        for (int day = 0; day < units.length; day++) {
            double value = volumeM3[day];
            if (!(value >= 0 && value <= MAX_M3)) {
                throw new IllegalArgumentException(
                        name + " on day " + day + " is " + value + " m3; accepted is 0 to 2000000 m3");
            }
            units[day] = nearest(value);
            total += units[day];
            if (total > MAX_TOTAL_UNITS) {
                throw new IllegalArgumentException(name + " adds up to more than 4e9 m3 by day " + day
                        + "; accepted is a total up to that");
            }
        }
        return units;
    }

    /** The volume in m&sup3;, correctly rounded. */
    public static double toM3(long units) {
        return units / 1e9;
    }

    /** Series in m&sup3;. */
    public static double[] toM3(long[] units) {
        return Arrays.stream(units).mapToDouble(FixedVolume::toM3).toArray();
    }

    /** Sum of a series already checked by {@link #toUnits(double[], String)}. */
    public static long sum(long[] units) {
        return Arrays.stream(units).sum();
    }

    /**
     * Sum of two totals, each within the range of a total.
     *
     * @throws IllegalArgumentException when the sum is not
     */
    public static long addTotals(long first, long second, String name) {
        checkTotal((double) first + second, name);
        return first + second;
    }

    /**
     * Refuses a total out of range.
     *
     * @throws IllegalArgumentException when above 4e9 m&sup3;
     */
    public static void checkTotal(double units, String name) {
        if (units > MAX_TOTAL_UNITS) {
            throw new IllegalArgumentException(
                    name + " adds up to more than 4e9 m3; accepted is a total up to that");
        }
    }

    /** The share of a volume, rounded to a whole unit; never above the volume for a ratio up to 1. */
    public static long share(long units, double ratio) {
        return ratio == 1 ? units : (long) Math.rint(units * ratio);
    }
}
