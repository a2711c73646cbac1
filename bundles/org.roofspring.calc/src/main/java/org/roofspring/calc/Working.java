package org.roofspring.calc;

import java.util.List;
import java.util.Objects;

import org.roofspring.quantity.Quantity;

/**
 * The ordered steps behind a finding, as an engineer would write them by hand. Never a step for each turn of a loop.
 *
 * @param findingId the finding it explains
 * @param elementId the element of that finding, or null for the site
 * @param title     what is worked out
 * @param steps     in order; the last gives the finding
 */
public record Working(String findingId, String elementId, String title, List<Step> steps) {
    public Working {
        Objects.requireNonNull(findingId);
        Objects.requireNonNull(title);
        steps = List.copyOf(steps);
    }

    public Working(String findingId, String title, Step... steps) {
        this(findingId, null, title, List.of(steps));
    }

    /**
     * One step.
     *
     * @param symbol      what the result is called, such as {@code Re}
     * @param meaning     the result in words
     * @param formula     with symbols, such as {@code V D / nu}
     * @param inputs      the values that stand for the symbols
     * @param substituted the formula with the values in it
     * @param result      what comes out; null where the step is a rule in words
     * @param source      where the formula comes from
     */
    public record Step(String symbol, String meaning, String formula, List<Input> inputs, String substituted,
            Quantity result, Source source) {
        public Step {
            Objects.requireNonNull(symbol);
            Objects.requireNonNull(meaning);
            Objects.requireNonNull(formula);
            inputs = List.copyOf(inputs);
            Objects.requireNonNull(source);
        }

        /** A step whose substitution is written by putting each input's value in place of its symbol. */
        public static Step of(String symbol, String meaning, String formula, Quantity result, Source source,
                Input... inputs) {
            return new Step(symbol, meaning, formula, List.of(inputs), Substitution.write(formula, List.of(inputs)),
                    result, source);
        }
    }

    /**
     * A value that goes into a step.
     *
     * @param symbol    as in the formula
     * @param meaning   in words
     * @param value     with its unit
     * @param elementId the element it is an attribute of, or null where it is a result or a constant
     * @param feature   the attribute's name, or null
     */
    public record Input(String symbol, String meaning, Quantity value, String elementId, String feature) {
        public Input {
            Objects.requireNonNull(symbol);
            Objects.requireNonNull(meaning);
            Objects.requireNonNull(value);
        }

        public Input(String symbol, String meaning, Quantity value) {
            this(symbol, meaning, value, null, null);
        }
    }
}
