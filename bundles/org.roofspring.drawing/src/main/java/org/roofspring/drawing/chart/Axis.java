package org.roofspring.drawing.chart;

import java.util.Objects;
import java.util.OptionalDouble;


/**
 * An axis of a chart.
 *
 * @param title what is measured
 * @param unit  as it is shown, such as m³; empty where there is none
 * @param kind  what its numbers mean
 * @param low   where it begins at the latest; empty for where the data begin
 * @param high  where it ends at the earliest; empty for where the data end
 */
public record Axis(String title, String unit, Kind kind, OptionalDouble low, OptionalDouble high) {
    /** What the numbers of an axis mean. */
    public enum Kind {
        /** A number of the unit. */
        NUMBER,
        /** Days since 1970-01-01. */
        DAY,
        /** A year, written without a unit and without setting thousands apart. */
        YEAR
    }

    public Axis {
        Objects.requireNonNull(title);
        Objects.requireNonNull(unit);
        Objects.requireNonNull(kind);
    }

    /** Numbers with a unit. */
    public static Axis of(String title, String unit) {
        return new Axis(title, unit, Kind.NUMBER, OptionalDouble.empty(), OptionalDouble.empty());
    }

    /** Numbers with a unit, from zero upwards at least. */
    public static Axis fromZero(String title, String unit) {
        return new Axis(title, unit, Kind.NUMBER, OptionalDouble.of(0), OptionalDouble.empty());
    }

    /** Dates. */
    public static Axis days(String title) {
        return new Axis(title, "", Kind.DAY, OptionalDouble.empty(), OptionalDouble.empty());
    }

    /** Years. */
    public static Axis years(String title) {
        return new Axis(title, "", Kind.YEAR, OptionalDouble.empty(), OptionalDouble.empty());
    }

    /** Reaches at least to a value. */
    public Axis upTo(double value) {
        return new Axis(title, unit, kind, low, OptionalDouble.of(value));
    }

    /** Title with the unit in brackets. */
    public String label() {
        return unit.isEmpty() ? title : title + " [" + unit + "]";
    }
}
