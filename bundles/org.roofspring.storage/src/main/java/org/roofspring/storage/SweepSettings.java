package org.roofspring.storage;

import org.roofspring.storage.internal.FixedVolume;

/**
 * How every tank of a sweep is run.
 *
 * @param rule when the demand is drawn
 * @param startVolumeM3 volume as the record begins [m&sup3;], 0 to 2,000,000; a smaller tank begins full
 * @param warmUpPasses times the record is run before the pass that counts, 0 to 10
 */
public record SweepSettings(YieldRule rule, double startVolumeM3, int warmUpPasses) {

    /** Checks the numbers. */
    public SweepSettings {
        if (rule == null) {
            throw new IllegalArgumentException("rule is missing; accepted is a YieldRule");
        }
        FixedVolume.toUnits(startVolumeM3, "startVolumeM3");
        if (warmUpPasses < 0 || warmUpPasses > 10) {
            throw new IllegalArgumentException("warmUpPasses is " + warmUpPasses + "; accepted is 0 to 10");
        }
    }

    /** Starting empty, the whole record counted. */
    public static SweepSettings empty(YieldRule rule) {
        return new SweepSettings(rule, 0, 0);
    }

    /** As sizing does: one pass from empty to warm up, one that counts. */
    public static SweepSettings warm(YieldRule rule) {
        return new SweepSettings(rule, 0, 1);
    }
}
