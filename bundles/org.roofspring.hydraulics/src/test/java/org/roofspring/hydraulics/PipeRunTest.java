package org.roofspring.hydraulics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

class PipeRunTest {
    private static final double GPM = 3.785411784e-3 / 60;
    private static final double FT = 0.3048;
    private static final double INCH = 0.0254;
    private static final WaterProperties WATER = WaterProperties.at(20);

    /**
     * Crane TP 410, Example 7.15, as quoted by the documentation of the open library "fluids": 421 ft, and 15.2 hp at
     * 70 %, for 100 gpm at 70 degF through 500 ft of 3 in schedule 40 steel with 400 ft of lift (the library: 420.35 ft
     * and 15.15 hp). The coefficients of the fittings (lift check 27.0, gate 0.14, four elbows 2.16, exit 1.0) are from
     * memory.
     */
    @Example
    void cranePumpedLine() {
        PipeRun run = new PipeRun(3.068 * INCH, 500 * FT, 0.0018 * INCH, 27.0 + 0.14 + 2.16 + 1.0);
        WaterProperties water = WaterProperties.at((70 - 32) / 1.8);
        double headM = 400 * FT + run.lossAt(100 * GPM, water).totalLossM();
        assertEquals(421, headM / FT, 1);
        assertEquals(420.35, headM / FT, 0.5);
        double powerW = water.pressurePa(headM) * 100 * GPM / 0.7;
        assertEquals(15.2, powerW / 745.69987158227022, 0.06);
    }

    /**
     * Hazen-Williams, Water Engineering: Hydraulics, Distribution and Treatment, Example 5.36, read: it prints 2.07
     * (from the US form) and 2.17 m/km (from the SI form) for 0.0438 m3/s in 0.3048 m at C 100; the formula itself
     * gives 2.095, between the two.
     */
    @Example
    void hazenWilliamsExample() {
        HazenWilliams loss = HazenWilliams.of(0.0438, 0.3048, 1000, 100, 15);
        assertEquals(2.07, loss.headM(), 0.04 * 2.07);
        assertEquals(2.17, loss.headM(), 0.04 * 2.17);
        assertEquals(2.095, loss.headM(), 0.001, "regression");
        assertEquals(1, loss.outsideRange().size(), "0.6 m/s is slow");
    }

    @Example
    void hazenWilliamsSaysWhereItDoesNotHold() {
        assertEquals(3, HazenWilliams.of(1e-5, 0.02, 10, 140, 40).outsideRange().size());
        assertTrue(HazenWilliams.of(0.004, 0.06, 10, 140, 15).outsideRange().isEmpty());
    }

    /** Independent: each step of h = f L/D V^2/2g written out, f by plain substitution. */
    @Property
    void matchesAPlainCalculation(@ForAll @Scale(9) @DoubleRange(min = 0.005, max = 0.3) double boreM,
            @ForAll @Scale(9) @DoubleRange(min = 0.3, max = 4) double velocityMPerS,
            @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.0002) double roughnessM,
            @ForAll @DoubleRange(min = 0, max = 60) double temperatureC) {
        WaterProperties water = WaterProperties.at(temperatureC);
        double flow = velocityMPerS * Math.PI * boreM * boreM / 4;
        PipeLoss loss = new PipeRun(boreM, 37, roughnessM, 2.5).lossAt(flow, water);
        double reynolds = velocityMPerS * boreM * water.densityKgPerM3() / water.dynamicViscosityPaS();
        double velocityHead = velocityMPerS * velocityMPerS / 2 / 9.80665;
        assertEquals(velocityMPerS, loss.velocityMPerS(), 1e-14 * velocityMPerS);
        assertEquals(reynolds, loss.reynolds(), 1e-13 * reynolds);
        assertEquals(2.5 * velocityHead, loss.fittingLossM(), 1e-13);
        if (reynolds >= 4000) {
            double f = 0.02;
            for (int i = 0; i < 60; i++) {
                f = Math.pow(-2 * Math.log10(roughnessM / 3.7 / boreM + 2.51 / reynolds / Math.sqrt(f)), -2);
            }
            assertEquals(f, loss.frictionFactor(), 1e-13);
            assertEquals(f * 37 / boreM * velocityHead, loss.frictionLossM(), 1e-12 * loss.frictionLossM());
        }
        assertEquals(loss.totalLossM(), new PipeRun(boreM, 37, roughnessM, 2.5).carrying(water).headM(flow),
                1e-14 * loss.totalLossM());
    }

    @Property
    void widerPipeNeverRaisesTheHead(@ForAll @Scale(9) @DoubleRange(min = 0.01, max = 0.3) double boreM,
            @ForAll @Scale(12) @DoubleRange(min = 1e-7, max = 0.05) double flowM3PerS,
            @ForAll @Scale(9) @DoubleRange(min = 0, max = 0.0005) double roughnessM,
            @ForAll @Scale(6) @DoubleRange(min = 1.0001, max = 3) double ratio) {
        double narrow = new PipeRun(boreM, 100, roughnessM, 5).lossAt(flowM3PerS, WATER).totalLossM();
        double wide = new PipeRun(boreM * ratio, 100, roughnessM, 5).lossAt(flowM3PerS, WATER).totalLossM();
        assertTrue(wide < narrow, wide + " in the wider pipe, " + narrow + " in the narrower");
    }

    @Property
    void moreFlowTakesMoreHead(@ForAll @Scale(12) @DoubleRange(min = 1e-7, max = 0.01) double flowM3PerS,
            @ForAll @Scale(6) @DoubleRange(min = 1.001, max = 10) double ratio) {
        HeadLoss run = new PipeRun(0.04, 60, 1.5e-6, 0).carrying(WATER);
        assertTrue(run.headM(flowM3PerS * ratio) > run.headM(flowM3PerS));
    }

    @Example
    void waterAtRestTakesNoHead() {
        PipeRun run = new PipeRun(0.04, 60, 1.5e-6, 3);
        assertEquals(new PipeLoss(0, 0, FlowRegime.AT_REST, 0, 0, 0), run.lossAt(0, WATER));
        assertEquals(0, run.carrying(WATER).headM(Double.MIN_VALUE));
        assertEquals(0.04 * 0.04 * Math.PI / 4 * 60, run.volumeM3(), 1e-15);
    }

    @Example
    void lossesAddInSeriesAndShareTheFlowInParallel() {
        HeadLoss square = flow -> 3 * flow * flow;
        assertEquals(24, square.then(square).headM(2));
        assertEquals(3, square.inParallel(2).headM(2));
        assertEquals(12, square.then(HeadLoss.none()).headM(2));
    }

    @Example
    void refusesImpossiblePipes() {
        assertRefused("bore must be from 0.0001 m to 10 m, not 0 m", () -> new PipeRun(0, 1, 0, 0));
        assertRefused("bore must be from 0.0001 m to 10 m, not NaN m", () -> new PipeRun(Double.NaN, 1, 0, 0));
        assertRefused("length of pipe must be from 0 m to 1000000 m, not -1 m", () -> new PipeRun(0.1, -1, 0, 0));
        assertRefused("roughness of a pipe of 0.01 m bore must be from 0 m to 0.0005 m, not 0.001 m",
                () -> new PipeRun(0.01, 1, 0.001, 0));
        assertRefused("sum of fitting coefficients K must be from 0 to 1000000, not -0.1",
                () -> new PipeRun(0.01, 1, 0, -0.1));
        assertRefused("flow must be from 0 m3/s to 1000 m3/s, not -1 m3/s",
                () -> new PipeRun(0.01, 1, 0, 0).lossAt(-1, WATER));
        assertRefused("flow must be from 0 m3/s to 1000 m3/s, not NaN m3/s",
                () -> new PipeRun(0.01, 1, 0, 0).carrying(WATER).headM(Double.NaN));
        assertRefused("water must be given", () -> new PipeRun(0.01, 1, 0, 0).lossAt(1e-3, null));
    }

    private static void assertRefused(String message, Runnable call) {
        IllegalArgumentException refused = assertThrows(IllegalArgumentException.class, call::run);
        assertTrue(refused.getMessage().startsWith(message), refused.getMessage());
    }
}
