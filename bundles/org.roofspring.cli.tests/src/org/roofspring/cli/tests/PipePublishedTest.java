package org.roofspring.cli.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import org.roofspring.cli.tests.Asked.Answer;

class PipePublishedTest {
    private static final double BORE_MM = 100;

    private static Answer pipe(double flowLPerS, double roughnessMm) {
        return Asked.answer("pipe --flow " + flowLPerS + "L/s --bore " + BORE_MM + "mm --length 50m --roughness "
                + roughnessMm + "mm");
    }

    /** The flow at which the Reynolds number is this one: it is in proportion to the flow. */
    private static double flowLPerS(double reynolds) {
        return reynolds / pipe(1, 0).number("reynolds");
    }

    /**
     * Roots of the Colebrook-White equation (Colebrook 1939) by an independent script, six digits. Computed values, not
     * published ones; the equation is from memory.
     */
    @ParameterizedTest
    @CsvSource({"4e3,0,0.039907", "4e3,1e-3,0.040910", "4e3,1e-2,0.049082", "1e4,0,0.030883", "1e4,1e-4,0.031037",
        "1e4,1e-3,0.032382", "1e4,1e-2,0.043127", "1e5,0,0.017990", "1e5,1e-5,0.018044", "1e5,1e-4,0.018514",
        "1e5,1e-3,0.022175", "1e5,1e-2,0.038504", "1e5,5e-2,0.071781", "1e6,0,0.011645", "1e6,1e-4,0.013441",
        "1e6,1e-3,0.019943", "1e6,1e-2,0.037965", "1e7,1e-5,0.008996", "1e7,1e-3,0.019667"})
    void colebrook(double reynolds, double relativeRoughness, double factor) {
        Answer pipe = pipe(flowLPerS(reynolds), relativeRoughness * BORE_MM);
        assertEquals(reynolds, pipe.number("reynolds"), 1e-9 * reynolds);
        assertEquals(factor, pipe.number("frictionFactor"), 0.6e-6, "six digits are given");
    }

    /** Hagen-Poiseuille: f = 64 / Re. */
    @Test
    void laminar() {
        Answer pipe = pipe(flowLPerS(1600), 0.01);
        assertEquals(0.04, pipe.number("frictionFactor"), 1e-10);
    }

    /** IAPWS R12-08 and IAPWS-95 by an independent script (computed): nu in 1e-6 m2/s. */
    @ParameterizedTest
    @CsvSource({"5,1.51822", "10,1.30629", "20,1.00340", "30,0.80071", "40,0.65785"})
    void viscosityBehindTheReynoldsNumber(double temperatureC, double viscosity) {
        Answer pipe = Asked.answer("pipe --flow 1L/s --bore 40mm --length 1m --temperature " + temperatureC + "degC");
        double expected = pipe.number("velocity", "m/s") * 0.040 / (viscosity * 1e-6);
        assertEquals(expected, pipe.number("reynolds"), 3e-3 * expected);
    }

    /** Every figure follows from the ones before it by its definition. */
    @Test
    void lossesAddUp() {
        Answer pipe = Asked.answer("pipe --flow 1.2L/s --bore 41.8mm --length 60m --roughness 0.007mm --fittings 5.2"
                + " --temperature 15degC");
        double velocity = pipe.number("velocity", "m/s");
        assertEquals(1.2e-3 / (Math.PI / 4 * 0.0418 * 0.0418), velocity, 1e-12);
        double velocityHeadM = velocity * velocity / (2 * 9.80665);
        assertEquals(pipe.number("frictionFactor") * 60 / 0.0418 * velocityHeadM, pipe.number("frictionLoss", "m"),
                1e-12);
        assertEquals(5.2 * velocityHeadM, pipe.number("fittingLoss", "m"), 1e-12);
        assertEquals(pipe.number("frictionLoss", "m") + pipe.number("fittingLoss", "m"), pipe.number("totalLoss", "m"),
                1e-12);
    }

    @Test
    void defaultsAreThoseOfTheContract() {
        assertEquals(
                Asked.answer("pipe --flow 1L/s --bore 40mm --length 1m --roughness 0.0015mm --fittings 0"
                        + " --temperature 20degC"),
                Asked.answer("pipe --flow 1L/s --bore 40mm --length 1m"));
    }

    @Test
    void unitsOfTheSameDimensionGiveTheSameAnswer() {
        double metric = Asked.answer("pipe --flow 60L/min --bore 1in --length 10ft")
                .number("totalLoss", "m");
        assertEquals(metric, Asked.answer("pipe --flow 3.6m3/h --bore 2.54cm --length 3.048m").number("totalLoss", "m"),
                1e-12);
        assertTrue(metric > 0);
    }

    @Test
    void saysWhereNoFormulaHolds() {
        assertTrue(pipe(flowLPerS(3000), 0).cautionCodes().contains("pipe.transitional"));
        assertTrue(Asked.answer("pipe --flow 3L/s --bore 30mm --length 1m").cautionCodes().contains("pipe.fast"));
    }

    @Test
    void waterAtRestLosesNothing() {
        Answer pipe = pipe(0, 0.01);
        assertEquals(0, pipe.number("velocity", "m/s"));
        assertEquals(0, pipe.number("totalLoss", "m"));
    }
}
