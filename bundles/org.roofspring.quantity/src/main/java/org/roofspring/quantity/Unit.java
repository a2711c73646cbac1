package org.roofspring.quantity;

import java.util.Objects;

/**
 * A unit of measure. A value {@code v} in this unit is {@code v * numerator / denominator + offset} in the SI-based
 * unit of its dimension; numerator and denominator are whole numbers wherever the definition allows, so that one
 * correctly rounded division converts.
 */
public final class Unit {
    private final String symbol;
    private final Dimension dimension;
    private final double numerator;
    private final double denominator;
    private final double offset;

    Unit(String symbol, Dimension dimension, double numerator, double denominator, double offset) {
        this.symbol = Objects.requireNonNull(symbol);
        this.dimension = Objects.requireNonNull(dimension);
        this.numerator = numerator;
        this.denominator = denominator;
        this.offset = offset;
    }

    /** The symbol as written in files and on the command line, ASCII only, such as {@code m3/s}. */
    public String symbol() {
        return symbol;
    }

    /** What the unit measures. */
    public Dimension dimension() {
        return dimension;
    }

    /** Converts a value in this unit to the SI-based unit of the dimension; what is no finite number stays none. */
    public double toSi(double value) {
        return value * numerator / denominator + offset;
    }

    /** Converts a value in the SI-based unit of the dimension to this unit; what is no finite number stays none. */
    public double fromSi(double si) {
        return (si - offset) * denominator / numerator;
    }

    @Override
    public String toString() {
        return symbol;
    }
}
