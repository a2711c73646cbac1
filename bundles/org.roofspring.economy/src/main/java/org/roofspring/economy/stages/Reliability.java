package org.roofspring.economy.stages;

import java.util.SortedSet;

/** How well a site is served when some of its options have been built. */
@FunctionalInterface
public interface Reliability {

    /**
     * @param built indices of the options that are there
     * @return share of what is wanted, 0 to 1 [-]
     */
    double of(SortedSet<Integer> built);
}
