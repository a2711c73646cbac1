package org.roofspring.hydraulics.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.DoubleUnaryOperator;

import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

class RootsPropertyTest {
    private static double root(DoubleUnaryOperator f, double a, double b) {
        return Roots.bracketed(f, a, f.applyAsDouble(a), b, f.applyAsDouble(b));
    }

    /** Against an independent solver (Hipparchus, inverse polynomial Brent) and plain bisection. */
    @Property
    void agreesWithOtherSolvers(@ForAll @Scale(9) @DoubleRange(min = 0.01, max = 0.99) double root,
            @ForAll @Scale(3) @DoubleRange(min = 0.3, max = 6) double power) {
        double level = Math.pow(root, power);
        DoubleUnaryOperator f = x -> Math.pow(x, power) - level;
        double found = root(f, 0, 1);
        assertEquals(new BracketingNthOrderBrentSolver(1e-16, 1e-16, 1e-300, 5).solve(500, f::applyAsDouble, 0, 1),
                found, 1.1e-14);
        double low = 0;
        double high = 1;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (f.applyAsDouble(middle) > 0) {
                high = middle;
            } else {
                low = middle;
            }
        }
        assertEquals(low, found, 1.1e-14);
    }

    @Example
    void worksInBoundedTimeOnHardFunctions() {
        for (DoubleUnaryOperator f : new DoubleUnaryOperator[] {x -> x < 0.3 ? -1 : 1e-300,
            x -> Math.cbrt(x - 0.7), x -> Math.pow(x - 0.5, 9), x -> x - 1e-12}) {
            AtomicInteger calls = new AtomicInteger();
            double found = root(x -> {
                calls.incrementAndGet();
                return f.applyAsDouble(x);
            }, 0, 1);
            assertTrue(found >= 0 && found <= 1);
            assertTrue(calls.get() < 160, calls + " calls");
        }
        assertEquals(0.3, root(x -> x < 0.3 ? -1 : 1, 0, 1), 1e-15);
    }

    @Example
    void takesAnEndThatIsARootAndRefusesWhatBracketsNone() {
        assertEquals(0, root(x -> x, 0, 1));
        assertEquals(1, root(x -> x - 1, 0, 1));
        assertThrows(IllegalArgumentException.class, () -> root(x -> x + 1, 0, 1));
        assertThrows(IllegalArgumentException.class, () -> root(x -> Double.NaN, 0, 1));
        assertThrows(IllegalArgumentException.class, () -> root(x -> x == 0 ? -1 : x == 1 ? 1 : Double.NaN, 0, 1));
    }
}
