package org.roofspring.economy.stages;

import java.util.Set;

import org.roofspring.economy.internal.Checks;

/**
 * Something that can be built.
 *
 * @param name    what people call it
 * @param costCur of building it, 0 to 1e12 [currency]
 * @param after   indices of options that must be there first
 */
public record StageOption(String name, double costCur, Set<Integer> after) {
    public StageOption {
        Checks.text("name", name);
        Checks.within("cost of " + name + " (costCur)", costCur, 0, 1e12);
        after = Set.copyOf(Checks.list("options that must be there first (after)",
                Checks.present("options that must be there first (after)", after)));
    }

    /** Something that can be built at any time. */
    public static StageOption free(String name, double costCur) {
        return new StageOption(name, costCur, Set.of());
    }
}
