package org.roofspring.economy.lifecycle;

import org.roofspring.economy.internal.Checks;

/** From which year on one supply has cost no more than another, by the present value of all that was paid so far. */
public sealed interface BreakEven {

    /**
     * It has, from the end of a year up to the horizon.
     *
     * @param year years after building; 0 where it is no dearer from the start
     */
    record FromYear(int year) implements BreakEven {
    }

    /**
     * It has not, within the horizon.
     *
     * @param shortCur what it has cost more by the end, as present value without residual values [currency]
     */
    record Never(double shortCur) implements BreakEven {
    }

    /**
     * @param plan  of which it is asked
     * @param other that it is held against, over the same horizon
     */
    static BreakEven of(LifeCycleCost plan, LifeCycleCost other) {
        Checks.present("plan", plan);
        Checks.present("other", other);
        if (plan.terms().horizonYears() != other.terms().horizonYears()) {
            throw new IllegalArgumentException("both plans must have one horizon, not "
                    + plan.terms().horizonYears() + " and " + other.terms().horizonYears() + " years");
        }
        double[] own = plan.cumulatedPresentCur();
        double[] others = other.cumulatedPresentCur();
        int year = own.length;
        while (year > 0 && own[year - 1] <= others[year - 1]) {
            year--;
        }
        return year < own.length ? new FromYear(year) : new Never(own[year - 1] - others[year - 1]);
    }
}
