package org.roofspring.storage;

import org.roofspring.storage.internal.FixedVolume;

/**
 * A first-flush diverter: a chamber that takes the first water off the roof, and must drain before it can do so again.
 *
 * <p>The chamber fills from each day's runoff until it is full; what follows goes to the tank. After
 * {@code resetDryDays} days in a row without runoff it is empty again; with 0 it is empty every morning.
 *
 * @param volumeM3 of the chamber [m&sup3;], 0 to 2,000,000
 * @param resetDryDays days without runoff after which it is empty again [d], 0 or more
 */
public record FirstFlush(double volumeM3, int resetDryDays) {

    /** Checks the numbers. */
    public FirstFlush {
        FixedVolume.toUnits(volumeM3, "volumeM3");
        if (resetDryDays < 0) {
            throw new IllegalArgumentException("resetDryDays is " + resetDryDays + "; accepted is 0 or more");
        }
    }

    /**
     * What passes the diverter and what it takes, day by day; together they are the runoff.
     *
     * @param inflowM3 to the tank [m&sup3;]
     * @param divertedM3 taken by the chamber [m&sup3;]
     */
    public record Split(double[] inflowM3, double[] divertedM3) {
    }

    /**
     * Splits a series of runoff. The chamber starts empty.
     *
     * @param runoffM3 off the roof [m&sup3;] of each day
     */
    public Split split(double[] runoffM3) {
        long[] runoff = FixedVolume.toUnits(runoffM3, "runoffM3");
        long chamber = FixedVolume.toUnits(volumeM3, "volumeM3");
        double[] inflow = new double[runoff.length];
        double[] diverted = new double[runoff.length];
        long room = chamber;
        int dryDays = 0;
        for (int day = 0; day < runoff.length; day++) {
            if (resetDryDays == 0 || dryDays >= resetDryDays) {
                room = chamber;
            }
            long taken = Math.min(runoff[day], room);
            room -= taken;
            dryDays = runoff[day] > 0 ? 0 : dryDays + 1;
            inflow[day] = FixedVolume.toM3(runoff[day] - taken);
            diverted[day] = FixedVolume.toM3(taken);
        }
        return new Split(inflow, diverted);
    }
}
