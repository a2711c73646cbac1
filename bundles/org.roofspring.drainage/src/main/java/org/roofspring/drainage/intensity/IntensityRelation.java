package org.roofspring.drainage.intensity;

import org.roofspring.drainage.internal.Require;

/**
 * Intensity as a function of duration for one return period. Coefficients give mm/h for a duration in minutes; those
 * of a relation in inches an hour are brought over with {@link #times}.
 */
public sealed interface IntensityRelation {
    /** Factor for relations published in inches an hour. */
    double MM_PER_INCH = 25.4;

    /**
     * Mean intensity of the wettest time of a given length [mm/h].
     *
     * @param durationS from 60 to 604800 s (one minute to seven days)
     */
    default double intensityMmPerH(double durationS) {
        double minutes = Require.range("durationS", durationS, 60, 604800,
                "a duration from 60 to 604800 s (1 minute to 7 days)") / 60;
        return switch (this) {
            case Talbot(double a, double b) -> a / (minutes + b);
            case Sherman(double a, double b, double n) -> a / Math.pow(minutes + b, n);
            case Wenzel(double a, double b, double n) -> a / (Math.pow(minutes, n) + b);
        };
    }

    /** Depth of the wettest time of a given length [mm], with the same range. */
    default double depthMm(double durationS) {
        return intensityMmPerH(durationS) * durationS / 3600;
    }

    /** The same relation with every intensity multiplied, such as by {@link #MM_PER_INCH}. */
    IntensityRelation times(double factor);

    private static void coefficients(double a, double b) {
        Require.range("a", a, 1e-6, 1e7, "a coefficient from 1e-6 to 1e7");
        Require.range("b", b, 0, 1e5, "a coefficient from 0 to 100000 min");
    }

    /**
     * Talbot's form, {@code i = a / (t + b)}.
     *
     * @param a [mm/h min], from 1e-6 to 1e7
     * @param b [min], from 0 to 100000
     */
    record Talbot(double a, double b) implements IntensityRelation {
        public Talbot {
            coefficients(a, b);
        }

        @Override
        public Talbot times(double factor) {
            return new Talbot(a * factor, b);
        }
    }

    /**
     * Sherman's form, {@code i = a / (t + b)^n}.
     *
     * @param a [mm/h min^n], from 1e-6 to 1e7
     * @param b [min], from 0 to 100000
     * @param n from 0.01 to 3
     */
    record Sherman(double a, double b, double n) implements IntensityRelation {
        public Sherman {
            coefficients(a, b);
            Require.range("n", n, 0.01, 3, "an exponent from 0.01 to 3");
        }

        @Override
        public Sherman times(double factor) {
            return new Sherman(a * factor, b, n);
        }
    }

    /**
     * Wenzel's form, {@code i = a / (t^n + b)} (H. G. Wenzel 1982, in V. T. Chow, D. R. Maidment, L. W. Mays, Applied
     * Hydrology, McGraw-Hill 1988, table 14.2.3, from memory).
     *
     * @param a [mm/h min^n], from 1e-6 to 1e7
     * @param b [min^n], from 0 to 100000
     * @param n from 0.01 to 3
     */
    record Wenzel(double a, double b, double n) implements IntensityRelation {
        public Wenzel {
            coefficients(a, b);
            Require.range("n", n, 0.01, 3, "an exponent from 0.01 to 3");
        }

        @Override
        public Wenzel times(double factor) {
            return new Wenzel(a * factor, b, n);
        }
    }
}
