package org.roofspring.storage.system;

import org.roofspring.storage.internal.FixedVolume;

/**
 * A pump or pipe from one stage to the next.
 *
 * @param maxM3PerDay most that it carries in a day [m&sup3; a day], 0 to 2,000,000
 * @param keepM3 volume that it leaves in the stage it draws from [m&sup3;], 0 to 2,000,000
 * @param pumped whether it stops when the pump is out
 */
public record Transfer(double maxM3PerDay, double keepM3, boolean pumped) {

    /** Checks the numbers. */
    public Transfer {
        FixedVolume.toUnits(maxM3PerDay, "maxM3PerDay");
        FixedVolume.toUnits(keepM3, "keepM3");
    }
}
