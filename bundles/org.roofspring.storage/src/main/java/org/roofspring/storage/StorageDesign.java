package org.roofspring.storage;

import org.roofspring.storage.internal.FixedVolume;

/**
 * A plain tank: one volume, one way in, one demand, no losses.
 *
 * @param capacityM3 usable volume S [m&sup3;], 0 to 2,000,000
 * @param startVolumeM3 volume in the tank as the first day begins [m&sup3;], 0 to the capacity
 * @param rule when the demand is drawn
 */
public record StorageDesign(double capacityM3, double startVolumeM3, YieldRule rule) {

    /** Checks the volumes. */
    public StorageDesign {
        long capacity = FixedVolume.toUnits(capacityM3, "capacityM3");
        if (rule == null) {
            throw new IllegalArgumentException("rule is missing; accepted is a YieldRule");
        }
        if (FixedVolume.toUnits(startVolumeM3, "startVolumeM3") > capacity) {
            throw new IllegalArgumentException("startVolumeM3 is " + startVolumeM3
                    + " m3; accepted is 0 to the capacity of " + capacityM3 + " m3");
        }
    }
}
