package org.roofspring.rain;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Units in which files give a depth of rain. */
public enum DepthUnit {
    /** Millimetres. */
    MM(1, 1, List.of("mm", "millimetres", "millimeters", "l/m2", "kg/m2", "kg m-2")),
    /** Tenths of a millimetre, as in GHCN-Daily. */
    TENTHS_OF_MM(1, 10, List.of("0.1mm", "0.1 mm", "mm/10", "1/10 mm", "tenths of mm")),
    /** Centimetres. */
    CM(10, 1, List.of("cm")),
    /** Metres. */
    M(1000, 1, List.of("m")),
    /** Inches. */
    IN(25.4, 1, List.of("in", "inch", "inches", "\""));

    private final double factor;
    private final double divisor;
    private final List<String> names;

    DepthUnit(double factor, double divisor, List<String> names) {
        this.factor = factor;
        this.divisor = divisor;
        this.names = names;
    }

    /** The value in millimetres; what is no number stays none. A tenth is divided by 10, so that 109 becomes exactly the 10.9 that text gives. */
    public double toMm(double value) {
        return value * factor / divisor;
    }

    /** The usual sign of the unit. */
    public String symbol() {
        return names.get(0);
    }

    /** The unit of a name such as {@code mm} or {@code in}, in any case of letters. */
    public static Optional<DepthUnit> find(String name) {
        String wanted = name.trim().toLowerCase(Locale.ROOT);
        for (DepthUnit unit : values()) {
            if (unit.names.contains(wanted)) {
                return Optional.of(unit);
            }
        }
        return Optional.empty();
    }

    /**
     * The unit of a name.
     *
     * @throws IllegalArgumentException naming the units that are accepted
     */
    public static DepthUnit named(String name) {
        return find(name == null ? "" : name).orElseThrow(() -> new IllegalArgumentException(
                "\"" + name + "\" is not a unit of rain depth; accepted are " + accepted()));
    }

    /** The names that messages offer. */
    public static String accepted() {
        return "mm, 0.1mm, cm, m, in";
    }
}
