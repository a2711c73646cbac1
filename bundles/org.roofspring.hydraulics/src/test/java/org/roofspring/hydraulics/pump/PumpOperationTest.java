package org.roofspring.hydraulics.pump;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

class PumpOperationTest {
    @Example
    void timeToFill() {
        assertEquals(OptionalDouble.of(1000), PumpOperation.timeToFillS(1, 1e-3, 0));
        assertEquals(2000, PumpOperation.timeToFillS(1, 1e-3, 0.5e-3).getAsDouble(), 1e-9);
        assertEquals(OptionalDouble.empty(), PumpOperation.timeToFillS(1, 1e-3, 1e-3));
        assertEquals(1000, PumpOperation.runningTimeS(1, 1e-3), 1e-9);
    }

    /** By calculus: with Q = Q0 sqrt(1 - h/H), the time from 0 to x is 2 A H (1 - sqrt(1 - x/H)) / Q0. */
    @Example
    void timeToRiseWhileThePumpSlows() {
        double exact = 2 * 2.5 * 20 * (1 - Math.sqrt(1 - 3.0 / 20)) / 1e-3;
        assertEquals(exact, PumpOperation.timeToRiseS(2.5, 1, 4, level -> 1e-3 * Math.sqrt(1 - (level - 1) / 20)),
                1e-7 * exact);
        assertThrows(IllegalArgumentException.class, () -> PumpOperation.timeToRiseS(1, 0, 1, level -> 1 - level));
        assertThrows(IllegalArgumentException.class, () -> PumpOperation.timeToRiseS(1, 1, 0, level -> 1));
    }

    /** Independent: the level stepped second by second between two switches for many cycles. */
    @Property(tries = 30)
    void startsAgreeWithASimulation(@ForAll @Scale(3) @DoubleRange(min = 0.05, max = 0.95) double share) {
        double pump = 1e-3;
        double drawn = pump * share;
        double volume = 0.05;
        double level = volume;
        boolean running = false;
        int starts = 0;
        int seconds = 400_000;
        for (int i = 0; i < seconds; i++) {
            level += (running ? pump : 0) - drawn;
            if (!running && level <= 0) {
                running = true;
                starts++;
            } else if (running && level >= volume) {
                running = false;
            }
        }
        assertEquals(starts / (double) seconds, PumpOperation.startsPerS(pump, drawn, volume),
                0.06 * PumpOperation.mostStartsPerS(pump, volume));
    }

    @Property
    void noDrawOffStartsItMoreOftenThanHalfTheFlow(@ForAll @Scale(6) @DoubleRange(min = 0, max = 1) double share) {
        double most = PumpOperation.mostStartsPerS(1e-3, 0.05);
        assertTrue(PumpOperation.startsPerS(1e-3, share * 1e-3, 0.05) <= most * (1 + 1e-12));
        assertEquals(most, PumpOperation.startsPerS(1e-3, 0.5e-3, 0.05), 1e-15);
        assertEquals(0.05, PumpOperation.leastSwitchVolumeM3(1e-3, most), 1e-15);
        assertEquals(0, PumpOperation.startsPerS(1e-3, 2e-3, 0.05));
    }

    @Example
    void energySunAndGenerator() {
        assertEquals(3.6e6, PumpOperation.energyJ(10, 3.6e5));
        assertEquals(1000 / 0.7 / 5, PumpOperation.solarPanelPowerW(3.6e6, 5 * 3600, 0.7), 1e-9);
        assertEquals(2400, PumpOperation.generatorPowerW(800, 3));
        assertThrows(IllegalArgumentException.class, () -> PumpOperation.solarPanelPowerW(1, 0, 0.7));
        assertThrows(IllegalArgumentException.class, () -> PumpOperation.generatorPowerW(Double.NaN, 3));
        assertThrows(IllegalArgumentException.class, () -> PumpOperation.energyJ(-1, 3));
    }
}
