package org.roofspring.hydraulics;

import org.roofspring.hydraulics.internal.Require;

/**
 * The Darcy friction factor f of h = f (L/D) V^2 / 2g.
 *
 * <p>Symbols: Re Reynolds number; e/D roughness over bore. {@link #frictionFactor} is the one to use; the others are
 * its parts, or approximations kept under their own names for comparison.
 */
public final class PipeFriction {
    /** Highest Reynolds number of laminar flow. */
    public static final double LAMINAR_UP_TO = 2000;
    /** Lowest Reynolds number of turbulent flow. */
    public static final double TURBULENT_FROM = 4000;
    /** Slowest flow that has a friction factor; below this Reynolds number water counts as at rest. */
    public static final double LOWEST_REYNOLDS = 1e-100;
    /** Highest e/D of the Colebrook-White formula. */
    public static final double ROUGHEST = 0.05;
    /** Highest Reynolds number accepted; far beyond any water pipe. */
    public static final double HIGHEST_REYNOLDS = 1e20;

    private static final double LOG10_2_TWICE = 2 * Math.log10(2);
    private static final double TWO_OVER_LN10 = 2 / Math.log(10);
    /** Lies amid 1/sqrt(f) of all pipes (3.5 to 12), so that one substitution leaves a small error. */
    private static final double FIRST_GUESS = 6.5;

    private PipeFriction() {
    }

    /**
     * The friction factor over all flows: 64/Re to Re 2000, Colebrook-White from Re 4000, and between them the cubic
     * that meets both in value and slope, so that the head lost rises steadily with flow and a slow gravity run has one
     * root. Between 2000 and 4000 real pipes scatter: {@link FlowRegime#TRANSITIONAL} marks it, no accuracy is claimed.
     *
     * @param reynolds          1e-100 to 1e20
     * @param relativeRoughness e/D, 0 to 0.05
     * @throws IllegalArgumentException outside those ranges
     */
    public static double frictionFactor(double reynolds, double relativeRoughness) {
        requireReynolds(reynolds, LOWEST_REYNOLDS);
        requireRoughness(relativeRoughness);
        return uncheckedFrictionFactor(reynolds, relativeRoughness / 3.7);
    }

    /** {@link #frictionFactor} for arguments already checked; {@code a} is (e/D) / 3.7. */
    static double uncheckedFrictionFactor(double reynolds, double a) {
        if (reynolds >= TURBULENT_FROM) {
            double x = inverseRoot(a, 2.51 / reynolds);
            return 1 / (x * x);
        }
        if (reynolds <= LAMINAR_UP_TO) {
            return 64 / reynolds;
        }
        return transitional(reynolds, a);
    }

    /**
     * Laminar flow in a round pipe (Hagen-Poiseuille): f = 64 / Re.
     *
     * @param reynolds 1e-100 to 2000
     */
    public static double laminar(double reynolds) {
        Require.within("Reynolds number of laminar flow", reynolds, LOWEST_REYNOLDS, LAMINAR_UP_TO, "");
        return 64 / reynolds;
    }

    /**
     * Colebrook-White, 1/sqrt(f) = -2 log10(e/(3.7 D) + 2.51/(Re sqrt(f))), solved to the last digits of a double.
     * Source: Colebrook, Turbulent flow in pipes, J. Inst. Civ. Eng. 11, 1939 (from memory).
     *
     * <p>With x = 1/sqrt(f) the equation is F(x) = x + c ln(a + b x) = 0, a = e/(3.7 D), b = 2.51/Re, c = 2/ln 10.
     * A rough logarithm of a fixed guess, one step of Newton and one of Householder's third-order method (fourth-order
     * convergence) take two logarithms in all; every derivative follows from u = b/(a + b x).
     *
     * @param reynolds          2000 to 1e20; below 4000 the formula is not claimed to hold
     * @param relativeRoughness e/D, 0 to 0.05
     */
    public static double colebrookWhite(double reynolds, double relativeRoughness) {
        requireReynolds(reynolds, LAMINAR_UP_TO);
        requireRoughness(relativeRoughness);
        double x = inverseRoot(relativeRoughness / 3.7, 2.51 / reynolds);
        return 1 / (x * x);
    }

    /**
     * Swamee-Jain, f = 0.25 / [log10(e/(3.7 D) + 5.74/Re^0.9)]^2, an explicit approximation of Colebrook-White,
     * usually quoted as good to 1 % for Re 5e3 to 1e8 and e/D 1e-6 to 1e-2; at the corner Re 5e3, e/D 1e-2 it is 2.9 %
     * off. Source: Swamee and Jain, J. Hydraul. Div. ASCE 102, 1976 (from
     * memory).
     *
     * @param reynolds          2000 to 1e20
     * @param relativeRoughness e/D, 0 to 0.05
     */
    public static double swameeJain(double reynolds, double relativeRoughness) {
        requireReynolds(reynolds, LAMINAR_UP_TO);
        requireRoughness(relativeRoughness);
        double log = Math.log10(relativeRoughness / 3.7 + 5.74 / Math.pow(reynolds, 0.9));
        return 0.25 / (log * log);
    }

    /**
     * Haaland, 1/sqrt(f) = -1.8 log10[(e/D/3.7)^1.11 + 6.9/Re], an explicit approximation of Colebrook-White good to
     * 1.5 % over Re 5e3 to 1e8 and e/D 1e-6 to 1e-2. Source: Haaland, J. Fluids Eng. 105, 1983 (from memory).
     *
     * @param reynolds          2000 to 1e20
     * @param relativeRoughness e/D, 0 to 0.05
     */
    public static double haaland(double reynolds, double relativeRoughness) {
        requireReynolds(reynolds, LAMINAR_UP_TO);
        requireRoughness(relativeRoughness);
        double x = -1.8 * Math.log10(Math.pow(relativeRoughness / 3.7, 1.11) + 6.9 / reynolds);
        return 1 / (x * x);
    }

    /**
     * Fully rough flow, where the Reynolds number no longer matters: 1/sqrt(f) = -2 log10(e/(3.7 D)), the limit of
     * Colebrook-White. It is the fT that fitting losses are tabled against.
     *
     * @param relativeRoughness e/D, 1e-7 to 0.05
     */
    public static double fullyRough(double relativeRoughness) {
        Require.within("relative roughness (roughness over bore)", relativeRoughness, 1e-7, ROUGHEST, "");
        double x = -2 * Math.log10(relativeRoughness / 3.7);
        return 1 / (x * x);
    }

    /**
     * x = 1/sqrt(f) from F(x) = x + c ln(a + b x) = 0. The first guess needs no logarithm and is within 10 %; Newton's
     * step brings it within 0.1 %, Householder's to the last digits.
     */
    private static double inverseRoot(double a, double b) {
        double x = -LOG10_2_TWICE * roughLog2(a + b * FIRST_GUESS);
        double s = a + b * x;
        x -= s * (x + TWO_OVER_LN10 * Math.log(s)) / (s + TWO_OVER_LN10 * b);
        s = a + b * x;
        double u = b / s;
        double f = x + TWO_OVER_LN10 * Math.log(s);
        double first = 1 + TWO_OVER_LN10 * u;
        double second = -TWO_OVER_LN10 * u * u;
        double third = -2 * u * second;
        return x - f * (first * first - 0.5 * f * second)
                / (first * (first * first - f * second) + f * f * third / 6);
    }

    /**
     * The binary logarithm of a normal positive number within 0.05: its exponent, and its fraction read as a straight
     * line (Mitchell, Computer multiplication and division using binary logarithms, IRE Trans. EC-11, 1962).
     */
    private static double roughLog2(double value) {
        return Double.doubleToRawLongBits(value) * 0x1p-52 - 1022.957;
    }

    /** Cubic Hermite join between Re 2000 and 4000 in value and slope. */
    private static double transitional(double reynolds, double a) {
        double b = 2.51 / TURBULENT_FROM;
        double x = inverseRoot(a, b);
        double u = b / (a + b * x);
        double slopeOfX = TWO_OVER_LN10 * u * x / (TURBULENT_FROM * (1 + TWO_OVER_LN10 * u));
        double span = TURBULENT_FROM - LAMINAR_UP_TO;
        double f0 = 64 / LAMINAR_UP_TO;
        double f1 = 1 / (x * x);
        double m0 = -f0 / LAMINAR_UP_TO * span;
        double m1 = -2 * f1 / x * slopeOfX * span;
        double t = (reynolds - LAMINAR_UP_TO) / span;
        double r = 1 - t;
        return f0 * (1 + 2 * t) * r * r + m0 * t * r * r + f1 * t * t * (3 - 2 * t) - m1 * t * t * r;
    }

    private static void requireReynolds(double reynolds, double lowest) {
        Require.within("Reynolds number", reynolds, lowest, HIGHEST_REYNOLDS, "");
    }

    private static void requireRoughness(double relativeRoughness) {
        Require.within("relative roughness (roughness over bore)", relativeRoughness, 0, ROUGHEST, "");
    }
}
