package org.roofspring.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

@PropertyDefaults(tries = 300, edgeCases = EdgeCasesMode.NONE)
class FirstFlushPropertyTest {

    @Property
    void nothingIsLostOrMade(@ForAll double @Size(60) [] anyRunoff,
            @ForAll @DoubleRange(min = 0, max = 5) double volume, @ForAll @IntRange(min = 0, max = 9) int reset) {
        double[] runoff = Arrays.stream(anyRunoff).map(value -> Math.abs(value % 10)).toArray();
        FirstFlush.Split split = new FirstFlush(volume, reset).split(runoff);
        for (int day = 0; day < runoff.length; day++) {
            assertEquals(runoff[day], split.inflowM3()[day] + split.divertedM3()[day], 1e-9);
            assertTrue(split.divertedM3()[day] <= volume + 1e-9);
        }
    }
}
