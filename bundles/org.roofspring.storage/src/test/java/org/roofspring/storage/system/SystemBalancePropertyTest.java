package org.roofspring.storage.system;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.roofspring.storage.BalanceResult;
import org.roofspring.storage.BalanceTotals;
import org.roofspring.storage.StorageDesign;
import org.roofspring.storage.TankBalance;
import org.roofspring.storage.YieldRule;

/** What must hold for every system; systems are drawn from a seed, because their parts must fit together. */
class SystemBalancePropertyTest {

    @Property
    void oneTankWithoutExtrasIsThePlainBalance(@ForAll long seed, @ForAll @DoubleRange(min = 0, max = 1) double theta) {
        Random random = new Random(seed);
        int days = 1 + random.nextInt(80);
        double[] inflow = inflow(random, days);
        double[] demand = demand(random, days);
        double capacity = random.nextInt(60) / 4.0;
        YieldRule rule = new YieldRule(random.nextBoolean() ? Math.rint(theta) : theta);
        BalanceResult plain = TankBalance.run(inflow, demand, new StorageDesign(capacity, capacity / 2, rule));
        BalanceResult system = SystemBalance.run(
                StorageSystem.single(Tank.plain("tank", capacity, capacity / 2), rule),
                new SystemSeries(List.of(inflow), List.of(demand), new double[0]), List.of(), () -> false).whole();
        assertArrayEquals(plain.endVolumesM3(), system.endVolumesM3());
        assertArrayEquals(plain.suppliedM3(), system.suppliedM3());
        assertEquals(plain.totals(), system.totals());
        assertEquals(plain.counts(), system.counts());
        assertEquals(plain.longestShortage(), system.longestShortage());
        assertEquals(plain.worstDrySpellSurvived(), system.worstDrySpellSurvived());
    }

    /** The recorder refuses a run whose whole numbers do not add up, so every run here is also that check. */
    @Property
    void massClosesWhateverHappens(@ForAll long seed) {
        Random random = new Random(seed);
        int days = 1 + random.nextInt(80);
        StorageSystem system = system(random);
        SystemSeries series = series(random, system, days);
        SystemResult result = SystemBalance.run(system, series, accidents(random, system, days), () -> false);
        BalanceTotals totals = result.whole().totals();
        double capacity = system.stages().stream().flatMap(stage -> stage.tanks().stream())
                .mapToDouble(Tank::capacityM3).sum();
        assertTrue(Math.abs(totals.residualM3()) <= 1e-9 * Math.max(totals.inflowM3(), capacity),
                () -> "residual " + totals.residualM3());
        double supplied = 0;
        for (UseResult use : result.uses()) {
            assertTrue(use.suppliedM3() <= use.demandM3());
            supplied += use.suppliedM3();
        }
        assertEquals(totals.suppliedM3(), supplied, 1e-9);
        for (int stage = 0; stage < system.stages().size(); stage++) {
            double most = system.stages().get(stage).tanks().stream().mapToDouble(Tank::capacityM3).sum();
            for (double volume : result.stageVolumesM3(stage)) {
                assertTrue(volume >= 0 && volume <= most, () -> volume + " of " + most);
            }
        }
    }

    @Property
    void aChainNeverBeatsOneTankOfTheSameVolume(@ForAll long seed) {
        Random random = new Random(seed);
        int days = 1 + random.nextInt(80);
        double[] inflow = inflow(random, days);
        double[] demand = demand(random, days);
        double first = random.nextInt(40) / 4.0;
        double second = random.nextInt(20) / 4.0;
        YieldRule rule = random.nextBoolean() ? YieldRule.YAS : YieldRule.YBS;
        StorageSystem chain = new StorageSystem(
                List.of(Stage.of(Tank.plain("cistern", first, 0)), Stage.of(Tank.plain("header", second, 0))),
                List.of(new Transfer(1000, 0, true)), List.of(Use.plain("use", 1)), Optional.empty(), rule);
        double supplied = SystemBalance.run(chain,
                new SystemSeries(List.of(inflow, new double[days]), List.of(demand), new double[0]), List.of(),
                () -> false).whole().totals().suppliedM3();
        double alone = TankBalance.run(inflow, demand, new StorageDesign(first + second, 0, rule)).totals()
                .suppliedM3();
        assertTrue(supplied <= alone, () -> supplied + " against " + alone);
    }

    @Property(tries = 100)
    void accidentStudyEqualsTwoWholeRuns(@ForAll long seed, @ForAll @IntRange(min = 0, max = 39) int day) {
        Random random = new Random(seed);
        StorageSystem system = system(random);
        SystemSeries series = series(random, system, 40);
        List<Accident> drawn = accidents(random, system, 40);
        Accident accident = (drawn.isEmpty() ? new Accident.PumpOut(0, 7) : drawn.getFirst()).on(day);
        AccidentEffect effect = AccidentStudy.effect(system, series, accident, () -> false);
        BalanceResult before = SystemBalance.run(system, series, List.of(), () -> false).whole();
        BalanceResult after = SystemBalance.run(system, series, List.of(accident), () -> false).whole();
        assertEquals(before.totals().suppliedM3() - after.totals().suppliedM3(), effect.extraMissingM3(), 1e-9);
        assertEquals(before.counts().fullDays() - after.counts().fullDays(), effect.extraShortDays());
        AccidentEffect worst = AccidentStudy.worst(system, series, accident, () -> false);
        assertEquals(worstOneByOne(system, series, accident), worst);
    }

    /** Every day on its own, from the whole record: what the study finds by joining ways that it has been before. */
    private static AccidentEffect worstOneByOne(StorageSystem system, SystemSeries series, Accident accident) {
        AccidentEffect worst = null;
        for (int day = 0; day < series.days(); day++) {
            AccidentEffect effect = AccidentStudy.effect(system, series, accident.on(day), () -> false);
            if (worst == null || effect.extraMissingM3() > worst.extraMissingM3()
                    || effect.extraMissingM3() == worst.extraMissingM3() && effect.lostM3() > worst.lostM3()) {
                worst = effect;
            }
        }
        return worst;
    }

    private static StorageSystem system(Random random) {
        int count = 1 + random.nextInt(3);
        List<Stage> stages = new ArrayList<>();
        List<Transfer> transfers = new ArrayList<>();
        for (int stage = 0; stage < count; stage++) {
            List<Tank> tanks = new ArrayList<>();
            for (int tank = random.nextInt(3); tank >= 0; tank--) {
                tanks.add(tank(random));
            }
            boolean next = stage < count - 1 && random.nextBoolean();
            stages.add(new Stage("stage", tanks, random.nextBoolean() ? Stage.Joint.OPEN : Stage.Joint.VALVED,
                    next ? Stage.Overflow.NEXT_STAGE : Stage.Overflow.AWAY));
            if (stage > 0) {
                transfers.add(new Transfer(random.nextInt(5), random.nextInt(4) / 2.0, random.nextBoolean()));
            }
        }
        List<Use> uses = new ArrayList<>();
        for (int use = random.nextInt(3); use >= 0; use--) {
            List<RationStep> ration = random.nextBoolean() ? List.of()
                    : List.of(new RationStep(random.nextInt(10), random.nextDouble()));
            uses.add(new Use("use", random.nextInt(count), random.nextInt(3), random.nextInt(3), random.nextBoolean(),
                    ration));
        }
        Optional<TopUp> topUp = random.nextBoolean() ? Optional.empty()
                : Optional.of(new TopUp(random.nextInt(count), 1 + random.nextInt(5), random.nextInt(4),
                        random.nextInt(5), random.nextInt(4), 10));
        double theta = random.nextInt(3) == 0 ? random.nextDouble() : random.nextInt(2);
        return new StorageSystem(stages, transfers, uses, topUp, new YieldRule(theta));
    }

    private static Tank tank(Random random) {
        double capacity = random.nextInt(30) / 4.0;
        Leak leak = random.nextBoolean() ? Leak.NONE
                : new Leak(random.nextDouble() / 5, random.nextDouble() / 5, random.nextInt(3));
        return new Tank("tank", capacity, capacity * random.nextInt(3) / 4, capacity * random.nextDouble(),
                random.nextBoolean() ? 0 : random.nextDouble() * 20, leak);
    }

    private static SystemSeries series(Random random, StorageSystem system, int days) {
        List<double[]> inflows = system.stages().stream().map(stage -> inflow(random, days)).toList();
        List<double[]> demands = system.uses().stream().map(use -> demand(random, days)).toList();
        double[] evaporation = random.nextBoolean() ? new double[0]
                : random.doubles(days).map(value -> value * 10).toArray();
        return new SystemSeries(inflows, demands, evaporation);
    }

    private static List<Accident> accidents(Random random, StorageSystem system, int days) {
        List<Accident> accidents = new ArrayList<>();
        for (int i = random.nextInt(4); i > 0; i--) {
            int day = random.nextInt(days);
            int length = 1 + random.nextInt(20);
            int stage = random.nextInt(system.stages().size());
            int tank = random.nextInt(system.stages().get(stage).tanks().size());
            accidents.add(switch (random.nextInt(5)) {
                case 0 -> new Accident.TapLeftOpen(day, random.nextInt(system.uses().size()), random.nextInt(20));
                case 1 -> new Accident.Burst(day, length, stage, tank, random.nextInt(5));
                case 2 -> new Accident.Contaminated(day, stage, tank);
                case 3 -> new Accident.TankIsolated(day, length, stage, tank);
                default -> new Accident.PumpOut(day, length);
            });
        }
        return accidents;
    }

    private static double[] inflow(Random random, int days) {
        return random.ints(days, 0, 4).mapToDouble(kind -> switch (kind) {
            case 0 -> random.nextInt(12);
            case 1 -> random.nextDouble() * 12;
            default -> 0;
        }).toArray();
    }

    private static double[] demand(Random random, int days) {
        return random.ints(days, 0, 5).mapToDouble(kind -> switch (kind) {
            case 0 -> 0;
            case 1 -> random.nextDouble() * 4;
            default -> random.nextInt(12) / 4.0;
        }).toArray();
    }
}
