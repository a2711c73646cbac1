package org.roofspring.hydraulics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WaterPropertiesPublishedTest {
    /**
     * Regression: IAPWS-95 density at 101.325 kPa, IAPWS R12-08 viscosity, IAPWS SR1-86(1992) saturation pressure, from
     * an independent program. The kernel uses other releases for density and viscosity, so this compares two
     * formulations. Columns: degC, kg/m3, uPa.s, 1e-6 m2/s, Pa, Pa by IAPWS-95.
     */
    @ParameterizedTest
    @CsvSource({
        "5, 999.967, 1518.17, 1.51822, 872.53, 872.58",
        "10, 999.703, 1305.90, 1.30629, 1228.11, 1228.20",
        "15, 999.103, 1137.57, 1.13859, 1705.68, 1705.79",
        "20, 998.207, 1001.60, 1.00340, 2339.19, 2339.32",
        "25, 997.048, 890.02, 0.89266, 3169.82, 3169.93",
        "30, 995.650, 797.22, 0.80071, 4246.92, 4246.97",
        "35, 994.033, 719.13, 0.72344, 5629.06, 5629.02",
        "40, 992.216, 652.73, 0.65785, 7385.11, 7384.94"})
    void agreesWithIapwsFormulations(double temperatureC, double density, double viscosity, double kinematic,
            double vapour, double vapourIapws95) {
        WaterProperties water = WaterProperties.at(temperatureC);
        assertEquals(density, water.densityKgPerM3(), 2e-6 * density);
        assertEquals(viscosity, water.dynamicViscosityPaS() * 1e6, 0.035, "within 0.03 uPa.s, and the rounding");
        assertEquals(kinematic, water.kinematicViscosityM2PerS() * 1e6, 6e-5 * kinematic);
        assertEquals(vapour, water.vapourPressurePa(), 0.006);
        assertEquals(vapourIapws95, water.vapourPressurePa(), 1e-3 * vapourIapws95);
    }

    /** IAPWS SR1-86(1992), from memory: triple point 611.657 Pa at 273.16 K. */
    @Test
    void meetsTheTriplePoint() {
        assertEquals(611.657, WaterProperties.at(0.01).vapourPressurePa(), 1e-3);
    }

    /** Water data at 1 atm (London South Bank University, Water Structure and Science, data tables), read there. */
    @ParameterizedTest
    @CsvSource({
        "0, 1.792, 999.8, 0.611", "10, 1.307, 999.7, 1.228", "20, 1.002, 998.2, 2.339", "30, 0.797, 995.7, 4.247",
        "40, 0.653, 992.2, 7.385"})
    void agreesWithAnIndependentTable(double temperatureC, double viscosityMPaS, double density, double vapourKPa) {
        WaterProperties water = WaterProperties.at(temperatureC);
        assertEquals(viscosityMPaS, water.dynamicViscosityPaS() * 1e3, 1e-3 * viscosityMPaS);
        assertEquals(density, water.densityKgPerM3(), 1e-4 * density);
        assertEquals(vapourKPa, water.vapourPressurePa() / 1e3, 1e-3 * vapourKPa);
    }

    /**
     * MWH's Water Treatment, Principles and Design, 3rd ed., App. C, Table C-1 (after Vennard and Street 1975), read.
     */
    @ParameterizedTest
    @CsvSource({
        "5, 1.519, 0.87", "10, 1.306, 1.23", "15, 1.139, 1.70", "20, 1.003, 2.34", "25, 0.893, 3.17",
        "30, 0.800, 4.24", "40, 0.658, 7.38"})
    void agreesWithATextbookTable(double temperatureC, double kinematic, double vapourKPa) {
        WaterProperties water = WaterProperties.at(temperatureC);
        assertEquals(kinematic, water.kinematicViscosityM2PerS() * 1e6, 5e-3 * kinematic);
        assertEquals(vapourKPa, water.vapourPressurePa() / 1e3, 0.005 + 5e-3 * vapourKPa);
    }

    /**
     * Kell's formula for the density of water at 1 atm (J. Chem. Eng. Data 20, 1975), from memory: an independent fit
     * to independent measurements.
     */
    @Test
    void densityAgreesWithKell() {
        for (double t = 0; t <= 60; t += 0.5) {
            double kell = (999.83952 + t * (16.945176 + t * (-7.9870401e-3 + t * (-46.170461e-6
                    + t * (105.56302e-9 - t * 280.54253e-12))))) / (1 + 16.879850e-3 * t);
            assertEquals(kell, WaterProperties.at(t).densityKgPerM3(), 2e-5 * kell, "at " + t);
        }
    }

    @Test
    void headAndPressureAreInverse() {
        WaterProperties water = WaterProperties.at(20);
        assertEquals(12.5, water.headM(water.pressurePa(12.5)), 1e-14);
        assertEquals(97_890, water.pressurePa(10), 2, "rho g h: 998.2 x 9.80665 x 10");
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.1, 60.1, Double.NaN, Double.POSITIVE_INFINITY, -1e300})
    void refusesOtherTemperatures(double temperatureC) {
        IllegalArgumentException refused = assertThrows(IllegalArgumentException.class,
                () -> WaterProperties.at(temperatureC));
        assertTrue(refused.getMessage().startsWith("water temperature must be from 0 degC to 60 degC, not "),
                refused.getMessage());
    }
}
