package org.roofspring.treatment.disinfection;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import org.roofspring.treatment.disinfection.Boiling.Agency;
import org.roofspring.treatment.disinfection.SolarDisinfection.Sky;

/** Ultraviolet, boiling and solar values against their sources. */
class HeatAndLightPublishedTest {

    /** US EPA 2006, Ultraviolet Disinfection Guidance Manual, as quoted by a reactor supplier's page (READ-2). */
    @ParameterizedTest
    @CsvSource({"CRYPTOSPORIDIUM,1.6,2.5,3.9,5.8,8.5,12,15,22", "GIARDIA,1.5,2.1,3.0,5.2,7.7,11,15,22",
        "VIRUS,39,58,79,100,121,143,163,186"})
    void uvAtItsPoints(UvDoseTable group, double a, double b, double c, double d, double e, double f, double g,
            double h) {
        double[] doses = {a, b, c, d, e, f, g, h};
        for (int i = 0; i < doses.length; i++) {
            double log = 0.5 * (i + 1);
            assertEquals(log, group.credit(doses[i]));
            assertEquals(log - 0.5, group.credit(doses[i] - 1e-6));
            assertEquals(doses[i], group.neededMjPerCm2(log));
        }
        assertEquals(0, group.credit(0));
        assertEquals(4, group.credit(1e6));
    }

    @Test
    void fortyMillijoules() {
        assertEquals(4, UvDoseTable.CRYPTOSPORIDIUM.credit(40));
        assertEquals(4, UvDoseTable.GIARDIA.credit(40));
        assertEquals(0.5, UvDoseTable.VIRUS.credit(40));
        assertEquals(58, UvDoseTable.VIRUS.neededMjPerCm2(0.6), "between steps the higher one");
    }

    /** Vapour pressure anchors of IAPWS SR1-86(1992) (MEM): triple point and normal boiling point. */
    @Test
    void vapourPressureAnchors() {
        assertEquals(611.657, Boiling.vapourPressurePa(0.01), 0.005);
        assertEquals(101_325, Boiling.vapourPressurePa(373.1243 - 273.15), 0.5);
    }

    /** LSBU water data (READ): 0.611 1.228 2.339 4.247 7.385 kPa; to the printed digits. */
    @ParameterizedTest
    @CsvSource({"10,1.228", "20,2.339", "30,4.247", "40,7.385"})
    void vapourPressureTable(double temperature, double kilopascal) {
        assertEquals(kilopascal, Boiling.vapourPressurePa(temperature) / 1000, 5.1e-4);
    }

    /** US Standard Atmosphere 1976 Table I by geometric altitude (MEM): 1013.25 898.76 795.01 616.60 mbar. */
    @ParameterizedTest
    @CsvSource({"0,1013.25", "1000,898.76", "2000,795.01", "4000,616.60"})
    void standardAir(double altitude, double millibar) {
        assertEquals(millibar, Boiling.airPressurePa(altitude) / 100, 0.0051);
    }

    /** Inverse of IAPWS SR1-86 by an independent script (CALC, regression only). */
    @ParameterizedTest
    @CsvSource({"0,99.97", "1000,96.65", "2000,93.32", "3000,89.98", "4000,86.63"})
    void boilingPoint(double altitude, double celsius) {
        assertEquals(celsius, Boiling.at(altitude, Agency.CDC).boilingPointC(), 0.005);
    }

    /** A slow independent way: walk up in steps of a ten-thousandth of a degree until the water boils. */
    @ParameterizedTest
    @ValueSource(doubles = {-450, 0, 1524, 8848, 9000})
    void boilingPointByWalking(double altitude) {
        double temperature = 60;
        while (Boiling.vapourPressurePa(temperature) < Boiling.airPressurePa(altitude)) {
            temperature += 1e-4;
        }
        assertEquals(temperature, Boiling.at(altitude, Agency.EPA).boilingPointC(), 1.01e-4);
    }

    /** CDC: 3 minutes above 6,500 feet (READ). EPA: above 5,000 feet (READ); its printed 1,000 m is a slip. */
    @ParameterizedTest
    @CsvSource({"CDC,0,1", "CDC,1981.2,1", "CDC,1981.3,3", "EPA,1000,1", "EPA,1001,1", "EPA,1524,1", "EPA,1524.1,3",
        "CDC,1600,1", "EPA,1600,3"})
    void boilTime(Agency agency, double altitude, double minutes) {
        assertEquals(minutes * 60, Boiling.at(altitude, agency).durationS());
    }

    @Test
    void boilRefusesWithOneSentence() {
        assertEquals("altitude (altitudeM) must be from -450 to 9000 m, not NaN",
                assertThrows(IllegalArgumentException.class, () -> Boiling.at(Double.NaN, Agency.CDC)).getMessage());
    }

    /** CDC 2011 (READ): bottles to 2 L, 6 h of sun or 2 days under cloud; Eawag manual (MEM): below 30 NTU. */
    @Test
    void sun() {
        assertEquals(6 * 3600, SolarDisinfection.of(0.002, Sky.CLEAR, 29.9).durationS());
        assertEquals(48 * 3600, SolarDisinfection.of(0.0015, Sky.CLOUDY, 5).durationS());
        assertTrue(SolarDisinfection.of(0.002, Sky.CLEAR, 29.9).suitable());
        assertFalse(SolarDisinfection.of(0.002, Sky.CLEAR, 30).suitable());
        SolarDisinfection both = SolarDisinfection.of(0.005, Sky.CLOUDY, 80);
        assertFalse(both.suitable());
        assertEquals(2, both.reasons().size());
        assertTrue(both.reasons().get(0).contains("5 L"));
    }
}
