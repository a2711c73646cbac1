package org.roofspring.storage.system;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.roofspring.storage.BalanceTotals;
import org.roofspring.storage.YieldRule;

/** Each part of the system worked by hand on a few days. */
class SystemBalanceTest {

    private static final double[] NO_EVAPORATION = {};

    @Test
    void deadVolumeIsNotSupplied() {
        Tank tank = new Tank("cistern", 10, 2, 5, 0, Leak.NONE);
        SystemResult result = run(one(tank), series(new double[4], constant(1, 4)));
        assertArrayEquals(new double[] {4, 3, 2, 2}, result.stageVolumesM3(0));
        assertEquals(3, result.whole().counts().fullDays());
        assertEquals(2, result.whole().counts().emptyDays());
    }

    @Test
    void evaporationTakesWhatAnOpenSurfaceLosesAndNoMore() {
        Tank pond = new Tank("pond", 10, 1, 1.02, 5, Leak.NONE);
        SystemResult result = run(one(pond),
                new SystemSeries(List.of(new double[3]), List.of(new double[3]), new double[] {4, 300, 4}));
        assertArrayEquals(new double[] {1, 0, 0}, result.stageVolumesM3(0));
        assertEquals(1.02, result.whole().totals().evaporatedM3());
    }

    @Test
    void leakTakesAShareAndAConstantAboveItsHeight() {
        Tank tank = new Tank("cracked", 100, 0, 50, 0, new Leak(0.1, 1, 20));
        SystemResult result = run(one(tank), series(new double[2], new double[2]));
        assertArrayEquals(new double[] {46, 42.4}, result.stageVolumesM3(0));
        assertEquals(7.6, result.whole().totals().leakedM3());
    }

    @Test
    void joinedTanksActAsOne() {
        Stage pair = new Stage("pair", List.of(Tank.plain("a", 4, 1), Tank.plain("b", 6, 2)), Stage.Joint.OPEN,
                Stage.Overflow.AWAY);
        SystemResult result = run(chain(List.of(pair), List.of(), YieldRule.YBS, Use.plain("all", 0)),
                series(new double[] {9, 0, 0}, constant(1, 3)));
        assertArrayEquals(new double[] {10, 9, 8}, result.stageVolumesM3(0));
        assertEquals(1, result.whole().totals().spilledM3());
    }

    @Test
    void transferFillsTheLaterStageAndKeepsItsReserve() {
        Stage cistern = Stage.of(new Tank("cistern", 20, 0, 6, 0, Leak.NONE));
        Stage header = Stage.of(Tank.plain("header", 1, 0));
        StorageSystem system = chain(List.of(cistern, header), List.of(new Transfer(2, 1.5, true)), YieldRule.YAS,
                Use.plain("taps", 1));
        SystemResult result = run(system, new SystemSeries(List.of(new double[4], new double[4]),
                List.of(constant(1.6, 4)), NO_EVAPORATION));
        // Day 0: header empty, 1.6 through the pump, 0.4 left of its 2.0 goes into the header.
        // Day 1: 0.4 + 1.2 through the pump, 0.8 more. Day 2: 0.8 + 0.5 (down to the reserve): short by 0.3.
        assertArrayEquals(new double[] {4, 2, 1.5, 1.5}, result.stageVolumesM3(0));
        assertArrayEquals(new double[] {0.4, 0.8, 0, 0}, result.stageVolumesM3(1));
        assertEquals(1.3, result.whole().suppliedM3(2));
        assertEquals(4.5, result.transferredM3(0));
    }

    @Test
    void overflowMayGoToTheNextStage() {
        Stage first = new Stage("first", List.of(Tank.plain("first", 2, 0)), Stage.Joint.OPEN,
                Stage.Overflow.NEXT_STAGE);
        StorageSystem system = chain(List.of(first, Stage.of(Tank.plain("second", 3, 0))),
                List.of(new Transfer(0, 0, false)), YieldRule.YAS, Use.plain("use", 1));
        SystemResult result = run(system, new SystemSeries(List.of(new double[] {4, 4}, new double[2]),
                List.of(new double[] {0, 1}), NO_EVAPORATION));
        assertArrayEquals(new double[] {2, 2}, result.stageVolumesM3(0));
        assertArrayEquals(new double[] {2, 2}, result.stageVolumesM3(1));
        assertEquals(3, result.whole().totals().spilledM3());
    }

    @Test
    void priorityDrawsFirstAndAHigherOutletLeavesAReserve() {
        Use garden = new Use("garden", 0, 2, 3, false, List.of());
        Use kitchen = new Use("kitchen", 0, 1, 0, false, List.of());
        StorageSystem system = chain(List.of(Stage.of(Tank.plain("tank", 10, 6))), List.of(), YieldRule.YAS, garden,
                kitchen);
        SystemResult result = run(system, new SystemSeries(List.of(new double[4]),
                List.of(constant(2, 4), constant(1, 4)), NO_EVAPORATION));
        // Day 0: kitchen 1, garden 2. Day 1: kitchen 1, garden nothing: 2 is below its outlet. The reserve lasts.
        assertArrayEquals(new double[] {3, 2, 1, 0}, result.stageVolumesM3(0));
        assertEquals(new UseResult("garden", 8, 2, 4, 1, 0), result.uses().get(0));
        assertEquals(new UseResult("kitchen", 4, 4, 4, 4, 0), result.uses().get(1));
        assertEquals(1, result.whole().counts().fullDays());
    }

    @Test
    void rationingFollowsWhatIsInStore() {
        Use use = new Use("wash", 0, 0, 0, false, List.of(new RationStep(5, 0.5), new RationStep(2, 0.25)));
        SystemResult result = run(chain(List.of(Stage.of(Tank.plain("tank", 10, 7))), List.of(), YieldRule.YAS, use),
                series(new double[6], constant(2, 6)));
        // 7: 2. 5 is not below 5: 2. 3: 1. 2 is not below 2: 1. 1: 0.5. 0.5: 0.5.
        assertArrayEquals(new double[] {2, 2, 1, 1, 0.5, 0.5}, result.whole().suppliedM3());
        assertEquals(4, result.uses().getFirst().rationedDays());
        assertEquals(2, result.whole().counts().fullDays());
    }

    @Test
    void loadsAreOrderedDelayedCountedAndPriced() {
        TopUp tanker = new TopUp(0, 5, 3, 5, 1, 40);
        StorageSystem system = new StorageSystem(List.of(Stage.of(Tank.plain("tank", 9, 4))), List.of(),
                List.of(Use.plain("use", 0)), Optional.of(tanker), YieldRule.YAS);
        SystemResult result = run(system, series(new double[] {0, 0, 6, 0, 0, 0, 0, 0}, constant(1, 8)));
        // Day 0: 3 is not below 3. Day 1: 2, order. Day 2: it rains 6, 7 in store. Day 3: the load finds room for 2,
        // the other 3 go back; 8 in store. Day 7: 4.
        assertArrayEquals(new double[] {3, 2, 7, 8, 7, 6, 5, 4}, result.whole().endVolumesM3());
        assertEquals(new SystemResult.TopUpResult(1, 1, 2, 40), result.topUp());
        assertEquals(2, result.whole().totals().toppedUpM3());
    }

    @Test
    void loadNeedsRoomToBeOrdered() {
        TopUp tanker = new TopUp(0, 5, 3, 8, 0, 40);
        StorageSystem system = new StorageSystem(List.of(Stage.of(Tank.plain("tank", 9, 3))), List.of(),
                List.of(Use.plain("use", 0)), Optional.of(tanker), YieldRule.YAS);
        SystemResult result = run(system, series(new double[3], constant(1, 3)));
        // Day 0 leaves 2, room 7: no order. Day 1 leaves 1, room 8: order; it is there on the morning of day 2.
        assertArrayEquals(new double[] {2, 1, 5}, result.whole().endVolumesM3());
    }

    @Test
    void tapLeftOpenTakesWhatItsOutletReaches() {
        StorageSystem system = one(new Tank("tank", 10, 1, 8, 0, Leak.NONE));
        SystemResult some = run(system, series(new double[2], constant(1, 2)), new Accident.TapLeftOpen(0, 0, 3));
        assertArrayEquals(new double[] {4, 3}, some.whole().endVolumesM3());
        SystemResult all = run(system, series(new double[2], constant(1, 2)), new Accident.TapLeftOpen(0, 0, 30));
        assertArrayEquals(new double[] {1, 1}, all.whole().endVolumesM3());
        assertEquals(7, all.whole().totals().leakedM3());
    }

    @Test
    void shutValvesHoldAnAccidentToOneTank() {
        for (Accident accident : List.of(new Accident.TapLeftOpen(0, 0, 30), new Accident.Contaminated(0, 0, 1),
                new Accident.Burst(0, 1, 0, 0, 0))) {
            assertArrayEquals(new double[] {0}, run(pair(Stage.Joint.OPEN), series(new double[1], new double[1]),
                    accident).whole().endVolumesM3());
            assertArrayEquals(new double[] {3}, run(pair(Stage.Joint.VALVED), series(new double[1], new double[1]),
                    accident).whole().endVolumesM3());
        }
    }

    @Test
    void burstHoldsTheLevelDownUntilItIsMended() {
        SystemResult result = run(one(Tank.plain("tank", 10, 8)), series(new double[] {0, 5, 5}, new double[3]),
                new Accident.Burst(0, 2, 0, 0, 4));
        assertArrayEquals(new double[] {4, 4, 9}, result.whole().endVolumesM3());
        assertEquals(4, result.whole().totals().leakedM3());
        assertEquals(5, result.whole().totals().spilledM3());
    }

    @Test
    void isolatedTankLeavesItsWaterToTheOtherAsFarAsThereIsRoom() {
        SystemResult result = run(pair(Stage.Joint.VALVED), series(new double[] {0, 5, 5}, new double[3]),
                new Accident.TankIsolated(0, 2, 0, 0));
        // 6 in store, 5 is what the other holds: 1 is let out; 5 spills while it is off.
        assertArrayEquals(new double[] {5, 5, 10}, result.whole().endVolumesM3());
        assertEquals(1, result.whole().totals().dumpedM3());
        assertEquals(5, result.whole().totals().spilledM3());
    }

    @Test
    void pumpOutLeavesTheHeaderAndGravityUses() {
        Stage cistern = Stage.of(Tank.plain("cistern", 20, 10));
        Stage header = Stage.of(Tank.plain("header", 2, 2));
        StorageSystem system = chain(List.of(cistern, header), List.of(new Transfer(5, 0, true)), YieldRule.YAS,
                Use.plain("taps", 1), new Use("yard", 0, 0, 0, true, List.of()), Use.plain("bucket", 0));
        SystemResult result = run(system, new SystemSeries(List.of(new double[4], new double[4]),
                List.of(constant(1, 4), constant(0.5, 4), constant(0.25, 4)), NO_EVAPORATION),
                new Accident.PumpOut(0, 3));
        assertEquals(3, result.uses().get(0).fullDays());
        assertEquals(1, result.uses().get(1).fullDays());
        assertEquals(4, result.uses().get(2).fullDays());
    }

    @Test
    void worstMomentForThePumpIsWhereTheHeaderCannotBridge() {
        double[] demand = constant(1, 60);
        Arrays.fill(demand, 20, 40, 0);
        demand[45] = 3;
        StorageSystem system = chain(
                List.of(Stage.of(Tank.plain("cistern", 100, 100)), Stage.of(Tank.plain("header", 2, 2))),
                List.of(new Transfer(5, 0, true)), YieldRule.YAS, Use.plain("taps", 1));
        AccidentEffect effect = AccidentStudy.worst(system,
                new SystemSeries(List.of(new double[60], new double[60]), List.of(demand), NO_EVAPORATION),
                new Accident.PumpOut(0, 5), () -> false);
        // Five days that hold the day of 3: 7 asked, 2 in the header; the first such five days are 41 to 45.
        assertEquals(new Accident.PumpOut(41, 5), effect.accident());
        assertEquals(5, effect.extraMissingM3());
    }

    @Test
    void twoTanksAreWorthHalfTheWater() {
        double[] inflow = new double[200];
        inflow[0] = 100;
        AccidentStudy.Comparison comparison = AccidentStudy.twoTanks(one(Tank.plain("tank", 100, 0)),
                series(inflow, constant(0.5, 200)), new Accident.Contaminated(0, 0, 0), 0, () -> false);
        // Worst on day 1: one tank loses all 100, two lose 50; the demand still to come is 99.5.
        assertEquals(1, comparison.without().accident().firstDay());
        assertEquals(99.5, comparison.without().extraMissingM3());
        assertEquals(49.5, comparison.sparedM3(), 0.5);
        assertTrue(comparison.with().extraMissingM3() > 0);
    }

    @Test
    void reserveBelowAHigherOutletSurvivesATapLeftOpen() {
        Use garden = new Use("garden", 0, 2, 0, false, List.of());
        Use kitchen = new Use("kitchen", 0, 1, 0, false, List.of());
        StorageSystem system = chain(List.of(Stage.of(Tank.plain("tank", 10, 10))), List.of(), YieldRule.YAS, garden,
                kitchen);
        SystemSeries series = new SystemSeries(List.of(new double[10]), List.of(new double[10], constant(0.5, 10)),
                NO_EVAPORATION);
        AccidentStudy.Comparison comparison = AccidentStudy.reserve(system, series,
                new Accident.TapLeftOpen(0, 0, 100), 0, 4, () -> false);
        assertEquals(5, comparison.without().extraMissingM3());
        assertEquals(1, comparison.with().extraMissingM3());
        assertEquals(4, comparison.sparedM3());
    }

    @Test
    void runStopsWhenCancelled() {
        StorageSystem system = one(Tank.plain("tank", 1, 0));
        SystemSeries series = series(new double[1], new double[1]);
        assertThrows(CancellationException.class, () -> SystemBalance.run(system, series, List.of(), () -> true));
        assertThrows(CancellationException.class,
                () -> AccidentStudy.worst(system, series, new Accident.PumpOut(0, 1), () -> true));
    }

    @Test
    void badInputIsNamed() {
        StorageSystem system = one(Tank.plain("tank", 1, 0));
        refused("inflowM3 has 2 series; accepted is 1", () -> run(system,
                new SystemSeries(List.of(new double[1], new double[1]), List.of(new double[1]), NO_EVAPORATION)));
        refused("evaporationMm on day 0 is NaN", () -> run(system,
                new SystemSeries(List.of(new double[1]), List.of(new double[1]), new double[] {Double.NaN})));
        refused("demandM3 series 0 on day 0 is -1.0", () -> run(system, series(new double[1], new double[] {-1})));
        refused("demandM3 has a series of 2 days", () -> series(new double[1], new double[2]));
        refused("firstDay is 1; accepted is 0 to 0",
                () -> run(system, series(new double[1], new double[1]), new Accident.PumpOut(1, 1)));
        refused("tank is 1; accepted is 0 to 0",
                () -> run(system, series(new double[1], new double[1]), new Accident.Contaminated(0, 0, 1)));
        refused("deadVolumeM3 is 2.0", () -> new Tank("t", 1, 2, 0, 0, Leak.NONE));
        refused("startVolumeM3 is 2.0", () -> Tank.plain("t", 1, 2));
        refused("openSurfaceM2 is NaN", () -> new Tank("t", 1, 0, 0, Double.NaN, Leak.NONE));
        refused("ratioPerDay is 2.0", () -> new Leak(2, 0, 0));
        refused("loadM3 is 0.0", () -> new TopUp(0, 0, 1, 1, 0, 1));
        refused("transfers has 0 entries; accepted is 1", () -> chain(
                List.of(Stage.of(Tank.plain("a", 1, 0)), Stage.of(Tank.plain("b", 1, 0))), List.of(), YieldRule.YAS,
                Use.plain("use", 0)));
        refused("stage of use u is 1", () -> chain(List.of(Stage.of(Tank.plain("a", 1, 0))), List.of(),
                YieldRule.YAS, Use.plain("u", 1)));
        refused("days is 0", () -> new Accident.PumpOut(0, 0));
    }

    @Test
    void totalsNameEveryWayOut() {
        Tank tank = new Tank("tank", 10, 0, 10, 1, new Leak(0, 0.5, 0));
        BalanceTotals totals = run(one(tank), new SystemSeries(List.of(new double[] {0, 20}), List.of(constant(1, 2)),
                new double[] {100, 0}), new Accident.Contaminated(1, 0, 0)).whole().totals();
        assertEquals(new BalanceTotals(20, 0, 2, 1, 10, 0.1, 0.5, 8.4, 10, 10), totals);
    }

    private static StorageSystem pair(Stage.Joint joint) {
        return chain(List.of(new Stage("pair", List.of(Tank.plain("a", 5, 3), Tank.plain("b", 5, 3)), joint,
                Stage.Overflow.AWAY)), List.of(), YieldRule.YAS, Use.plain("use", 0));
    }

    private static StorageSystem one(Tank tank) {
        return StorageSystem.single(tank, YieldRule.YAS);
    }

    private static StorageSystem chain(List<Stage> stages, List<Transfer> transfers, YieldRule rule, Use... uses) {
        return new StorageSystem(stages, transfers, List.of(uses), Optional.empty(), rule);
    }

    private static SystemSeries series(double[] inflow, double[] demand) {
        return new SystemSeries(List.of(inflow), List.of(demand), NO_EVAPORATION);
    }

    private static SystemResult run(StorageSystem system, SystemSeries series, Accident... accidents) {
        return SystemBalance.run(system, series, List.of(accidents), () -> false);
    }

    private static double[] constant(double value, int days) {
        double[] values = new double[days];
        Arrays.fill(values, value);
        return values;
    }

    private static void refused(String start, org.junit.jupiter.api.function.Executable action) {
        String message = assertThrows(IllegalArgumentException.class, action).getMessage();
        assertTrue(message.startsWith(start), message);
    }
}
