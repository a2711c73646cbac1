package org.roofspring.hydraulics;

import java.util.Optional;
import java.util.stream.DoubleStream;

import org.roofspring.hydraulics.internal.Require;

/**
 * The span between a lowest and a highest value.
 *
 * @param low  finite
 * @param high finite, not below low
 */
public record Band(double low, double high) {
    public Band {
        Require.within("lower end of a range", low, -Double.MAX_VALUE, Double.MAX_VALUE, "");
        Require.within("upper end of a range", high, low, Double.MAX_VALUE, "");
    }

    /** A span of one value. */
    public static Band at(double value) {
        return new Band(value, value);
    }

    /** The span of some values; absent where there are none. */
    public static Optional<Band> over(double... values) {
        Require.present("values", values);
        return values.length == 0 ? Optional.empty()
                : Optional.of(new Band(DoubleStream.of(values).min().getAsDouble(),
                        DoubleStream.of(values).max().getAsDouble()));
    }

    /** Whether a value lies within. */
    public boolean covers(double value) {
        return value >= low && value <= high;
    }

    /** Both ends, or the one value where they are equal. */
    public double[] ends() {
        return low == high ? new double[] {low} : new double[] {low, high};
    }
}
