package org.roofspring.drainage.internal;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/** Roots of continuous functions of one variable. */
public final class Root {
    private static final double FINE = 1e-12;
    private static final double ABSOLUTE = 1e-16;
    private static final double FUNCTION_VALUE = 0;
    private static final int ORDER = 3;
    private static final int MOST_EVALUATIONS = 400;

    private Root() {
    }

    /** As {@link #between(double, double, double, DoubleUnaryOperator)}, to twelve digits. */
    public static double between(double low, double high, DoubleUnaryOperator function) {
        return between(low, high, FINE, function);
    }

    /**
     * The root of a function that changes sign between two bounds.
     *
     * @param relative accuracy that is enough
     * @throws org.hipparchus.exception.MathIllegalArgumentException when it does not change sign
     */
    public static double between(double low, double high, double relative, DoubleUnaryOperator function) {
        // a new solver each time, because the library's solvers keep state between calls
        return new BracketingNthOrderBrentSolver(relative, ABSOLUTE, FUNCTION_VALUE, ORDER)
                .solve(MOST_EVALUATIONS, function::applyAsDouble, low, high);
    }

    /** As {@link #above(double, double, double, DoubleUnaryOperator)}, to twelve digits. */
    public static double above(double low, double guess, DoubleUnaryOperator increasing) {
        return above(low, guess, FINE, increasing);
    }

    /** The root of an increasing function that is negative at {@code low}; {@code guess > low} is doubled as needed. */
    public static double above(double low, double guess, double relative, DoubleUnaryOperator increasing) {
        double start = low;
        double end = guess;
        while (increasing.applyAsDouble(end) < 0) {
            start = end;
            end = low + 2 * (end - low);
            if (!Double.isFinite(end)) {
                throw new IllegalStateException("no root above " + low);
            }
        }
        return between(start, end, relative, increasing);
    }
}
