package org.roofspring.treatment.safety;

import java.util.OptionalDouble;

import org.roofspring.treatment.Source;
import org.roofspring.treatment.internal.Checks;

/**
 * Limits of a test, editable.
 *
 * @param low    smallest acceptable value; empty for none
 * @param high   largest acceptable value; empty for none
 * @param health whether a value outside harms, rather than spoils or hinders treatment
 * @param source of the limits
 * @param action what a value outside triggers
 */
public record TestLimit(OptionalDouble low, OptionalDouble high, boolean health, Source source, String action) {
    public TestLimit {
        Checks.present("low", low).ifPresent(value -> Checks.within("low limit (low)", value, 0, 1e9, ""));
        Checks.present("high", high).ifPresent(value -> Checks.within("high limit (high)", value, low.orElse(0), 1e9,
                ""));
        Checks.present("source", source);
        Checks.text("action", action);
    }

    public boolean allows(double value) {
        return value >= low.orElse(Double.NEGATIVE_INFINITY) && value <= high.orElse(Double.POSITIVE_INFINITY);
    }

    /** "at most 0.01 mg/L", "from 6.5 to 8.5". */
    public String text(String unit) {
        String behind = unit.isEmpty() ? "" : " " + unit;
        if (low.isPresent() && high.isPresent()) {
            return "from " + Checks.plain(low.getAsDouble()) + " to " + Checks.plain(high.getAsDouble()) + behind;
        }
        if (low.isPresent()) {
            return "at least " + Checks.plain(low.getAsDouble()) + behind;
        }
        return high.isPresent() ? "at most " + Checks.plain(high.getAsDouble()) + behind : "no limit";
    }
}
