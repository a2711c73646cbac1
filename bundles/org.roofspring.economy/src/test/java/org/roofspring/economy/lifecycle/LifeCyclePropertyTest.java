package org.roofspring.economy.lifecycle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.OptionalDouble;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** What holds for any costs, and the same sums done slowly. */
class LifeCyclePropertyTest {

    @Provide
    Arbitrary<List<CostLine>> lines() {
        Arbitrary<OptionalDouble> span = Arbitraries.of(OptionalDouble.empty(), OptionalDouble.of(0.5),
                OptionalDouble.of(1), OptionalDouble.of(3), OptionalDouble.of(8), OptionalDouble.of(25.5));
        return Combinators.combine(Arbitraries.of(CostCategory.values()), Arbitraries.doubles().between(0, 1e5),
                Arbitraries.of(0.0, 1.0, 2.0, 7.5), span, span, Arbitraries.of(0.0, -0.03, 0.02, 0.08))
                .as((category, amount, first, interval, life, change) -> new CostLine("L", category, amount, first,
                        interval, life, change)).list().ofMaxSize(6);
    }

    private static LifeCycleCost cost(List<CostLine> lines, Terms terms) {
        return LifeCycleCost.of(new SupplyPlan("P", lines, 250, 7), terms);
    }

    /** The slow way: every twentieth of a year asked whether a payment falls on it, powers multiplied out. */
    @Property(tries = 200)
    void agreesWithASlowSecondWay(@ForAll("lines") List<CostLine> lines,
            @ForAll @DoubleRange(min = 0, max = 0.3) double rate, @ForAll @IntRange(min = 1, max = 40) int horizon) {
        double slow = 0;
        for (CostLine line : lines) {
            double lastBought = -1;
            for (int tick = 0; tick <= horizon * 20; tick++) {
                double time = tick / 20.0;
                double since = time - line.firstYears();
                boolean due = line.intervalYears().isEmpty() ? since == 0
                        : since >= 0 && Math.rint(since / line.intervalYears().getAsDouble())
                                * line.intervalYears().getAsDouble() == since;
                if (due && (line.lifeYears().isEmpty() || tick < horizon * 20)) {
                    slow += price(line, time) * Math.exp(-Math.log(1 + rate) * time);
                    lastBought = time;
                }
            }
            if (line.lifeYears().isPresent() && lastBought >= 0) {
                double end = lastBought + line.lifeYears().getAsDouble();
                double left = Math.max(0, end - horizon) / line.lifeYears().getAsDouble();
                slow -= left * price(line, lastBought) * powerOf(1 + rate, -horizon);
            }
        }
        LifeCycleCost cost = cost(lines, Terms.real(rate, horizon));
        assertEquals(slow, cost.presentCur(), 1e-9 * (1 + Math.abs(slow)));
        double water = 0;
        for (int year = 1; year <= horizon; year++) {
            water += 250 * powerOf(1 + rate, -year);
        }
        assertEquals(water, cost.presentWaterM3(), 1e-9 * water);
    }

    private static double price(CostLine line, double time) {
        return line.amountCur() * Math.exp(Math.log(1 + line.yearlyChange()) * time);
    }

    /** By exact decimals, not by logarithms. */
    private static double powerOf(double base, int exponent) {
        BigDecimal power = new BigDecimal(base).pow(Math.abs(exponent), MathContext.DECIMAL128);
        return exponent < 0 ? BigDecimal.ONE.divide(power, MathContext.DECIMAL128).doubleValue() : power.doubleValue();
    }

    /** Real reckoning, and nominal reckoning with inflation in prices and rate, give one answer. */
    @Property(tries = 300)
    void realAndNominalAgree(@ForAll("lines") List<CostLine> lines,
            @ForAll @DoubleRange(min = 0, max = 0.2) double real,
            @ForAll @DoubleRange(min = 0, max = 0.2) double inflation,
            @ForAll @IntRange(min = 1, max = 60) int horizon) {
        LifeCycleCost plain = cost(lines, Terms.real(real, horizon));
        LifeCycleCost risen = cost(lines, Terms.nominal((1 + real) * (1 + inflation) - 1, inflation, horizon));
        assertEquals(plain.presentCur(), risen.presentCur(), 1e-9 * (1 + Math.abs(plain.presentCur())));
        assertEquals(plain.annualCur(), risen.annualCur(), 1e-9 * (1 + Math.abs(plain.annualCur())));
        assertEquals(plain.costCurPerM3().getAsDouble(), risen.costCurPerM3().getAsDouble(),
                1e-9 * (1 + Math.abs(plain.costCurPerM3().getAsDouble())));
    }

    /** Parts make the whole; money grows with amounts; an annual cost paid each year is worth the present value. */
    @Property(tries = 300)
    void partsMakeTheWhole(@ForAll("lines") List<CostLine> lines, @ForAll @DoubleRange(min = 0, max = 0.5) double rate,
            @ForAll @IntRange(min = 1, max = 60) int horizon) {
        LifeCycleCost cost = cost(lines, Terms.real(rate, horizon));
        double tolerance = 1e-9 * (1 + cost.presentOutlaysCur());
        assertEquals(cost.presentOutlaysCur(),
                cost.presentByCategoryCur().values().stream().mapToDouble(Double::doubleValue).sum(), tolerance);
        assertEquals(cost.presentOutlaysCur(), cost.cumulatedPresentCur()[horizon], tolerance);
        assertTrue(cost.residualPresentCur() >= 0 && cost.residualPresentCur() <= cost.presentOutlaysCur() + tolerance
                || lines.stream().anyMatch(line -> line.yearlyChange() > rate));
        assertEquals(cost.presentCur(), cost.annualCur() * DiscountFactors.uniformPresentValue(rate, horizon),
                tolerance);
        double doubled = cost(lines.stream().map(line -> line.withAmountCur(2 * line.amountCur())).toList(),
                Terms.real(rate, horizon)).presentCur();
        assertEquals(2 * cost.presentCur(), doubled, 2 * tolerance);
    }

    @Property(tries = 200)
    void factorsFitTogether(@ForAll @DoubleRange(min = -0.4, max = 1) double rate,
            @ForAll @IntRange(min = 1, max = 100) int years) {
        double sum = 0;
        for (int year = 1; year <= years; year++) {
            sum += powerOf(1 + rate, -year);
        }
        assertEquals(sum, DiscountFactors.uniformPresentValue(rate, years), 1e-9 * sum);
        assertEquals(DiscountFactors.capitalRecovery(rate, years), DiscountFactors.sinkingFund(rate, years) + rate,
                1e-9);
    }

    /** Break-even by asking every year in turn. */
    @Property(tries = 300)
    void breakEvenByAskingEveryYear(@ForAll("lines") List<CostLine> own, @ForAll("lines") List<CostLine> others) {
        LifeCycleCost a = cost(own, Terms.real(0.04, 30));
        LifeCycleCost b = cost(others, Terms.real(0.04, 30));
        BreakEven answer = BreakEven.of(a, b);
        for (int year = 0; year <= 30; year++) {
            boolean stays = true;
            for (int later = year; later <= 30; later++) {
                stays &= a.cumulatedPresentCur()[later] <= b.cumulatedPresentCur()[later];
            }
            boolean said = answer instanceof BreakEven.FromYear from && year >= from.year();
            assertEquals(stays, said, "year " + year);
        }
    }
}
