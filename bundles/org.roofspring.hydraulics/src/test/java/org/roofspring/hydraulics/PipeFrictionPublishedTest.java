package org.roofspring.hydraulics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PipeFrictionPublishedTest {
    /** Regression, from an independent program: Re, e/D, Colebrook-White, Swamee-Jain, Haaland. */
    @ParameterizedTest
    @CsvSource({
        "4e3, 0, 0.039907, 0.040551, 0.040423", "4e3, 1e-3, 0.040910, 0.041695, 0.041216",
        "4e3, 1e-2, 0.049082, 0.050614, 0.049236", "1e4, 0, 0.030883, 0.030972, 0.030886",
        "1e4, 1e-4, 0.031037, 0.031149, 0.030990", "1e4, 1e-3, 0.032382, 0.032665, 0.032175",
        "1e4, 1e-2, 0.043127, 0.044042, 0.043045", "1e5, 0, 0.017990, 0.017863, 0.017825",
        "1e5, 1e-5, 0.018044, 0.017924, 0.017860", "1e5, 1e-4, 0.018514, 0.018452, 0.018265",
        "1e5, 1e-3, 0.022175, 0.022342, 0.021966", "1e5, 1e-2, 0.038504, 0.038751, 0.038539",
        "1e5, 5e-2, 0.071781, 0.071996, 0.071940", "1e6, 0, 0.011645, 0.011606, 0.011587",
        "1e6, 1e-4, 0.013441, 0.013508, 0.013326", "1e6, 1e-3, 0.019943, 0.020029, 0.019941",
        "1e6, 1e-2, 0.037965, 0.038012, 0.038036", "1e7, 1e-5, 0.008996, 0.009059, 0.008958",
        "1e7, 1e-3, 0.019667, 0.019686, 0.019702"})
    void matchesAnIndependentProgram(double reynolds, double roughness, double colebrook, double swameeJain,
            double haaland) {
        assertEquals(colebrook, PipeFriction.colebrookWhite(reynolds, roughness), 6e-7);
        assertEquals(colebrook, PipeFriction.frictionFactor(reynolds, roughness), 6e-7);
        assertEquals(swameeJain, PipeFriction.swameeJain(reynolds, roughness), 6e-7);
        assertEquals(haaland, PipeFriction.haaland(reynolds, roughness), 6e-7);
    }

    /** Crane TP 410M, Example 7.1, as quoted by the documentation of the open library "fluids": smooth pipe. */
    @Test
    void craneSmoothPipe() {
        assertEquals(0.0179, PipeFriction.colebrookWhite(100_600, 0), 1e-4);
    }

    /** Hagen-Poiseuille, definition. */
    @Test
    void laminar() {
        assertEquals(0.064, PipeFriction.frictionFactor(1000, 0.01), 1e-16);
        assertEquals(0.032, PipeFriction.frictionFactor(2000, 0.05), 1e-16);
        assertEquals(64e100, PipeFriction.laminar(1e-100), 1e88);
    }

    /** The limit of Colebrook-White for an endless Reynolds number. */
    @Test
    void fullyRoughIsTheLimitOfColebrook() {
        for (double roughness : new double[] {1e-5, 1e-3, 0.05}) {
            assertEquals(PipeFriction.fullyRough(roughness), PipeFriction.colebrookWhite(1e20, roughness), 1e-13);
        }
    }

    @Test
    void regimesMeetAt2000And4000() {
        assertEquals(FlowRegime.AT_REST, FlowRegime.at(0));
        assertEquals(FlowRegime.LAMINAR, FlowRegime.at(2000));
        assertEquals(FlowRegime.TRANSITIONAL, FlowRegime.at(2000.001));
        assertEquals(FlowRegime.TRANSITIONAL, FlowRegime.at(3999.999));
        assertEquals(FlowRegime.TURBULENT, FlowRegime.at(4000));
    }

    @Test
    void refusesWhatTheFormulasDoNotHoldFor() {
        assertRefused("Reynolds number must be from", () -> PipeFriction.frictionFactor(0, 0));
        assertRefused("Reynolds number must be from 2000", () -> PipeFriction.colebrookWhite(1999, 0));
        assertRefused("Reynolds number must be from", () -> PipeFriction.haaland(Double.NaN, 0));
        assertRefused("relative roughness (roughness over bore) must be from 0 to 0.05, not 0.051",
                () -> PipeFriction.frictionFactor(1e5, 0.051));
        assertRefused("relative roughness", () -> PipeFriction.swameeJain(1e5, -1e-9));
        assertRefused("Reynolds number of laminar flow", () -> PipeFriction.laminar(2001));
    }

    private static void assertRefused(String begin, Runnable call) {
        IllegalArgumentException refused = assertThrows(IllegalArgumentException.class, call::run);
        assertTrue(refused.getMessage().startsWith(begin), refused.getMessage());
    }
}
