package org.roofspring.quantity;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A finite number with its unit. The unit is the one the value was given in, so a site file keeps what was typed;
 * {@link #si()} is what kernels read.
 *
 * @param value finite, in {@code unit}
 * @param unit  from the catalogue {@link Units}
 */
public record Quantity(double value, Unit unit) implements Comparable<Quantity> {
    private static final Pattern NUMBER = Pattern.compile("([+-]?(?:\\d+(?:\\.\\d*)?|\\.\\d+)(?:[eE][+-]?\\d+)?)\\s*(.*)",
            Pattern.DOTALL);
    private static final Pattern DECIMAL_COMMA = Pattern.compile("[+-]?\\d+,\\d+.*", Pattern.DOTALL);

    public Quantity {
        if (!Double.isFinite(value)) {
            throw new QuantityException("a finite number is needed, not " + value);
        }
        if (unit == null) {
            throw new QuantityException("a unit is needed");
        }
    }

    public static Quantity of(double value, Unit unit) {
        return new Quantity(value, unit);
    }

    /** A pure number. */
    public static Quantity of(double value) {
        return new Quantity(value, Units.ONE);
    }

    /** A quantity whose value is given in the SI-based unit and shown in another. */
    public static Quantity ofSi(double si, Unit shownIn) {
        return new Quantity(shownIn.fromSi(si), shownIn);
    }

    public Dimension dimension() {
        return unit.dimension();
    }

    /** The value in the SI-based unit of the dimension. */
    public double si() {
        return unit.toSi(value);
    }

    /** The value in another unit of the same dimension. */
    public double in(Unit other) {
        if (other == unit) {
            return value;
        }
        requireSame(other.dimension());
        return other.fromSi(si());
    }

    /** The same amount in another unit of the same dimension. */
    public Quantity as(Unit other) {
        return other == unit ? this : new Quantity(in(other), other);
    }

    /** Compares amounts; both must have the same dimension. */
    @Override
    public int compareTo(Quantity other) {
        requireSame(other.dimension());
        return Double.compare(si(), other.si());
    }

    private void requireSame(Dimension other) {
        if (other != dimension()) {
            throw new QuantityException(unit + " is " + dimension().noun() + ", not " + other.noun());
        }
    }

    /** Reads what {@link #toString} writes: any unit of the catalogue, a bare number for a ratio. */
    public static Quantity valueOf(String text) {
        return read(text, null);
    }

    /**
     * Reads a number with its unit where a dimension is expected.
     *
     * @param text     such as {@code 41.8mm}, {@code 400 L/d}; only a ratio may be a bare number
     * @param expected the dimension that is accepted
     * @throws QuantityException with one sentence: what was wrong and what is accepted
     */
    public static Quantity parse(String text, Dimension expected) {
        return read(text, expected);
    }

    private static Quantity read(String text, Dimension expected) {
        String trimmed = text == null ? "" : text.trim();
        Matcher matcher = NUMBER.matcher(trimmed);
        if (!matcher.matches()) {
            throw new QuantityException("\"" + abridged(trimmed) + "\" is not a number with a unit"
                    + accepted(expected));
        }
        if (DECIMAL_COMMA.matcher(trimmed).matches()) {
            throw new QuantityException("\"" + abridged(trimmed) + "\" has a comma; write the decimal point as in 12.5"
                    + accepted(expected));
        }
        double value = Double.parseDouble(matcher.group(1));
        if (!Double.isFinite(value)) {
            throw new QuantityException("\"" + abridged(trimmed) + "\" is too large a number");
        }
        return new Quantity(value, unit(matcher.group(2).trim(), trimmed, expected));
    }

    private static Unit unit(String symbol, String text, Dimension expected) {
        if (symbol.isEmpty()) {
            if (expected == null || expected == Dimension.RATIO) {
                return Units.ONE;
            }
            throw new QuantityException("\"" + abridged(text) + "\" has no unit; " + expected.noun()
                    + " is needed (" + expected.acceptedUnits() + ")");
        }
        if (symbol.equals("gal") || symbol.startsWith("gal/")) {
            throw new QuantityException("\"" + abridged(text) + "\": which gallon? write galUS (3.785 L) or galImp (4.546 L)");
        }
        Unit unit = (expected == null ? Units.find(symbol) : Units.find(symbol, expected)).orElseThrow(
                () -> new QuantityException("\"" + abridged(symbol) + "\" is not a known unit" + accepted(expected)));
        if (expected != null && unit.dimension() != expected) {
            throw new QuantityException("\"" + abridged(text) + "\" is " + unit.dimension().noun() + ", but "
                    + expected.noun() + " is needed (" + expected.acceptedUnits() + ")");
        }
        return unit;
    }

    private static String accepted(Dimension expected) {
        return expected == null ? "" : "; " + expected.noun() + " is needed (" + expected.acceptedUnits() + ")";
    }

    private static String abridged(String text) {
        String oneLine = text.replaceAll("\\p{Cntrl}+", " ");
        return oneLine.length() > 60 ? oneLine.substring(0, 57) + "..." : oneLine;
    }

    /** Full precision, such as {@code 41.8 mm}; a pure number stands alone. {@link #valueOf} reads it back. */
    @Override
    public String toString() {
        String number = value == Math.rint(value) && Math.abs(value) < 1e15 ? Long.toString((long) value)
                : Double.toString(value);
        return unit == Units.ONE ? number : number + " " + unit.symbol();
    }
}
