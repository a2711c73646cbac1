package org.roofspring.storage;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class FirstFlushTest {

    private static final double[] RUNOFF = {0.3, 0.3, 0, 0.3, 0, 0, 0.3, 0.3};

    @Test
    void chamberFillsOnceAndNeedsDryDaysToEmpty() {
        FirstFlush.Split split = new FirstFlush(0.5, 2).split(RUNOFF);
        assertArrayEquals(new double[] {0.3, 0.2, 0, 0, 0, 0, 0.3, 0.2}, split.divertedM3());
        assertArrayEquals(new double[] {0, 0.1, 0, 0.3, 0, 0, 0, 0.1}, split.inflowM3());
    }

    @Test
    void chamberThatEmptiesOvernightTakesItsShareEachDay() {
        assertArrayEquals(new double[] {0.2, 0.2, 0, 0.2, 0, 0, 0.2, 0.2},
                new FirstFlush(0.2, 0).split(RUNOFF).divertedM3());
    }

    @Test
    void oneDryDayIsEnoughWhereOneIsAsked() {
        assertArrayEquals(new double[] {0.2, 0, 0, 0.2, 0, 0, 0.2, 0},
                new FirstFlush(0.2, 1).split(RUNOFF).divertedM3());
    }

    @Test
    void badNumbersAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> new FirstFlush(Double.NaN, 0));
        assertThrows(IllegalArgumentException.class, () -> new FirstFlush(1, -1));
        assertThrows(IllegalArgumentException.class, () -> new FirstFlush(1, 1).split(new double[] {-1}));
    }
}
