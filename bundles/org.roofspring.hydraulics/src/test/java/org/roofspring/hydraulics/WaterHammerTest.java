package org.roofspring.hydraulics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;

import org.junit.jupiter.api.Test;

class WaterHammerTest {
    private static final WaterProperties WATER = WaterProperties.at(20);
    private static final PipeSize PE = PipeCatalogue.sizes(PipeCatalogue.PE_100).get(4);

    /** Textbook case: in a rigid pipe the wave travels as sound in water, about 1480 m/s at 20 degC. */
    @Test
    void waveSpeedInAStiffPipeIsThatOfSound() {
        PipeSize stiff = new PipeSize("stiff", new PipeMaterial("stiff", 0, 0, 1e12, 0.3, 140, "invented"), 0.05, 0.02,
                OptionalDouble.empty(), "invented");
        assertEquals(1482, WaterHammer.waveSpeedMPerS(stiff, WATER), 2);
        assertEquals(0.0408 / 0.0046, PE.boreM() / PE.wallM(), 1e-9);
        double plain = Math.sqrt(2.19e9 / WATER.densityKgPerM3())
                / Math.sqrt(1 + 2.19e9 / 1.1e9 * 0.0408 / 0.0046 * (1 - 0.45 * 0.45));
        assertEquals(plain, WaterHammer.waveSpeedMPerS(PE, WATER), 1e-9);
    }

    /**
     * Independent: the method of characteristics for a frictionless pipe between a reservoir and a valve whose outflow
     * is brought to nil evenly.
     */
    @Test
    void agreesWithTheMethodOfCharacteristics() {
        double velocity = 1.5;
        double length = 80;
        for (double stopInReturns : new double[] {0.2, 1.0, 2.0, 3.5, 8}) {
            double stop = stopInReturns * 2 * length / WaterHammer.waveSpeedMPerS(PE, WATER);
            WaterHammer surge = WaterHammer.of(PE, length, velocity, stop, WATER);
            double highest = characteristics(surge.waveSpeedMPerS(), length, velocity, stop);
            assertEquals(highest, surge.surgePressurePa() / WATER.densityKgPerM3() / 9.80665, 0.01 * highest,
                    stopInReturns + " returns");
            assertEquals(stopInReturns <= 1, surge.quick());
        }
    }

    private static double characteristics(double wave, double length, double start, double stop) {
        int reaches = 200;
        double[] head = new double[reaches + 1];
        double[] velocity = new double[reaches + 1];
        java.util.Arrays.fill(velocity, start);
        double step = length / reaches / wave;
        double impedance = wave / 9.80665;
        double highest = 0;
        for (int n = 1; n * step < stop + 6 * length / wave; n++) {
            double[] nextHead = new double[reaches + 1];
            double[] nextVelocity = new double[reaches + 1];
            for (int i = 1; i < reaches; i++) {
                double plus = head[i - 1] + impedance * velocity[i - 1];
                double minus = head[i + 1] - impedance * velocity[i + 1];
                nextHead[i] = (plus + minus) / 2;
                nextVelocity[i] = (plus - minus) / (2 * impedance);
            }
            nextVelocity[0] = velocity[1] - head[1] / impedance;
            nextVelocity[reaches] = start * Math.max(0, 1 - n * step / stop);
            nextHead[reaches] = head[reaches - 1] + impedance * (velocity[reaches - 1] - nextVelocity[reaches]);
            highest = Math.max(highest, nextHead[reaches]);
            head = nextHead;
            velocity = nextVelocity;
        }
        return highest;
    }

    @Test
    void surgeIsContinuousWhereTheStopTakesOneReturn() {
        double returns = WaterHammer.of(PE, 80, 1, 0, WATER).returnTimeS();
        WaterHammer quick = WaterHammer.of(PE, 80, 1, returns, WATER);
        WaterHammer slow = WaterHammer.of(PE, 80, 1, Math.nextUp(returns), WATER);
        assertTrue(quick.quick());
        assertFalse(slow.quick());
        assertEquals(quick.surgePressurePa(), slow.surgePressurePa(), 1e-6);
    }

    @Test
    void refusesImpossibleInput() {
        assertThrows(IllegalArgumentException.class, () -> WaterHammer.of(PE, 0, 1, 1, WATER));
        assertThrows(IllegalArgumentException.class, () -> WaterHammer.of(PE, 1, -1, 1, WATER));
        assertThrows(IllegalArgumentException.class, () -> WaterHammer.of(PE, 1, 1, Double.NaN, WATER));
        assertThrows(IllegalArgumentException.class, () -> WaterHammer.of(null, 1, 1, 1, WATER));
    }
}
