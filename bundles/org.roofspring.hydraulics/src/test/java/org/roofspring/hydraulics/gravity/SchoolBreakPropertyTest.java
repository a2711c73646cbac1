package org.roofspring.hydraulics.gravity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.OptionalInt;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

class SchoolBreakPropertyTest {
    /** Independent: the yard stepped through in ticks of a tenth of a second. */
    @Property(tries = 60)
    void agreesWithAClockedSimulation(@ForAll @IntRange(min = 1, max = 200) int pupils,
            @ForAll @IntRange(min = 1, max = 12) int taps, @ForAll @IntRange(min = 0, max = 400) int gapTicks,
            @ForAll @IntRange(min = 1, max = 300) int serviceTicks) {
        int gap = Math.min(gapTicks, pupils == 1 ? 0 : 9000 / (pupils - 1));
        SchoolBreak school = new SchoolBreak(pupils, 900, gap * (pupils - 1) / 10.0, serviceTicks / 10.0 * 1e-4, 1e-4,
                0);
        ArrayDeque<Integer> queue = new ArrayDeque<>();
        int[] busyUntil = new int[taps];
        int served = 0;
        int longestQueue = 0;
        int longestWait = 0;
        int come = 0;
        int begun = 0;
        for (int tick = 0; begun < pupils; tick++) {
            while (come < pupils && come * gap == tick) {
                queue.add(tick);
                come++;
            }
            for (int tap = 0; tap < taps; tap++) {
                if (!queue.isEmpty() && busyUntil[tap] <= tick) {
                    longestWait = Math.max(longestWait, tick - queue.remove());
                    busyUntil[tap] = tick + serviceTicks;
                    begun++;
                    served += busyUntil[tap] <= 9000 ? 1 : 0;
                }
            }
            longestQueue = Math.max(longestQueue, queue.size());
        }
        SchoolBreak.Course course = school.course(taps);
        assertEquals(longestWait / 10.0, course.longestWaitS(), 1e-6);
        assertEquals(served, course.served());
        if (gap > 0) {
            assertTrue(Math.abs(longestQueue - course.longestQueue()) <= 1, "a tick decides who counts as waiting");
        } else {
            assertEquals(longestQueue, course.longestQueue());
        }
        assertTrue(Arrays.stream(busyUntil).max().getAsInt() > 0);
    }

    @Property
    void allAtOnceIsServedInRounds(@ForAll @IntRange(min = 1, max = 1000) int pupils,
            @ForAll @IntRange(min = 1, max = 40) int taps) {
        SchoolBreak school = new SchoolBreak(pupils, 900, 0, 0.3e-3, 0.1e-3, 4);
        SchoolBreak.Course course = school.course(taps);
        assertEquals(7, school.serviceS(), 1e-12);
        assertEquals(Math.min(pupils, taps * 128), course.served());
        assertEquals(Math.max(0, pupils - taps), course.longestQueue());
        assertEquals((pupils - 1) / taps * 7, course.longestWaitS(), 1e-9);
        assertEquals(OptionalInt.of((pupils + 127) / 128), school.tapsNeeded());
    }

    @Property
    void oneMoreTapNeverServesFewer(@ForAll @IntRange(min = 1, max = 500) int pupils,
            @ForAll @IntRange(min = 1, max = 30) int taps, @ForAll @IntRange(min = 0, max = 600) int arrivalS) {
        SchoolBreak school = new SchoolBreak(pupils, 600, arrivalS, 0.5e-3, 0.1e-3, 3);
        assertTrue(school.course(taps + 1).served() >= school.course(taps).served());
        assertTrue(school.course(taps + 1).longestWaitS() <= school.course(taps).longestWaitS() + 1e-9);
    }

    @Example
    void latecomersCannotBeServed() {
        assertEquals(OptionalInt.empty(), new SchoolBreak(50, 600, 600, 0.3e-3, 0.1e-3, 4).tapsNeeded());
        assertEquals(OptionalInt.empty(), new SchoolBreak(1, 5, 0, 1e-3, 0.1e-3, 0).tapsNeeded());
    }

    @Example
    void refusesImpossibleBreaks() {
        assertThrows(IllegalArgumentException.class, () -> new SchoolBreak(0, 600, 0, 1e-3, 1e-4, 0));
        assertThrows(IllegalArgumentException.class, () -> new SchoolBreak(1, 600, 601, 1e-3, 1e-4, 0));
        assertThrows(IllegalArgumentException.class, () -> new SchoolBreak(1, 600, 0, 1e-3, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> new SchoolBreak(1, 600, 0, 1e-3, 1e-4, 0).course(0));
    }
}
