package org.roofspring.hydraulics.internal;

import java.util.function.DoubleUnaryOperator;

/** Bracketed root finding. */
public final class Roots {
    private static final double DIGITS = 1e-14;
    /** Ends the search for a root at zero, which has no digits [share of the first bracket]. */
    private static final double FINEST_SHARE = 1e-17;

    private Roots() {
    }

    /**
     * A root of a continuous function that changes sign between two ends, to fourteen digits.
     * Chandrupatla's method (Advances in Engineering Software 28, 1997): inverse quadratic interpolation where the
     * three last points allow it, else bisection, so that the bracket always shrinks and the work is bounded.
     *
     * @param f    function; its values at the ends are given, so they are not computed again
     * @param a    one end
     * @param fa   f(a)
     * @param b    other end
     * @param fb   f(b), of the other sign than fa or zero
     */
    public static double bracketed(DoubleUnaryOperator f, double a, double fa, double b, double fb) {
        if (fa == 0) {
            return a;
        }
        if (fb == 0) {
            return b;
        }
        if (fa > 0 == fb > 0 || Double.isNaN(fa) || Double.isNaN(fb)) {
            throw new IllegalArgumentException("the function must change sign between the ends, not " + fa + " and "
                    + fb);
        }
        double finest = FINEST_SHARE * Math.abs(b - a);
        double c = a;
        double fc = fa;
        double at = 0.5;
        while (true) {
            double x = a + at * (b - a);
            double fx = f.applyAsDouble(x);
            if (Double.isNaN(fx)) {
                throw new IllegalArgumentException("the function must be a number at " + x + ", not NaN");
            }
            if (fx > 0 == fa > 0) {
                c = a;
                fc = fa;
            } else {
                c = b;
                fc = fb;
                b = a;
                fb = fa;
            }
            a = x;
            fa = fx;
            double best = Math.abs(fb) < Math.abs(fa) ? b : a;
            double smallest = Math.max(DIGITS * Math.abs(best), finest) / Math.abs(b - a);
            if (fa == 0 || smallest > 0.5) {
                return best;
            }
            double xi = (a - b) / (c - b);
            double phi = (fa - fb) / (fc - fb);
            if (phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi) {
                at = fa / (fb - fa) * fc / (fb - fc) + (c - a) / (b - a) * fa / (fc - fa) * fb / (fc - fb);
            } else {
                at = 0.5;
            }
            at = Math.min(1 - smallest, Math.max(smallest, at));
        }
    }
}
