package org.roofspring.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TankBalanceTest {

    private static final double[] NO_RAIN_30 = new double[30];

    @Test
    void tankOfExactlyTwentyFiveDaysMeetsTwentyFiveDays() {
        // 25 x 0.008 in binary doubles is not 0.2; by the twenty-fifth day a running difference is short.
        BalanceResult result = TankBalance.run(NO_RAIN_30, 0.008, new StorageDesign(0.2, 0.2, YieldRule.YAS));
        assertEquals(25, result.counts().fullDays());
        assertEquals(5, result.counts().demandDays() - result.counts().fullDays());
        assertEquals(6, result.counts().emptyDays());
        assertEquals(0, result.totals().endVolumeM3());
        assertEquals(Optional.of(new ShortageSpell(25, 29, 5, 0.04)), result.longestShortage());
    }

    @Test
    void daysWithoutDemandAreNotCounted() {
        double[] inflow = {0, 0, 0, 0, 0, 0};
        double[] demand = {2, 0, 2, 0, 0, 2};
        BalanceResult result = TankBalance.run(inflow, demand, new StorageDesign(10, 3, YieldRule.YAS));
        assertEquals(new DayCounts(6, 3, 1, 4), result.counts());
        assertEquals(1.0 / 3, result.timeReliability().orElseThrow());
        assertEquals(0.5, result.volumetricReliability().orElseThrow());
        // The pause on days 3 and 4 does not end the shortage, nor lengthen it.
        assertEquals(Optional.of(new ShortageSpell(2, 5, 2, 3)), result.longestShortage());
    }

    @Test
    void longestAndDeepestShortageMayDiffer() {
        double[] inflow = {0, 0, 0, 9, 0, 0};
        double[] demand = {1, 1, 1, 2, 20, 0};
        BalanceResult result = TankBalance.run(inflow, demand, new StorageDesign(9, 0, YieldRule.YBS));
        assertEquals(Optional.of(new ShortageSpell(0, 2, 3, 3)), result.longestShortage());
        assertEquals(Optional.of(new ShortageSpell(4, 4, 1, 13)), result.deepestShortage());
    }

    @Test
    void drySpellSurvivedIsTheLongestWithoutAShortDay() {
        double[] inflow = {0, 0, 5, 0, 0, 0, 5, 0, 0, 0, 0, 0, 0};
        BalanceResult result = TankBalance.run(inflow, 1, new StorageDesign(5, 2, YieldRule.YBS));
        assertEquals(Optional.of(new DaySpell(7, 6)), result.longestDrySpell());
        assertEquals(Optional.of(new DaySpell(3, 3)), result.worstDrySpellSurvived());
    }

    @Test
    void noDemandHasNoReliability() {
        BalanceResult result = TankBalance.run(new double[] {1, 2}, 0, new StorageDesign(2, 0, YieldRule.YAS));
        assertTrue(result.volumetricReliability().isEmpty());
        assertTrue(result.timeReliability().isEmpty());
        assertEquals(1, result.totals().spilledM3());
    }

    @Test
    void shortageMapFollowsTheCalendar() {
        double[] inflow = new double[62];
        BalanceResult result = TankBalance.run(inflow, 1, new StorageDesign(40, 40, YieldRule.YAS));
        ShortageMap map = result.shortageMap(LocalDate.of(2024, 1, 31)); // 1 day, leap February, March, 1 of April
        assertEquals(4, map.months().size());
        assertEquals(new ShortageMap.MonthCell(YearMonth.of(2024, 2), 29, 29, 0, 29, 0), map.months().get(1));
        assertEquals(new ShortageMap.MonthCell(YearMonth.of(2024, 3), 31, 31, 21, 31, 21),
                map.month(YearMonth.of(2024, 3)).orElseThrow());
        assertEquals(new ShortageMap.MonthCell(YearMonth.of(2024, 4), 1, 1, 1, 1, 1), map.months().get(3));
    }

    @Test
    void weightedRuleNeverOverdrawsASmallTank() {
        // As printed the rule gives V' = min(1 + 10 - 3, 1) - 3 = -2.
        BalanceResult result = TankBalance.run(new double[] {10}, 10, new StorageDesign(1, 1, new YieldRule(0.5)));
        assertEquals(0, result.totals().endVolumeM3());
        assertEquals(4, result.totals().suppliedM3());
        assertEquals(7, result.totals().spilledM3());
    }

    @Test
    void catchmentInflow() {
        double[] inflow = new CatchmentInflow(60, 0.85, 0.5).inflowM3(new double[] {0, 0.3, 0.5, 10.5});
        assertEquals(0, inflow[0]);
        assertEquals(0, inflow[1]);
        assertEquals(0, inflow[2]);
        assertEquals(0.51, inflow[3], 1e-15);
    }

    @Test
    void demandAboveInflowHasNoTank() {
        assertEquals(new SizingAnswer.NoAnswer(SizingAnswer.Reason.DEMAND_ABOVE_INFLOW, 3, 4),
                size(new double[] {1, 2}, 2, 0.5));
        assertEquals(new SizingAnswer.NoAnswer(SizingAnswer.Reason.NO_DEMAND, 3, 0), size(new double[] {1, 2}, 0, 1));
    }

    @Test
    void demandEqualToInflowHasATank() {
        double[] inflow = {30, 0, 0};
        SizingAnswer.Sized sized = assertInstanceOf(SizingAnswer.Sized.class, size(inflow, 10, 1));
        assertEquals(30, sized.volumeM3()); // YAS draws the first day's demand from the store before the rain is in
        assertEquals(1, sized.timeReliability());
    }

    @Test
    void targetShareIsTakenInDecimal() {
        assertEquals(55, TankSizing.daysNeeded(0.55, 100));
        assertEquals(1388, TankSizing.daysNeeded(0.95, 1461));
        assertEquals(1, TankSizing.daysNeeded(1e-300, 5));
    }

    @Test
    void sizingStopsWhenCancelled() {
        double[] inflow = {30, 0, 0};
        double[] demand = TankBalance.constantDemand(10, 3);
        assertThrows(CancellationException.class,
                () -> TankSizing.smallestTank(inflow, demand, YieldRule.YAS, 1, () -> true));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, -1, 2_000_001, 1e300})
    void volumesOutOfRangeAreRefused(double bad) {
        StorageDesign design = new StorageDesign(1, 0, YieldRule.YAS);
        assertMessage("inflowM3 on day 1 is " + bad, () -> TankBalance.run(new double[] {0, bad}, 1, design));
        assertMessage("demandM3PerDay is " + bad, () -> TankBalance.run(new double[] {0}, bad, design));
        assertMessage("capacityM3 is " + bad, () -> new StorageDesign(bad, 0, YieldRule.YAS));
        assertMessage("startVolumeM3 is " + bad, () -> new StorageDesign(2_000_000, bad, YieldRule.YAS));
        assertMessage("inflowM3 on day 0 is " + bad, () -> SequentPeak.of(new double[] {bad}, new double[] {1}, 1));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, -1})
    void catchmentOutOfRangeIsRefused(double bad) {
        assertMessage("areaM2 is ", () -> new CatchmentInflow(bad, 0.8, 0));
        assertMessage("runoffRatio is ", () -> new CatchmentInflow(100, bad, 0));
        assertMessage("lossMm is ", () -> new CatchmentInflow(100, 0.8, bad));
        assertMessage("depthMm on day 0 is ", () -> new CatchmentInflow(1, 1, 0).inflowM3(new double[] {bad}));
        assertMessage("thetaRatio is ", () -> new YieldRule(bad));
        assertMessage("targetRatio is ", () -> size(new double[] {1}, 1, bad));
    }

    @Test
    void wrongShapesAreRefused() {
        StorageDesign design = new StorageDesign(1, 0, YieldRule.YAS);
        assertMessage("inflowM3 has no days", () -> TankBalance.run(new double[0], 1, design));
        assertMessage("demandM3 has 1 days; accepted is the 2 days",
                () -> TankBalance.run(new double[2], new double[1], design));
        assertMessage("startVolumeM3 is 2.0 m3; accepted is 0 to the capacity",
                () -> new StorageDesign(1, 2, YieldRule.YAS));
        assertMessage("passes is 0", () -> SequentPeak.of(new double[1], new double[1], 0));
        double[] flood = new double[3000];
        java.util.Arrays.fill(flood, 2_000_000);
        assertMessage("inflowM3 adds up to more than 4e9 m3 by day 2000", () -> TankBalance.run(flood, 1, design));
    }

    @Test
    void subnormalVolumesAreNone() {
        BalanceResult result = TankBalance.run(new double[] {Double.MIN_VALUE}, Double.MIN_VALUE,
                new StorageDesign(Double.MIN_VALUE, 0, new YieldRule(Double.MIN_VALUE)));
        assertEquals(0, result.totals().suppliedM3());
        assertTrue(result.timeReliability().isEmpty());
    }

    private static SizingAnswer size(double[] inflow, double demand, double target) {
        return TankSizing.smallestTank(inflow, TankBalance.constantDemand(demand, inflow.length), YieldRule.YAS,
                target, () -> false);
    }

    private static void assertMessage(String start, org.junit.jupiter.api.function.Executable action) {
        String message = assertThrows(IllegalArgumentException.class, action).getMessage();
        assertTrue(message.startsWith(start), message);
    }
}
