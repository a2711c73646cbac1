package org.roofspring.calc;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;

import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Unit;

/** The kinds of value a finding can have; renderers switch over them. */
public sealed interface FindingValue {

    /** A number with its unit, full precision; the unit is the one it is usually shown in. */
    record Number(Quantity quantity) implements FindingValue {
        public Number {
            Objects.requireNonNull(quantity);
        }
    }

    /** Yes or no. */
    record Flag(boolean value) implements FindingValue {
    }

    /** Words, such as the name of the weakest tap. */
    record Text(String text) implements FindingValue {
        public Text {
            Objects.requireNonNull(text);
        }
    }

    /** A judgement with its reasons. */
    record Verdict(Level level, String text, List<String> reasons) implements FindingValue {
        /** How a verdict reads; always shown in words as well as in colour. */
        public enum Level {
            GOOD, CONDITIONAL, BAD
        }

        public Verdict {
            Objects.requireNonNull(level);
            Objects.requireNonNull(text);
            reasons = List.copyOf(reasons);
        }
    }

    /**
     * Daily values. The array is shared, not copied: it holds decades of days, and must not be written to.
     */
    final class Daily implements FindingValue {
        private final LocalDate firstDay;
        private final double[] values;
        private final Unit unit;

        /**
         * @param firstDay date of the first value
         * @param values   one for each day; not written to after this call
         * @param unit     of the values
         */
        public Daily(LocalDate firstDay, double[] values, Unit unit) {
            this.firstDay = Objects.requireNonNull(firstDay);
            this.values = Objects.requireNonNull(values);
            this.unit = Objects.requireNonNull(unit);
        }

        public LocalDate firstDay() {
            return firstDay;
        }

        public int days() {
            return values.length;
        }

        public double value(int day) {
            return values[day];
        }

        /** The values themselves, for kernels; read only. */
        public double[] values() {
            return values;
        }

        public Unit unit() {
            return unit;
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Daily daily && firstDay.equals(daily.firstDay) && unit == daily.unit
                    && Arrays.equals(values, daily.values);
        }

        @Override
        public int hashCode() {
            return Objects.hash(firstDay, unit.symbol(), values.length);
        }

        @Override
        public String toString() {
            return values.length + " days from " + firstDay + " in " + unit;
        }
    }

    /**
     * A curve of y over x, such as a pump curve or reliability over volume. The arrays are shared, not copied.
     */
    final class Curve implements FindingValue {
        private final String xTitle;
        private final Unit xUnit;
        private final double[] x;
        private final Unit yUnit;
        private final double[] y;

        public Curve(String xTitle, Unit xUnit, double[] x, Unit yUnit, double[] y) {
            if (x.length != y.length) {
                throw new IllegalArgumentException("a curve needs as many y as x: " + y.length + " and " + x.length);
            }
            this.xTitle = Objects.requireNonNull(xTitle);
            this.xUnit = Objects.requireNonNull(xUnit);
            this.x = x;
            this.yUnit = Objects.requireNonNull(yUnit);
            this.y = y;
        }

        public String xTitle() {
            return xTitle;
        }

        public Unit xUnit() {
            return xUnit;
        }

        public double[] x() {
            return x;
        }

        public Unit yUnit() {
            return yUnit;
        }

        public double[] y() {
            return y;
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Curve curve && xTitle.equals(curve.xTitle) && xUnit == curve.xUnit
                    && yUnit == curve.yUnit && Arrays.equals(x, curve.x) && Arrays.equals(y, curve.y);
        }

        @Override
        public int hashCode() {
            return Objects.hash(xTitle, Arrays.hashCode(x), Arrays.hashCode(y));
        }
    }

    /**
     * Rows and columns; a cell is a {@link Quantity}, a {@link String}, a {@link Boolean} or null where there is none.
     */
    record Table(List<String> columns, List<List<Object>> rows) implements FindingValue {
        public Table {
            columns = List.copyOf(columns);
            int width = columns.size();
            rows = rows.stream().map(row -> {
                if (row.size() != width) {
                    throw new IllegalArgumentException("a row has " + row.size() + " cells for " + width + " columns");
                }
                for (Object cell : row) {
                    if (cell != null && !(cell instanceof Quantity || cell instanceof String || cell instanceof Boolean)) {
                        throw new IllegalArgumentException("a cell cannot be a " + cell.getClass().getName());
                    }
                }
                return java.util.Collections.unmodifiableList(new java.util.ArrayList<>(row));
            }).toList();
        }
    }
}
