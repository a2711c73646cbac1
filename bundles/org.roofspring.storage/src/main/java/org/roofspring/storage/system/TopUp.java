package org.roofspring.storage.system;

import org.roofspring.storage.internal.FixedVolume;

/**
 * Water bought in by the load. At the end of a day a load is ordered when none is on its way, the volume that can be
 * drawn from the stage is below a mark, and there is room. It comes {@code delayDays} full days later, in the morning,
 * and is paid for whole even when rain has meanwhile taken its place.
 *
 * @param stage index of the stage it is let into
 * @param loadM3 size of a load [m&sup3;], above 0 to 2,000,000
 * @param orderBelowM3 mark [m&sup3;]
 * @param freeM3 room there must be to order [m&sup3;]
 * @param delayDays full days between order and arrival [d], 0 (next morning) or more
 * @param priceEach price of a load, in the site's currency, 0 or more
 */
public record TopUp(int stage, double loadM3, double orderBelowM3, double freeM3, int delayDays, double priceEach) {

    /** Checks the numbers. */
    public TopUp {
        if (FixedVolume.toUnits(loadM3, "loadM3") == 0) {
            throw new IllegalArgumentException("loadM3 is " + loadM3 + " m3; accepted is above 0 to 2000000 m3");
        }
        FixedVolume.toUnits(orderBelowM3, "orderBelowM3");
        FixedVolume.toUnits(freeM3, "freeM3");
        Checks.days(delayDays, 0, "delayDays");
        if (!(priceEach >= 0 && priceEach < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("priceEach is " + priceEach + "; accepted is 0 or more");
        }
    }
}
