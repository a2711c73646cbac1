package org.roofspring.hydraulics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AtmospherePublishedTest {
    /** US Standard Atmosphere 1976, table as quoted by the tests of the open library "fluids" (after a PDAS table). */
    @ParameterizedTest
    @CsvSource({"0, 101320", "2000, 79501", "4000, 61660"})
    void agreesWithTheStandard(double altitudeM, double pressurePa) {
        assertEquals(pressurePa, Atmosphere.pressurePa(altitudeM), altitudeM == 0 ? 5.01 : 0.6);
    }

    /**
     * Regression, from an independent program: pressure, and the head of water that it holds up over its vapour
     * pressure at 20 and 35 degC.
     */
    @ParameterizedTest
    @CsvSource({
        "0, 101325.0, 10.112, 9.817", "500, 95461.3, 9.513, 9.215", "1000, 89876.3, 8.942, 8.642",
        "1500, 84559.7, 8.399, 8.097", "2000, 79501.4, 7.882, 7.578", "2500, 74691.8, 7.391, 7.085",
        "3000, 70121.2, 6.924, 6.616", "4000, 61660.4, 6.060, 5.748"})
    void matchesAnIndependentProgram(double altitudeM, double pressurePa, double headAt20C, double headAt35C) {
        double pressure = Atmosphere.pressurePa(altitudeM);
        assertEquals(pressurePa, pressure, 0.06);
        assertEquals(headAt20C, headOver(pressure, 20), 6e-4);
        assertEquals(headAt35C, headOver(pressure, 35), 6e-4);
    }

    private static double headOver(double pressurePa, double temperatureC) {
        WaterProperties water = WaterProperties.at(temperatureC);
        return water.headM(pressurePa - water.vapourPressurePa());
    }

    /** KSB, Centrifugal Pump Lexicon, "geodetic suction lift", read: 10.33 m at sea level for water of 1000 kg/m3. */
    @Test
    void theoreticalLiftAtSeaLevel() {
        assertEquals(10.33, Atmosphere.pressurePa(0) / (1000 * PhysicalConstants.GRAVITY_M_PER_S2), 0.005);
    }

    @Test
    void refusesOtherAltitudes() {
        for (double wrong : new double[] {-500.5, 9001, Double.NaN, Double.NEGATIVE_INFINITY}) {
            assertThrows(IllegalArgumentException.class, () -> Atmosphere.pressurePa(wrong));
        }
    }
}
