package org.roofspring.storage.system;

import org.roofspring.storage.internal.FixedVolume;

/**
 * A rule of rationing: below a volume in store, a use gets a share of its demand.
 *
 * @param belowM3 volume that can be drawn from all stages together, below which the step holds [m&sup3;]
 * @param ratio share of the demand that is allowed [-], 0 to 1
 */
public record RationStep(double belowM3, double ratio) {

    /** Checks the numbers. */
    public RationStep {
        FixedVolume.toUnits(belowM3, "belowM3");
        Checks.ratio(ratio, "ratio");
    }
}
