package org.roofspring.cli.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import org.roofspring.cli.tests.Asked.Answer;

class DutyTest {
    /** Static head 10 m without any loss: the duty point is the measured point at 1 L/s. */
    private static final String FLAT = " --static-head 10m --bore 100mm --length 0m";

    @TempDir
    Path folder;
    private Path parabola;
    private Path measured;

    @BeforeEach
    void writePumps() throws IOException {
        StringBuilder text = new StringBuilder("flow[L/min],head[m]\n");
        for (int q = 0; q <= 100; q += 5) {
            text.append(q).append(',').append(20 * (1 - q * q / 1e4)).append('\n');
        }
        parabola = Files.writeString(folder.resolve("parabola.csv"), text);
        measured = Files.writeString(folder.resolve("measured.csv"), """
                flow[L/s],head[m],efficiency[%],npshr[m]
                0,12,0,1.0
                0.5,11.5,35,1.2
                1,10,50,1.5
                1.5,7,45,2.4
                """);
    }

    /**
     * Pump 20 (1 - (Q/100)^2) on the system 5 + 0.002 Q^2 (m, L/min): a problem in a collection of exercises, whose
     * printed answer is wrong; the exact roots are computed. The system is given as fittings alone: K v^2 / 2g.
     * The curve through evenly spaced points of a parabola is that parabola, so no tolerance is due to interpolation.
     */
    @ParameterizedTest
    @CsvSource({"1,1,61.237244,12.5", "2,1,76.376262,16.666667", "1,2,77.459667,17.0"})
    void quadraticPumpAndSystem(int series, int parallel, double flowLPerMin, double headM) {
        Answer duty = Asked.answer("duty --pump " + parabola + " --static-head 5m --bore 50mm --length 0m --fittings "
                + fittingsFor(0.002) + " --series " + series + " --parallel " + parallel);
        double flow = duty.number("flow", "m3/s") * 60_000;
        assertEquals(flowLPerMin, flow, 1e-6);
        assertEquals(headM, duty.number("head", "m"), 1e-6);
        assertEquals(5 + 0.002 * flow * flow, duty.number("head", "m"), 1e-9, "the point lies on the system curve");
    }

    /** By the affinity laws the pump is 0.81 x 20 - 20 (Q/100)^2 at nine tenths of its speed. */
    @Test
    void slowerPump() {
        Answer duty = Asked.answer("duty --pump " + parabola + " --static-head 5m --bore 50mm --length 0m --fittings "
                + fittingsFor(0.002) + " --speed 0.9");
        assertEquals(Math.sqrt((0.81 * 20 - 5) / 0.004), duty.number("flow", "m3/s") * 60_000, 1e-6);
    }

    /** K of the 50 mm bore that takes {@code coefficient} m for each (L/min)^2. */
    private static double fittingsFor(double coefficient) {
        double areaM2 = Math.PI / 4 * 0.05 * 0.05;
        return coefficient * 60_000 * 60_000 * 2 * 9.80665 * areaM2 * areaM2;
    }

    /** 1 L/s lifted 10 m at 998.2 kg/m3 and 9.80665 m/s2: 97.89 W (computed from the definition). */
    @Test
    void powerAndEnergy() {
        Answer duty = Asked.answer("duty --pump " + measured + FLAT);
        assertEquals(0.001, duty.number("flow", "m3/s"), 1e-9);
        assertEquals(10, duty.number("head", "m"), 1e-9);
        assertEquals(97.89, duty.number("hydraulicPower", "W"), 0.005);
        assertEquals(0.5, duty.number("efficiency"), 1e-9);
        assertEquals(2 * 97.89, duty.number("shaftPower", "W"), 0.01);
        assertEquals(1.5, duty.number("npshRequired", "m"), 1e-6);
        assertEquals(2 * 97.89 / 3.6, duty.number("specificEnergy", "Wh/m3"), 0.003, "for each m3 at the shaft");
        assertEquals(2 * 97.89 / 3.6 / 0.8,
                Asked.answer("duty --pump " + measured + FLAT + " --motor-efficiency 80%")
                        .number("specificEnergy", "Wh/m3"), 0.004, "at the motor");
    }

    @Test
    void measuredInputPowerGoesBeforeEfficiency() throws IOException {
        Path pump = Files.writeString(folder.resolve("power.csv"),
                "flow[L/s],head[m],power[W]\n0,12,150\n1,10,300\n1.5,7,320\n");
        Answer duty = Asked.answer("duty --pump " + pump + FLAT);
        assertEquals(300 / 3.6, duty.number("specificEnergy", "Wh/m3"), 1e-6);
    }

    @Test
    void whatThePumpFileDoesNotSayIsNotMadeUp() {
        Answer duty = Asked.answer("duty --pump " + parabola + FLAT);
        for (String figure : new String[] {"efficiency", "shaftPower", "npshRequired", "specificEnergy"}) {
            assertFalse(duty.has(figure), figure);
        }
        assertTrue(duty.number("npshAvailable", "m") > 0);
    }

    /** (p - pv) / (rho g) by US Standard Atmosphere 1976 and IAPWS, geometric altitude (computed). */
    @ParameterizedTest
    @CsvSource({"0,20,10.112", "1000,20,8.942", "2000,20,7.882", "4000,20,6.060", "0,35,9.817", "2500,35,7.085"})
    void suctionByAltitudeAndTemperature(double altitudeM, double temperatureC, double headM) {
        Answer duty = Asked.answer("duty --pump " + measured + FLAT + " --altitude " + altitudeM + "m --temperature "
                + temperatureC + "degC");
        assertEquals(headM, duty.number("npshAvailable", "m"), 0.001);
    }

    /** The lift bears on suction only; the suction run's friction on both. */
    @Test
    void suctionLiftAndRun() {
        Answer flooded = Asked.answer("duty --pump " + measured + FLAT + " --suction-lift -2m");
        Answer lifted = Asked.answer("duty --pump " + measured + FLAT + " --suction-lift 3m");
        assertEquals(flooded.number("flow", "m3/s"), lifted.number("flow", "m3/s"));
        assertEquals(5, flooded.number("npshAvailable", "m") - lifted.number("npshAvailable", "m"), 1e-9);
        Answer run = Asked.answer("duty --pump " + measured + FLAT
                + " --suction-lift 3m --suction-bore 40mm --suction-length 6m --suction-fittings 3");
        double loss = Asked.answer("pipe --flow " + run.number("flow", "m3/s") + "m3/s --bore 40mm --length 6m"
                + " --fittings 3").number("totalLoss", "m");
        assertEquals(10 + loss, run.number("head", "m"), 1e-6);
        assertEquals(lifted.number("npshAvailable", "m") - loss, run.number("npshAvailable", "m"), 1e-6);
    }

    @Test
    void noDutyPointHasNoAnswer() {
        String line = Asked.of("duty --pump " + measured + " --static-head 12.5m --bore 50mm --length 10m").noAnswer();
        assertTrue(line.contains("no duty point"), line);
    }
}
