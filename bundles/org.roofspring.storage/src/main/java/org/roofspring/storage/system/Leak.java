package org.roofspring.storage.system;

import org.roofspring.storage.internal.FixedVolume;

/**
 * Leakage of a tank, from the water above the height of the leak.
 *
 * @param ratioPerDay share of the water above the leak that is lost in a day [-], 0 to 1
 * @param volumeM3PerDay lost besides, as long as there is water above the leak [m&sup3; a day], 0 to 2,000,000
 * @param aboveVolumeM3 volume in the tank below the leak, out of its reach [m&sup3;], 0 to 2,000,000
 */
public record Leak(double ratioPerDay, double volumeM3PerDay, double aboveVolumeM3) {

    /** A tight tank. */
    public static final Leak NONE = new Leak(0, 0, 0);

    /** Checks the numbers. */
    public Leak {
        Checks.ratio(ratioPerDay, "ratioPerDay");
        FixedVolume.toUnits(volumeM3PerDay, "volumeM3PerDay");
        FixedVolume.toUnits(aboveVolumeM3, "aboveVolumeM3");
    }
}
