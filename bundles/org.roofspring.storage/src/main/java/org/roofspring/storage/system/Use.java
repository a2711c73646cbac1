package org.roofspring.storage.system;

import java.util.List;
import org.roofspring.storage.internal.FixedVolume;

/**
 * Something that draws water.
 *
 * @param name shown to people
 * @param stage index of the stage it draws from
 * @param priority lower numbers draw first; equals draw in the order of the list
 * @param outletM3 volume in that stage below the use's outlet, out of its reach [m&sup3;]; the dead volume is out of
 *            reach in any case
 * @param pumped whether it goes without when the pump is out
 * @param rationing steps; where several hold, the smallest share counts
 */
public record Use(String name, int stage, int priority, double outletM3, boolean pumped,
        List<RationStep> rationing) {

    /** Copies the list and checks the numbers. */
    public Use {
        FixedVolume.toUnits(outletM3, "outletM3");
        rationing = List.copyOf(rationing);
    }

    /** A use of the given stage that draws by gravity, down to the dead volume, without rationing. */
    public static Use plain(String name, int stage) {
        return new Use(name, stage, 0, 0, false, List.of());
    }
}
