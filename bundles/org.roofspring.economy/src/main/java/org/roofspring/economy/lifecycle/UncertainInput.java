package org.roofspring.economy.lifecycle;

import org.roofspring.economy.internal.Checks;

/**
 * An input that may turn out otherwise.
 *
 * @param name what it is
 * @param base value reckoned with, finite
 * @param low  least value thought of, no more than the base
 * @param high greatest value thought of, no less than the base
 */
public record UncertainInput(String name, double base, double low, double high) {
    private static final double MOST = 1e15;

    public UncertainInput {
        Checks.text("name", name);
        Checks.within("base of " + name + " (base)", base, -MOST, MOST);
        Checks.within("low bound of " + name + " (low)", low, -MOST, base);
        Checks.within("high bound of " + name + " (high)", high, base, MOST);
    }
}
