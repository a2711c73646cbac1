package org.roofspring.economy.lifecycle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;

import org.junit.jupiter.api.Test;

/** Cases reckoned by hand. */
class LifeCycleCostTest {
    private static final double EXACT = 1e-9;

    private static LifeCycleCost cost(Terms terms, CostLine... lines) {
        return LifeCycleCost.of(new SupplyPlan("P", List.of(lines), 100, 4), terms);
    }

    /** Life 8 in 20 years: bought at 0, 8 and 16; the last has 4 of 8 years left. */
    @Test
    void renewalsAndWhatIsLeft() {
        LifeCycleCost cost = cost(Terms.real(0.1, 20), CostLine.asset("Pump", 800, 8));
        double second = 800 / Math.pow(1.1, 8);
        double third = 800 / Math.pow(1.1, 16);
        assertEquals(800 + second + third, cost.presentOutlaysCur(), EXACT);
        assertEquals(400 / Math.pow(1.1, 20), cost.residualPresentCur(), EXACT);
        assertEquals(800, cost.presentByCategoryCur().get(CostCategory.CAPITAL), EXACT);
        assertEquals(second + third, cost.presentByCategoryCur().get(CostCategory.CAPITAL_MAINTENANCE), EXACT);
        assertEquals(800, cost.realOutlaysCur()[16], EXACT);
    }

    /** What would be bought on the last day is not bought; what is done is counted. */
    @Test
    void theEndOfTheHorizon() {
        assertEquals(800 + 800 / Math.pow(1.1, 10), cost(Terms.real(0.1, 20), CostLine.asset("Pump", 800, 10))
                .presentCur(), EXACT);
        assertEquals(5 * DiscountFactors.uniformPresentValue(0.1, 20),
                cost(Terms.real(0.1, 20), CostLine.yearly("Work", CostCategory.LABOUR, 5)).presentCur(), EXACT);
    }

    /** Not renewed after its life: nothing is left of it. */
    @Test
    void onceAndWornOut() {
        CostLine once = new CostLine("Barrel", CostCategory.CAPITAL, 70, 0, OptionalDouble.empty(),
                OptionalDouble.of(12), 0);
        assertEquals(70, cost(Terms.real(0.04, 20), once).presentCur(), EXACT);
        assertEquals(70 - 35 / Math.pow(1.04, 6), cost(Terms.real(0.04, 6), once).presentCur(), EXACT);
    }

    @Test
    void nothingDeliveredOrNobodyThereHasNoUnitCost() {
        LifeCycleCost cost = LifeCycleCost.of(new SupplyPlan("P", List.of(), 0, 0), Terms.real(0, 1));
        assertTrue(cost.costCurPerM3().isEmpty());
        assertTrue(cost.annualCurPerPerson().isEmpty());
        assertEquals(0, cost.presentCur());
    }

    /** Prices that rise by exactly the discount rate count alike whenever they fall due. */
    @Test
    void aPriceThatRises() {
        CostLine rising = new CostLine("Energy", CostCategory.ENERGY, 10, 1, OptionalDouble.of(1),
                OptionalDouble.empty(), 0.05);
        assertEquals(200, cost(Terms.real(0.05, 20), rising).presentCur(), EXACT);
    }

    @Test
    void paidInMoneyOfTheYear() {
        LifeCycleCost cost = cost(Terms.nominal(0.0712, 0.03, 3), CostLine.yearly("Work", CostCategory.LABOUR, 100));
        assertEquals(0.04, cost.terms().realRate(), EXACT);
        assertEquals(100 * 1.03 * 1.03, cost.paidOutlaysCur()[2], EXACT);
        assertEquals(100, cost.realOutlaysCur()[2], EXACT);
        assertEquals(100 * DiscountFactors.uniformPresentValue(0.04, 3), cost.presentCur(), EXACT);
    }

    @Test
    void breakEven() {
        Terms terms = Terms.real(0, 20);
        LifeCycleCost dear = cost(terms, CostLine.once("Build", CostCategory.CAPITAL, 100),
                CostLine.yearly("Run", CostCategory.OPERATION, 10));
        LifeCycleCost tanker = cost(terms, CostLine.yearly("Tanker", CostCategory.WATER_BOUGHT, 25));
        LifeCycleCost free = cost(terms);
        // 100 + 10 n <= 25 n from n = 6.67
        assertEquals(new BreakEven.FromYear(7), BreakEven.of(dear, tanker));
        assertEquals(new BreakEven.Never(200), BreakEven.of(tanker, dear));
        assertEquals(new BreakEven.FromYear(0), BreakEven.of(free, dear));
        assertEquals(new BreakEven.FromYear(0), BreakEven.of(dear, dear));
        assertEquals(new BreakEven.Never(300), BreakEven.of(dear, free));
        assertThrows(IllegalArgumentException.class, () -> BreakEven.of(dear, cost(Terms.real(0, 19))));
    }

    /** Overtaken in year 7, but a renewal in year 10 makes it dearer again until year 17. */
    @Test
    void breakEvenIsForGood() {
        Terms terms = Terms.real(0, 20);
        LifeCycleCost renewed = cost(terms, CostLine.asset("Build", 150, 10));
        LifeCycleCost tanker = cost(terms, CostLine.yearly("Tanker", CostCategory.WATER_BOUGHT, 25));
        assertEquals(new BreakEven.FromYear(12), BreakEven.of(renewed, tanker));
    }

    @Test
    void tornadoAndFlips() {
        Sensitivity linear = new Sensitivity(List.of(new UncertainInput("a", 2, 1, 3), new UncertainInput("b", 1, 0, 9),
                new UncertainInput("c", 0, -1, 1)), v -> 5 * v[0] - v[1] + v[2]);
        assertEquals(List.of("a", "b", "c"), linear.tornado().stream().map(bar -> bar.input().name()).toList());
        assertEquals(10, linear.tornado().getFirst().swing(), EXACT);
        List<Sensitivity.Flip> flips = linear.flips();
        assertTrue(flips.get(0).value().isEmpty());
        assertTrue(flips.get(1).value().isEmpty());
        assertTrue(flips.get(2).value().isEmpty());
        Sensitivity crossing = new Sensitivity(List.of(new UncertainInput("a", 2, 0, 3),
                new UncertainInput("b", 1, -40, 12), new UncertainInput("q", 0, -1, 4)),
                v -> 5 * v[0] - v[1] - v[2] * v[2]);
        assertEquals(0.2, crossing.flips().get(0).value().getAsDouble(), EXACT);
        assertEquals(10, crossing.flips().get(1).value().getAsDouble(), EXACT);
        assertEquals(3, crossing.flips().get(2).value().getAsDouble(), EXACT);
        assertThrows(IllegalArgumentException.class,
                () -> new Sensitivity(List.of(new UncertainInput("a", 2, 0, 3)), v -> 1 / v[0]).tornado());
    }
}
