package org.roofspring.drawing.chart;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;

import org.junit.jupiter.api.Test;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

class ThinningTest {
    @Test
    void aShortSeriesIsKeptWhole() {
        Thinning thinned = Thinning.of(10, new double[] { 3, 1, 2 }, 5);
        assertArrayEquals(new double[] { 10, 11, 12 }, thinned.x());
        assertArrayEquals(new double[] { 3, 1, 2 }, thinned.y());
    }

    @Property(tries = 300)
    void peaksAndTroughsOfEveryStretchSurvive(@ForAll @Size(min = 1, max = 400) double @DoubleRange(min = -5,
            max = 5) [] values,
            @ForAll @IntRange(min = 1, max = 20) int stretches) {
        Thinning thinned = Thinning.of(0, values, stretches);
        assertEquals(Arrays.stream(values).max().getAsDouble(), Arrays.stream(thinned.y()).max().getAsDouble());
        assertEquals(Arrays.stream(values).min().getAsDouble(), Arrays.stream(thinned.y()).min().getAsDouble());
        assertTrue(thinned.x().length <= 2 * stretches + 2);
        for (int i = 0; i < thinned.x().length; i++) {
            assertEquals(values[(int) thinned.x()[i]], thinned.y()[i]);
            assertTrue(i == 0 || thinned.x()[i] > thinned.x()[i - 1]);
        }
        assertEquals(values.length - 1, thinned.x()[thinned.x().length - 1]);
    }

    @Test
    void refusesNoStretch() {
        assertThrows(IllegalArgumentException.class, () -> Thinning.of(0, new double[3], 0));
    }
}
