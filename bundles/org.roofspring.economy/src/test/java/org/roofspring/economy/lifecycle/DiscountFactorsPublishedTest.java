package org.roofspring.economy.lifecycle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Factors against tables, and totals of a published costing study. */
class DiscountFactorsPublishedTest {

    /**
     * A/P and A/F at 10 %: .5762 (2 yr), .1627 (10 yr), .4762 and .0627 READ in standard tables of engineering economy;
     * the A/P of 5 years CALC. The tables print four digits.
     */
    @Test
    void tablesOfEngineeringEconomy() {
        assertEquals(0.5762, DiscountFactors.capitalRecovery(0.1, 2), 5e-5);
        assertEquals(0.1627, DiscountFactors.capitalRecovery(0.1, 10), 5.1e-5);
        assertEquals(0.4762, DiscountFactors.sinkingFund(0.1, 2), 5e-5);
        assertEquals(0.0627, DiscountFactors.sinkingFund(0.1, 10), 5.1e-5);
        assertEquals(0.26380, DiscountFactors.capitalRecovery(0.1, 5), 5e-6);
    }

    /** CALC, by the formulas of NIST Handbook 135, 1995 (MEM): regression only. */
    @ParameterizedTest
    @CsvSource({"5, 4.5797, .8626", "10, 8.5302, .7441", "15, 11.9379, .6419", "20, 14.8775, .5537",
        "25, 17.4131, .4776"})
    void threePerCent(int years, double uniform, double single) {
        assertEquals(uniform, DiscountFactors.uniformPresentValue(0.03, years), 5e-5);
        assertEquals(single, DiscountFactors.singlePresentValue(0.03, years), 5e-5);
    }

    /** 10,000 a year at 10 %: 100,000 forever (READ, a worked perpetuity); over 100 years 99,992.74 (CALC). */
    @Test
    void perpetuity() {
        assertEquals(100_000, 10_000 * DiscountFactors.uniformPresentValue(0.1, 1000), 1e-6);
        assertEquals(99_992.74, 10_000 * DiscountFactors.uniformPresentValue(0.1, 100), 0.005);
    }

    /**
     * Borehole with hand pump: capital 20 to 61 US$ (2011) and recurrent 3 to 6 US$ a year for each person, 20-year
     * total
     * 80 to 181 undiscounted. READ: WASHCost (IRC) figures as given in Akvopedia and by Sanitation Updates.
     */
    @ParameterizedTest
    @CsvSource({"20, 3, 80", "61, 6, 181"})
    void twentyYearsOfAHandPump(double capital, double recurrent, double total) {
        SupplyPlan plan = new SupplyPlan("Hand pump", List.of(CostLine.once("Borehole", CostCategory.CAPITAL, capital),
                CostLine.yearly("Recurrent", CostCategory.OPERATION, recurrent)), 10, 1);
        LifeCycleCost cost = LifeCycleCost.of(plan, Terms.real(0, 20));
        assertEquals(total, cost.presentCur(), 1e-12);
        assertEquals(total / 20, cost.annualCurPerPerson().getAsDouble(), 1e-12);
        assertEquals(total / 200, cost.costCurPerM3().getAsDouble(), 1e-12);
    }

    @Test
    void zeroDiscountIsPlainAddition() {
        assertEquals(1, DiscountFactors.singlePresentValue(0, 17));
        assertEquals(17, DiscountFactors.uniformPresentValue(0, 17));
        assertEquals(1 / 17.0, DiscountFactors.capitalRecovery(0, 17));
        assertEquals(17, DiscountFactors.uniformPresentValue(1e-12, 17), 1e-8);
        assertEquals(17, DiscountFactors.uniformPresentValue(Double.MIN_VALUE, 17), 1e-8);
        assertEquals(0.0, DiscountFactors.uniformPresentValue(0.04, 0));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, -0.51, 1.01})
    void badRates(double rate) {
        assertTrue(assertThrows(IllegalArgumentException.class, () -> DiscountFactors.uniformPresentValue(rate, 3))
                .getMessage().startsWith("rate (rate) must be from -0.5 to 1, not "));
        assertThrows(IllegalArgumentException.class, () -> DiscountFactors.singlePresentValue(rate, 3));
        assertThrows(IllegalArgumentException.class, () -> DiscountFactors.capitalRecovery(rate, 3));
        assertThrows(IllegalArgumentException.class, () -> DiscountFactors.sinkingFund(rate, 3));
        assertThrows(IllegalArgumentException.class, () -> Terms.real(rate, 3));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, -1, -1e-300, 1e13})
    void badPrices(double amount) {
        assertTrue(assertThrows(IllegalArgumentException.class, () -> CostLine.once("Tank", CostCategory.CAPITAL,
                amount)).getMessage().startsWith("amount of Tank (amountCur) must be from 0 to "));
        assertThrows(IllegalArgumentException.class, () -> new SupplyPlan("P", List.of(), amount, 1));
        assertThrows(IllegalArgumentException.class, () -> new SupplyPlan("P", List.of(), 1, amount));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, -1, 0, Double.MIN_VALUE, 201})
    void badLives(double life) {
        assertTrue(assertThrows(IllegalArgumentException.class, () -> CostLine.asset("Tank", 5, life)).getMessage()
                .contains("of Tank ("));
        assertThrows(IllegalArgumentException.class, () -> new CostLine("Tank", CostCategory.CAPITAL, 5, 0,
                OptionalDouble.empty(), OptionalDouble.of(life), 0));
    }

    @Test
    void badTerms() {
        assertThrows(IllegalArgumentException.class, () -> Terms.real(0.04, 0));
        assertThrows(IllegalArgumentException.class, () -> Terms.real(0.04, 201));
        assertThrows(IllegalArgumentException.class, () -> Terms.nominal(0.04, Double.NaN, 20));
        assertThrows(IllegalArgumentException.class, () -> new Terms(null, 0.04, 0, 20));
        assertThrows(IllegalArgumentException.class, () -> CostLine.once(" ", CostCategory.CAPITAL, 5));
        assertThrows(IllegalArgumentException.class, () -> CostLine.once("Tank", null, 5));
        assertThrows(IllegalArgumentException.class, () -> DiscountFactors.capitalRecovery(0.1, 0));
        assertThrows(IllegalArgumentException.class, () -> new UncertainInput("x", 1, 2, 3));
        assertThrows(IllegalArgumentException.class, () -> new UncertainInput("x", Double.NaN, 0, 3));
    }
}
