package org.roofspring.storage;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** What must hold for every plain tank and every record. */
@PropertyDefaults(tries = 300, edgeCases = EdgeCasesMode.NONE)
class TankBalancePropertyTest {

    /** Inputs are rounded to the microlitre. */
    private static final double UNIT_M3 = 1e-9;

    /** A record with its tank; small whole numbers make ties and exact fits common. */
    record Case(double[] inflow, double[] demand, double capacity, double startShare) {

        StorageDesign design(YieldRule rule) {
            return design(rule, capacity);
        }

        StorageDesign design(YieldRule rule, double volume) {
            return new StorageDesign(volume, volume * startShare, rule);
        }

        BalanceResult run(YieldRule rule) {
            return TankBalance.run(inflow, demand, design(rule));
        }
    }

    @Property
    void massCloses(@ForAll("cases") Case c, @ForAll @DoubleRange(min = 0, max = 1) double theta) {
        BalanceTotals totals = c.run(new YieldRule(theta)).totals();
        double scale = Math.max(totals.inflowM3(), c.capacity());
        assertTrue(Math.abs(totals.residualM3()) <= 1e-9 * scale, () -> "residual " + totals.residualM3());
    }

    @Property
    void volumeStaysInTheTankAndSupplyWithinDemand(@ForAll("cases") Case c,
            @ForAll @DoubleRange(min = 0, max = 1) double theta) {
        BalanceResult result = c.run(new YieldRule(theta));
        for (int day = 0; day < c.inflow().length; day++) {
            assertTrue(result.endVolumeM3(day) >= 0 && result.endVolumeM3(day) <= c.capacity() + UNIT_M3);
            assertTrue(result.suppliedM3(day) >= 0 && result.suppliedM3(day) <= c.demand()[day] + UNIT_M3);
        }
    }

    @Property
    void moreTankNeverLowersReliability(@ForAll("cases") Case c, @ForAll @DoubleRange(min = 0, max = 20) double more,
            @ForAll("exactRules") YieldRule rule) {
        BalanceResult small = c.run(rule);
        BalanceResult large = TankBalance.run(c.inflow(), c.demand(), c.design(rule, c.capacity() + more));
        assertTrue(large.totals().suppliedM3() >= small.totals().suppliedM3());
        assertTrue(large.counts().fullDays() >= small.counts().fullDays());
    }

    @Property
    void moreRoofNeverLowersVolumetricReliability(@ForAll("cases") Case c,
            @ForAll @DoubleRange(min = 1, max = 5) double factor, @ForAll("exactRules") YieldRule rule) {
        double[] more = Arrays.stream(c.inflow()).map(q -> q * factor).toArray();
        BalanceResult before = c.run(rule);
        BalanceResult after = TankBalance.run(more, c.demand(), c.design(rule));
        assertTrue(after.totals().suppliedM3() >= before.totals().suppliedM3());
        if (rule.equals(YieldRule.YBS)) {
            assertTrue(after.counts().fullDays() >= before.counts().fullDays());
        }
    }

    @Property
    void topUpNeverLowersVolumetricReliability(@ForAll("cases") Case c, @ForAll @IntRange(min = 0, max = 199) int day,
            @ForAll @DoubleRange(min = 0, max = 20) double load, @ForAll("exactRules") YieldRule rule) {
        double[] more = c.inflow().clone();
        more[day % more.length] += load;
        BalanceResult before = c.run(rule);
        BalanceResult after = TankBalance.run(more, c.demand(), c.design(rule));
        assertTrue(after.totals().suppliedM3() >= before.totals().suppliedM3());
        if (rule.equals(YieldRule.YBS)) {
            assertTrue(after.counts().fullDays() >= before.counts().fullDays());
        }
    }

    /** Under yield after spillage more rain can lower the number of full days, so nothing is claimed there. */
    @Example
    void twiceTheRainCanCostAFullDayUnderYieldAfterSpillage() {
        StorageDesign tank = new StorageDesign(6, 0, YieldRule.YAS);
        double[] rain = {1, 1, 20, 1};
        double[] twice = {2, 2, 40, 2};
        assertEquals(1, TankBalance.run(rain, 5, tank).counts().fullDays());
        assertEquals(0, TankBalance.run(twice, 5, tank).counts().fullDays());
        assertTrue(TankBalance.run(twice, 5, tank).totals().suppliedM3() >= TankBalance.run(rain, 5, tank).totals()
                .suppliedM3());
    }

    @Property
    void yieldAfterSpillageNeverSuppliesMoreInTotal(@ForAll("cases") Case c) {
        assertTrue(c.run(YieldRule.YAS).totals().suppliedM3() <= c.run(YieldRule.YBS).totals().suppliedM3());
    }

    @Property
    void splittingTheRecordAndCarryingTheStateChangesNothing(@ForAll("cases") Case c,
            @ForAll @IntRange(min = 1, max = 199) int at, @ForAll @DoubleRange(min = 0, max = 1) double theta) {
        int days = c.inflow().length;
        Assume.that(days > 1);
        int cut = 1 + at % (days - 1);
        YieldRule rule = new YieldRule(theta);
        BalanceResult whole = c.run(rule);
        BalanceResult first = TankBalance.run(Arrays.copyOf(c.inflow(), cut), Arrays.copyOf(c.demand(), cut),
                c.design(rule));
        BalanceResult second = TankBalance.run(Arrays.copyOfRange(c.inflow(), cut, days),
                Arrays.copyOfRange(c.demand(), cut, days),
                new StorageDesign(c.capacity(), first.totals().endVolumeM3(), rule));
        assertArrayEquals(Arrays.copyOfRange(whole.endVolumesM3(), cut, days), second.endVolumesM3());
        assertEquals(whole.counts().fullDays(), first.counts().fullDays() + second.counts().fullDays());
    }

    /** The printed formulas in doubles, step by step, as an independent slow implementation. */
    @Property
    void agreesWithThePrintedFormulas(@ForAll("cases") Case c, @ForAll("exactRules") YieldRule rule) {
        double theta = rule.thetaRatio();
        double volume = c.capacity() * c.startShare();
        BalanceResult result = c.run(rule);
        for (int day = 0; day < c.inflow().length; day++) {
            double inflow = c.inflow()[day];
            double yield = Math.min(c.demand()[day], volume + theta * inflow);
            volume = Math.min(volume + inflow - theta * yield, c.capacity()) - (1 - theta) * yield;
            assertEquals(yield, result.suppliedM3(day), 1e-6);
            assertEquals(volume, result.endVolumeM3(day), 1e-6);
        }
    }

    @Property
    void sizingIsTheSmallestTankThatReachesTheTarget(@ForAll("cases") Case c,
            @ForAll @DoubleRange(min = 0.01, max = 1) double target, @ForAll("exactRules") YieldRule rule) {
        SizingAnswer answer = TankSizing.smallestTank(c.inflow(), c.demand(), rule, target, () -> false);
        double inflow = Arrays.stream(c.inflow()).sum();
        double demand = Arrays.stream(c.demand()).sum();
        if (answer instanceof SizingAnswer.NoAnswer none) {
            assertTrue(none.reason() == SizingAnswer.Reason.NO_DEMAND ? demand < 1e-6 : demand > inflow - 1e-6);
            return;
        }
        SizingAnswer.Sized sized = (SizingAnswer.Sized) answer;
        assertTrue(warmReliability(c, rule, sized.volumeM3()) >= target - 1e-12);
        if (sized.volumeM3() > 0) {
            assertTrue(warmReliability(c, rule, sized.volumeM3() - 2e-9) < target);
        }
    }

    private static double warmReliability(Case c, YieldRule rule, double volume) {
        StorageDesign empty = new StorageDesign(volume, 0, rule);
        double start = TankBalance.run(c.inflow(), c.demand(), empty).totals().endVolumeM3();
        return TankBalance.run(c.inflow(), c.demand(), new StorageDesign(volume, start, rule)).timeReliability()
                .orElseThrow();
    }

    @Provide
    Arbitrary<YieldRule> exactRules() {
        return Arbitraries.of(YieldRule.YAS, YieldRule.YBS);
    }

    @Provide
    Arbitrary<Case> cases() {
        Arbitrary<Double> whole = Arbitraries.integers().between(0, 12).map(Integer::doubleValue);
        Arbitrary<Double> any = Arbitraries.doubles().between(0, 12);
        Arbitrary<Double> inflow = Arbitraries.frequencyOf(net.jqwik.api.Tuple.of(5, Arbitraries.just(0.0)),
                net.jqwik.api.Tuple.of(2, whole), net.jqwik.api.Tuple.of(2, any));
        Arbitrary<Double> demand = Arbitraries.frequencyOf(net.jqwik.api.Tuple.of(1, Arbitraries.just(0.0)),
                net.jqwik.api.Tuple.of(4, whole.map(d -> d / 4)), net.jqwik.api.Tuple.of(2, any.map(d -> d / 4)));
        return Arbitraries.integers().between(1, 200).flatMap(days -> Combinators.combine(
                inflow.array(double[].class).ofSize(days), demand.array(double[].class).ofSize(days),
                Arbitraries.oneOf(whole.map(v -> 3 * v), any.map(v -> 3 * v)),
                Arbitraries.of(0.0, 0.25, 0.5, 1.0)).as(Case::new));
    }
}
