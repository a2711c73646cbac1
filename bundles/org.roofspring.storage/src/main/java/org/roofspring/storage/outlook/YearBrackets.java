package org.roofspring.storage.outlook;

import java.util.Arrays;
import java.util.function.IntPredicate;

/**
 * Counts the years that run dry at one setting after another. Where a higher setting is never worse for any year, one
 * that got through at some setting gets through at every higher one and is not run again, and so for one that did not.
 */
final class YearBrackets {

    private final int[] lowestMet;
    private final int[] highestDry;

    private final boolean higherIsNeverWorse;

    YearBrackets(int years, boolean higherIsNeverWorse) {
        this.higherIsNeverWorse = higherIsNeverWorse;
        lowestMet = new int[years];
        highestDry = new int[years];
        Arrays.fill(lowestMet, Integer.MAX_VALUE);
        Arrays.fill(highestDry, Integer.MIN_VALUE);
    }

    /**
     * Years that run dry.
     *
     * @param setting the setting
     * @param most counting stops above this
     * @param runsDry whether a year runs dry at the setting
     */
    int dryYears(int setting, int most, IntPredicate runsDry) {
        int dry = 0;
        for (int year = 0; year < lowestMet.length && dry <= most; year++) {
            dry += isDry(year, setting, runsDry) ? 1 : 0;
        }
        return dry;
    }

    private boolean isDry(int year, int setting, IntPredicate runsDry) {
        if (setting >= lowestMet[year]) {
            return false;
        }
        if (setting <= highestDry[year]) {
            return true;
        }
        boolean dry = runsDry.test(year);
        if (!higherIsNeverWorse) {
            return dry;
        }
        if (dry) {
            highestDry[year] = setting;
        } else {
            lowestMet[year] = setting;
        }
        return dry;
    }
}
