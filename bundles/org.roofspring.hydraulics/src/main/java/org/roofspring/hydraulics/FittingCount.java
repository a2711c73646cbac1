package org.roofspring.hydraulics;

import org.roofspring.hydraulics.internal.Require;

/**
 * A number of equal fittings in a run.
 *
 * @param type  what they are
 * @param count how many, 0 to 1000
 */
public record FittingCount(FittingType type, int count) {
    public FittingCount {
        Require.present("kind of fitting", type);
        Require.within("number of fittings", count, 0, 1000);
    }
}
