package org.roofspring.storage.outlook;

import java.util.Set;

/**
 * A cut in use.
 *
 * @param allowedRatio share of the full amount that may still be used [-], 0 to 1
 * @param uses indices of the uses that are cut, in the order of the system; none means all
 */
public record Ration(double allowedRatio, Set<Integer> uses) {

    /** Everybody uses as much as usual. */
    public static final Ration NONE = new Ration(1, Set.of());

    /** Copies the set and checks the share. */
    public Ration {
        Shares.check(allowedRatio, "allowedRatio");
        uses = Set.copyOf(uses);
    }

    boolean cuts(int use) {
        return uses.isEmpty() || uses.contains(use);
    }

    /** The same uses cut to another share. */
    public Ration to(double otherRatio) {
        return new Ration(otherRatio, uses);
    }
}
