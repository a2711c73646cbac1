package org.roofspring.economy.lifecycle;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

import org.roofspring.economy.internal.Checks;

/** What an answer depends on: one input moved at a time, all others left at their base. */
public final class Sensitivity {
    private static final int HALVINGS = 200;

    private final List<UncertainInput> inputs;
    private final ToDoubleFunction<double[]> model;

    /**
     * @param inputs in the order in which the model takes their values
     * @param model  the answer for given values; finite between the bounds
     */
    public Sensitivity(List<UncertainInput> inputs, ToDoubleFunction<double[]> model) {
        this.inputs = Checks.list("inputs", inputs);
        this.model = Checks.present("model", model);
    }

    /**
     * A bar of the tornado.
     *
     * @param input  that was moved
     * @param atLow  answer at its low bound
     * @param atHigh answer at its high bound
     */
    public record Bar(UncertainInput input, double atLow, double atHigh) {
        /** Difference that it makes. */
        public double swing() {
            return Math.abs(atHigh - atLow);
        }
    }

    /**
     * Where the sign of the answer changes.
     *
     * @param input that was moved
     * @param value at which the answer is zero, the nearest found to the base; empty where the sign is the same at both
     *              bounds as at the base
     */
    public record Flip(UncertainInput input, OptionalDouble value) {
    }

    /** Bars by the difference they make, greatest first. */
    public List<Bar> tornado() {
        List<Bar> bars = new ArrayList<>();
        for (int i = 0; i < inputs.size(); i++) {
            bars.add(new Bar(inputs.get(i), at(i, inputs.get(i).low()), at(i, inputs.get(i).high())));
        }
        bars.sort(Comparator.comparingDouble(Bar::swing).reversed());
        return bars;
    }

    /** For each input, where the sign of the answer changes, found by bisection between the base and each bound. */
    public List<Flip> flips() {
        List<Flip> flips = new ArrayList<>();
        for (int i = 0; i < inputs.size(); i++) {
            UncertainInput input = inputs.get(i);
            OptionalDouble below = root(i, input.base(), input.low());
            OptionalDouble above = root(i, input.base(), input.high());
            boolean belowIsNearer = below.isPresent() && (above.isEmpty()
                    || input.base() - below.getAsDouble() <= above.getAsDouble() - input.base());
            flips.add(new Flip(input, belowIsNearer ? below : above));
        }
        return flips;
    }

    private OptionalDouble root(int index, double base, double bound) {
        double sign = Math.signum(at(index, base));
        if (sign == 0) {
            return OptionalDouble.of(base);
        }
        if (Math.signum(at(index, bound)) == sign) {
            return OptionalDouble.empty();
        }
        double same = base;
        double other = bound;
        for (int i = 0; i < HALVINGS && same != other; i++) {
            double middle = same + (other - same) / 2;
            if (middle == same || middle == other) {
                break;
            }
            if (Math.signum(at(index, middle)) == sign) {
                same = middle;
            } else {
                other = middle;
            }
        }
        return OptionalDouble.of(other);
    }

    private double at(int index, double value) {
        double[] values = inputs.stream().mapToDouble(UncertainInput::base).toArray();
        values[index] = value;
        double answer = model.applyAsDouble(values);
        if (!Double.isFinite(answer)) {
            throw new IllegalArgumentException("the answer must be finite at " + inputs.get(index).name() + " = "
                    + Checks.plain(value) + ", not " + answer);
        }
        return answer;
    }
}
