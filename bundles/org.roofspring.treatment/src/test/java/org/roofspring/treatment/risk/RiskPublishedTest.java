package org.roofspring.treatment.risk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Dose response and the risk chain against their sources, forward and back. */
class RiskPublishedTest {
    private static final Map<String, Pathogen> CHAIN = Map.of("crypto", Pathogen.CRYPTOSPORIDIUM, "campy",
            Pathogen.CAMPYLOBACTER, "rota", Pathogen.ROTAVIRUS);

    /** WHO 2011 appendix (READ): Campylobacter ID50 about 897; 896.7 by the formula (CALC). */
    @Test
    void medianDoses() {
        assertEquals(897, Pathogen.CAMPYLOBACTER_CURVE.medianDose(), 0.5);
        assertEquals(896.7, Pathogen.CAMPYLOBACTER_CURVE.medianDose(), 0.05);
        // Ward 1986 / Haas 1993: N50 6.17 (READ); beta 0.4260 (CALC).
        assertEquals(6.17, Pathogen.ROTAVIRUS_CURVE.medianDose(), 1e-9);
        assertEquals(0.4260, Pathogen.ROTAVIRUS_CURVE.beta(), 5e-5);
        assertEquals(12.1, Pathogen.CRYPTOSPORIDIUM_HOMINIS_CURVE.dose(0.5), 0.05);
    }

    /** AWWA 1999 abstract (READ): E. coli O157:H7 median 600,000, one organism 2.6e-6; curve by Haas 2000 (MEM). */
    @Test
    void escherichiaColi() {
        assertEquals(2.6e-6, Pathogen.E_COLI_O157_CURVE.infection(1), 0.05e-6);
        assertEquals(600_000, Pathogen.E_COLI_O157_CURVE.medianDose(), 5_000);
    }

    /** Values of the formulas by an independent script (CALC, regression only). */
    @Test
    void infectionAtDoses() {
        assertEquals(0.017786, Pathogen.CAMPYLOBACTER_CURVE.infection(1), 5e-7);
        assertEquals(0.114739, Pathogen.CAMPYLOBACTER_CURVE.infection(10), 5e-7);
        assertEquals(0.319187, Pathogen.CAMPYLOBACTER_CURVE.infection(100), 5e-7);
        assertEquals(0.005853, Pathogen.ROTAVIRUS_CURVE.infection(0.01), 5e-7);
        assertEquals(0.263362, Pathogen.ROTAVIRUS_CURVE.infection(1), 5e-7);
        assertEquals(0.554688, Pathogen.ROTAVIRUS_CURVE.infection(10), 5e-7);
        assertEquals(0.055595, Pathogen.CRYPTOSPORIDIUM_HOMINIS_CURVE.infection(1), 5e-7);
        assertEquals(0.435604, Pathogen.CRYPTOSPORIDIUM_HOMINIS_CURVE.infection(10), 5e-7);
    }

    /**
     * WHO Guidelines for Drinking-water Quality, 3rd ed, Table 7.4 (MEM, from memory): the printed steps are rounded,
     * and each follows from the one before within about 5 %.
     */
    @ParameterizedTest
    @CsvSource({"crypto,10,6.3e-4,2.5e-6,9.2e-4,6.4e-4,1e-6,4.2", "campy,100,1.3e-4,2.3e-6,8.3e-4,2.5e-4,1e-6,5.9",
        "rota,10,3.2e-5,8.5e-6,3.1e-3,1.6e-3,1e-6,5.5"})
    void chainForward(String name, double raw, double treated, double day, double year, double ill, double daly,
            double log) {
        Pathogen pathogen = CHAIN.get(name);
        RiskChain chain = RiskChain.forward(pathogen, raw, Math.log10(raw / treated), 1, 365);
        assertEquals(treated, chain.treatedPerL(), treated * 1e-12);
        assertEquals(day, chain.dailyInfection(), 0.05 * day);
        assertEquals(year, chain.yearlyInfection(), 0.05 * year);
        assertEquals(ill, chain.yearlyIllness(), 0.05 * ill);
        // The rounded table comes to between 1.0e-6 and 1.4e-6 for the last step.
        assertEquals(daly, chain.yearlyDaly(), 0.4 * daly);
        assertEquals(log, Math.log10(raw / treated), 0.05);
    }

    /** The chain run backwards from exactly 1e-6: 4.19, 5.96, 5.62 (CALC) beside the printed 4.2, 5.9, 5.5 (MEM). */
    @ParameterizedTest
    @CsvSource({"crypto,10,4.19,4.2", "campy,100,5.96,5.9", "rota,10,5.62,5.5"})
    void chainBackward(String name, double raw, double log, double printed) {
        double needed = RiskChain.neededLog(CHAIN.get(name), raw, 1, 365, RiskChain.TARGET_DALY);
        assertEquals(log, needed, 0.005);
        assertEquals(printed, needed, 0.13);
    }

    @Test
    void refusesWithOneSentence() {
        assertEquals("water swallowed (litresPerDay) must be above 0 and at most 100 L/d, not -1",
                assertThrows(IllegalArgumentException.class,
                        () -> RiskChain.forward(Pathogen.ROTAVIRUS, 1, 1, -1, 365)).getMessage());
        assertThrows(IllegalArgumentException.class, () -> new DoseResponse.Exponential(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> Pathogen.CAMPYLOBACTER_CURVE.dose(1));
        assertTrue(RiskChain.neededLog(Pathogen.ROTAVIRUS, 1e-9, 1, 365, 1e-6) == 0);
    }
}
