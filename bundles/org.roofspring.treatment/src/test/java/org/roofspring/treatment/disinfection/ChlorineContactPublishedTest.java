package org.roofspring.treatment.disinfection;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Contact-time tables at, between and beyond their points. */
class ChlorineContactPublishedTest {

    /** EPA 1991 Appendix E, read in two extracts that quote it (READ-2); printed values are rounded to 1. */
    @ParameterizedTest
    @CsvSource({"6,0.5,0.4,1,46", "6,0.5,0.4,2,91", "6,0.5,0.4,3,137", "6,0.5,1.0,1,49", "6,0.5,1.0,2,99",
        "6,0.5,1.0,3,148", "6,0.5,2.0,1,55", "6,0.5,2.0,2,110", "6,0.5,2.0,3,165", "7,0.5,0.4,1,65",
        "7,0.5,0.4,2,130", "7,0.5,0.4,3,195", "7,0.5,1.0,1,70", "8,0.5,0.4,1,92", "7.5,15,1.2,3,92",
        "8,0.5,1.0,1.5,152"})
    void giardiaAtThePoints(double ph, double temperature, double residual, double log, double printed) {
        assertEquals(printed, GiardiaContactTable.rounded(residual, ph, temperature) * log / 3, 0.5);
        assertEquals(GiardiaContactTable.rounded(residual, ph, temperature),
                GiardiaContactTable.interpolated(residual, ph, temperature), 1e-9);
    }

    /** EPA 815-R-20-003, pH 7, 1.0 mg/L, 3 log (MEM, from memory). */
    @ParameterizedTest
    @CsvSource({"0.5,210", "5,149", "10,112", "15,75", "20,56", "25,37"})
    void giardiaByTemperature(double temperature, double needed) {
        assertEquals(needed, GiardiaContactTable.rounded(1.0, 7, temperature));
    }

    /** The source's rule: temperature down, pH up, residual up; above 3 mg/L the row of 3 (READ-2). */
    @ParameterizedTest
    @CsvSource({"7,19.9,1.0,75", "7.01,20,1.0,67", "7,20,1.01,57", "7,20,3.5,68", "7,20,0.1,52", "5.2,20,1.0,39",
        "7,31,1.0,37", "6.7,12,0.5,107"})
    void giardiaRounded(double ph, double temperature, double residual, double needed) {
        assertEquals(needed, GiardiaContactTable.rounded(residual, ph, temperature));
    }

    @Test
    void giardiaBetweenThePoints() {
        assertEquals(65.5, GiardiaContactTable.interpolated(1.0, 7, 17.5), 1e-9);
        assertEquals((52 + 54) / 2.0, GiardiaContactTable.interpolated(0.5, 7, 20), 1e-9);
        assertEquals((56 + 67) / 2.0, GiardiaContactTable.interpolated(1.0, 7.25, 20), 1e-9);
    }

    /** Values of the two fits (READ-2 and MEM) beside the tabulated 137, 195, 92, 152. */
    @ParameterizedTest
    @CsvSource({"POWER_FIT,0.4,6,0.5,3,125.2", "POWER_FIT,0.4,7,0.5,3,189.6", "POWER_FIT,1.2,7.5,15,3,98.5",
        "POWER_FIT,1.0,8,0.5,1.5,155.8", "REGRESSION_1995,0.4,6,0.5,3,142.4", "REGRESSION_1995,1.0,7,10,3,115.8",
        "REGRESSION_1995,1.2,7.5,15,3,100.6"})
    void formulas(GiardiaFormula formula, double residual, double ph, double temperature, double log, double value) {
        assertEquals(value, formula.contactMgMinPerL(log, residual, ph, temperature), 0.06);
    }

    /** EPA 1991 Table E-7, pH 6 to 9 (MEM, from memory). */
    @ParameterizedTest
    @CsvSource({"0.5,6,9,12", "5,4,6,8", "10,3,4,6", "15,2,3,4", "20,1,2,3", "25,1,1,2"})
    void virusAtThePoints(double temperature, double two, double three, double four) {
        assertEquals(two, VirusContactTable.contactMgMinPerL(2, temperature));
        assertEquals(three, VirusContactTable.contactMgMinPerL(3, temperature));
        assertEquals(four, VirusContactTable.contactMgMinPerL(4, temperature));
        assertEquals(4, VirusContactTable.rounded(four, temperature));
        assertEquals(4, VirusContactTable.interpolated(four, temperature));
        assertTrue(VirusContactTable.rounded(four - 1e-6, temperature) < 4);
        assertEquals(0, VirusContactTable.rounded(two - 1e-6, temperature));
    }

    @Test
    void virusBetweenThePoints() {
        assertEquals(2, VirusContactTable.rounded(3.5, 10));
        assertEquals(2.5, VirusContactTable.interpolated(3.5, 10), 1e-12);
        assertEquals(1, VirusContactTable.interpolated(1.5, 10), 1e-12);
        assertEquals(2, VirusContactTable.rounded(3, 14.9), "14.9 degC reads the row of 10");
        assertEquals(3, VirusContactTable.interpolated(3.5, 12.5), 1e-12);
        assertEquals(4, VirusContactTable.rounded(2, 40));
    }

    @Test
    void creditFromResidualAndTime() {
        ChlorineCredit credit = ChlorineCredit.of(ChlorineContact.standing(0.5, 1800, 7, 20));
        assertEquals(15, credit.contactMgMinPerL(), 1e-12);
        assertEquals(3 * 15 / 54.0, credit.logGiardia(), 1e-12);
        assertEquals(3 * 15 / 53.0, credit.logGiardiaInterpolated().orElseThrow(), 1e-12);
        assertEquals(4, credit.logVirus());
        assertEquals(54, credit.neededGiardiaMgMinPerL().orElseThrow());
        assertTrue(credit.notes().isEmpty());
        assertEquals(3, ChlorineCredit.of(ChlorineContact.standing(2, 6000, 7, 20)).logGiardia());
    }

    @Test
    void aFlowingTankGetsOnlyItsShare() {
        double standing = new ChlorineContact(1, 600, Baffling.STANDING, 7, 20).contactMgMinPerL();
        assertEquals(10, standing, 1e-12);
        assertEquals(1, new ChlorineContact(1, 600, Baffling.NONE, 7, 20).contactMgMinPerL(), 1e-12);
    }

    @Test
    void noResidualNoCredit() {
        ChlorineCredit credit = ChlorineCredit.of(ChlorineContact.standing(0, 1e6, 7, 20));
        assertEquals(ChlorineCredit.withoutResidual(), credit);
        assertEquals(0, credit.logGiardia() + credit.logVirus() + credit.contactMgMinPerL());
        assertTrue(credit.notes().get(0).contains("not a residual"));
    }

    @Test
    void noCreditOutsideTheTables() {
        ChlorineCredit concrete = ChlorineCredit.of(ChlorineContact.standing(1, 36_000, 9.5, 20));
        assertEquals(0, concrete.logGiardia() + concrete.logVirus());
        assertEquals(2, concrete.notes().size());
        ChlorineCredit cold = ChlorineCredit.of(ChlorineContact.standing(1, 36_000, 7, 0.4));
        assertEquals(0, cold.logGiardia() + cold.logVirus());
        ChlorineCredit acid = ChlorineCredit.of(ChlorineContact.standing(1, 36_000, 5.5, 20));
        assertEquals(0, acid.logVirus(), "the virus table starts at pH 6");
        assertEquals(3, acid.logGiardia(), "the Giardia table's first column is pH 6 and below");
    }
}
