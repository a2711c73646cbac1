package org.roofspring.hydraulics.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.hipparchus.analysis.interpolation.HermiteInterpolator;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.constraints.Size;

class MonotoneCubicPropertyTest {
    @Property
    void staysBetweenNeighboursAndMonotoneThere(
            @ForAll @Size(6) double[] steps, @ForAll @Size(7) double[] heights) {
        double[] x = new double[7];
        double[] y = new double[7];
        for (int i = 0; i < 7; i++) {
            x[i] = i == 0 ? 0 : x[i - 1] + 0.01 + Math.abs(steps[i - 1] % 10);
            y[i] = heights[i] % 50;
        }
        MonotoneCubic curve = new MonotoneCubic(x, y);
        for (int i = 0; i < 6; i++) {
            double sign = Math.signum(y[i + 1] - y[i]);
            double before = y[i];
            for (int k = 1; k <= 20; k++) {
                double value = curve.value(Math.min(x[i + 1], x[i] + (x[i + 1] - x[i]) * k / 20));
                assertTrue(sign * (value - before) >= -1e-12, "a wiggle after point " + i);
                before = value;
            }
            assertEquals(y[i + 1], before, 1e-12);
        }
    }

    /** The usual pump curve, a falling parabola, is met between the points, however they are spaced. */
    @Property
    void meetsAFallingParabola(@ForAll @Scale(6) @DoubleRange(min = 0.1, max = 5) double first,
            @ForAll @Scale(6) @DoubleRange(min = 0.1, max = 5) double second,
            @ForAll @Scale(6) @DoubleRange(min = 0.1, max = 5) double third,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 1) double share) {
        double[] x = {0, first, first + second, first + second + third};
        double[] y = new double[4];
        for (int i = 0; i < 4; i++) {
            y[i] = 40 - 0.3 * x[i] - 0.7 * x[i] * x[i];
        }
        MonotoneCubic curve = new MonotoneCubic(x, y);
        double at = share * x[3];
        assertEquals(40 - 0.3 * at - 0.7 * at * at, curve.value(at), 1e-12 * 40);
    }

    /** Independent evaluation of one piece: Hermite interpolation by divided differences (Hipparchus). */
    @Example
    void evaluatesLikeAHermiteInterpolator() {
        MonotoneCubic curve = new MonotoneCubic(new double[] {0, 1, 3, 4}, new double[] {10, 9, 5, 0});
        double slopeAt1 = -(2 * 1 + 1 * 2) / 3.0;
        double slopeAt3 = -(1 * 2 + 2 * 5) / 3.0;
        HermiteInterpolator hermite = new HermiteInterpolator();
        hermite.addSamplePoint(1, new double[] {9}, new double[] {slopeAt1});
        hermite.addSamplePoint(3, new double[] {5}, new double[] {slopeAt3});
        for (double at = 1; at <= 3; at += 0.125) {
            assertEquals(hermite.value(at)[0], curve.value(at), 1e-14);
        }
    }

    @Example
    void isFlatAtAPeakOfTheData() {
        MonotoneCubic curve = new MonotoneCubic(new double[] {0, 1, 2, 3}, new double[] {0, 5, 8, 1});
        assertEquals(2, curve.peak());
        assertEquals(8, curve.value(2), 0);
        assertTrue(curve.value(1.99) < 8 && curve.value(2.01) < 8);
    }

    @Example
    void isNotKnownOutsideItsPoints() {
        MonotoneCubic curve = new MonotoneCubic(new double[] {1, 2}, new double[] {3, 5});
        assertEquals(4, curve.value(1.5), 1e-15);
        for (double at : new double[] {0.999, 2.001, Double.NaN}) {
            assertThrows(IllegalArgumentException.class, () -> curve.value(at));
        }
        assertThrows(IllegalArgumentException.class, () -> new MonotoneCubic(new double[] {1}, new double[] {1}));
        assertThrows(IllegalArgumentException.class, () -> new MonotoneCubic(new double[] {1, 1}, new double[] {1, 2}));
        assertThrows(IllegalArgumentException.class, () -> new MonotoneCubic(new double[] {1, 2}, new double[] {1}));
    }
}
