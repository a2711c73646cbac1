package org.roofspring.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** The batch equals the scalar reference, to the last microlitre, for every design. */
class ReliabilitySurfacePropertyTest {

    private static final double[] SHARES = {0.31, 0.5, 1, 2, 2.5, 7, 13};

    @Property(tries = 1000)
    void curveEqualsTheScalarReference(@ForAll long seed) {
        Random random = new Random(seed);
        int days = 1 + random.nextInt(120);
        double[] inflow = inflow(random, days);
        double[] demand = demand(random, days);
        // Now and then more tanks than one ladder holds; zero, equal and tiny tanks among them.
        double[] tanks = random.doubles(1 + random.nextInt(random.nextInt(8) == 0 ? 150 : 12))
                .map(value -> random.nextBoolean() ? Math.rint(value * 30) : value * 30).toArray();
        SweepSettings settings = new SweepSettings(rule(random), random.nextBoolean() ? 0 : random.nextInt(40),
                random.nextInt(3));
        ReliabilityCurve curve = ReliabilityCurve.of(inflow, demand, tanks, settings, () -> false);
        for (int tank = 0; tank < tanks.length; tank++) {
            assertSame(reference(inflow, demand, tanks[tank], settings), curve, tank);
        }
    }

    @Property(tries = 200)
    void surfaceEqualsTheScalarReference(@ForAll long seed) {
        Random random = new Random(seed);
        int days = 1 + random.nextInt(400);
        double[] depth = random.ints(days, 0, 5)
                .mapToDouble(kind -> kind == 0 ? random.nextInt(600) / 10.0 : kind == 1 ? 1 / 3.0 : 0).toArray();
        double[] demand = demand(random, days);
        List<CatchmentInflow> roofs = List.of(new CatchmentInflow(33.3 * random.nextInt(9), 0.85, 0.5),
                new CatchmentInflow(100, 0.8, 0), new CatchmentInflow(0, 1, 0));
        double[] tanks = SHARES.clone();
        SweepSettings settings = new SweepSettings(rule(random), random.nextInt(3), random.nextInt(2));
        ReliabilitySurface surface = ReliabilitySurface.of(roofs, depth, demand, tanks, settings, () -> false);
        for (int roof = 0; roof < roofs.size(); roof++) {
            double[] inflow = roofs.get(roof).inflowM3(depth);
            for (int tank = 0; tank < tanks.length; tank++) {
                assertSame(reference(inflow, demand, tanks[tank], settings), surface.curves().get(roof), tank);
            }
        }
    }

    @Example
    void zeroDemandZeroRainAndTanksSmallerThanADay() {
        double[] tanks = {0, 1e-9, 0.01, 0.1, 1, 2_000_000};
        double[] none = new double[50];
        double[] some = new double[50];
        Arrays.fill(some, 0.4);
        double[] storm = new double[50];
        storm[3] = 2_000_000;
        storm[4] = 0.4;
        for (double[] inflow : List.of(none, some, storm)) {
            for (double[] demand : List.of(none, some, storm)) {
                for (YieldRule rule : List.of(YieldRule.YAS, YieldRule.YBS, new YieldRule(0.5))) {
                    SweepSettings settings = SweepSettings.warm(rule);
                    ReliabilityCurve curve = ReliabilityCurve.of(inflow, demand, tanks, settings, () -> false);
                    for (int tank = 0; tank < tanks.length; tank++) {
                        assertSame(reference(inflow, demand, tanks[tank], settings), curve, tank);
                    }
                }
            }
        }
    }

    private static BalanceResult reference(double[] inflow, double[] demand, double tank, SweepSettings settings) {
        double start = Math.min(settings.startVolumeM3(), tank);
        for (int pass = 0; pass < settings.warmUpPasses(); pass++) {
            start = TankBalance.run(inflow, demand, new StorageDesign(tank, start, settings.rule())).totals()
                    .endVolumeM3();
        }
        return TankBalance.run(inflow, demand, new StorageDesign(tank, Math.min(start, tank), settings.rule()));
    }

    private static void assertSame(BalanceResult expected, ReliabilityCurve curve, int tank) {
        assertEquals(expected.totals().suppliedM3(), curve.suppliedM3(tank));
        assertEquals(expected.totals().spilledM3(), curve.spilledM3(tank));
        assertEquals(expected.totals().startVolumeM3(), curve.startVolumeM3(tank));
        assertEquals(expected.totals().endVolumeM3(), curve.endVolumeM3(tank));
        assertEquals(expected.counts().fullDays(), curve.fullDays(tank));
        assertEquals(expected.counts().demandDays(), curve.demandDays());
        assertEquals(expected.timeReliability(), curve.timeReliability(tank));
        assertEquals(expected.volumetricReliability(), curve.volumetricReliability(tank));
    }

    private static YieldRule rule(Random random) {
        return switch (random.nextInt(5)) {
            case 0 -> new YieldRule(random.nextDouble());
            case 1, 2 -> YieldRule.YAS;
            default -> YieldRule.YBS;
        };
    }

    private static double[] inflow(Random random, int days) {
        int dry = 1 + random.nextInt(8);
        return random.ints(days, 0, dry).mapToDouble(
                kind -> kind > 0 ? 0 : random.nextBoolean() ? random.nextInt(12) : random.nextDouble() * 12).toArray();
    }

    private static double[] demand(Random random, int days) {
        int mode = random.nextInt(4);
        return random.ints(days, 0, 5).mapToDouble(kind -> switch (mode) {
            case 0 -> 0.7;
            case 1 -> kind == 0 ? 0 : 1.5;
            case 2 -> kind == 0 ? 0 : random.nextInt(9) / 4.0;
            default -> kind == 0 ? 0 : kind == 1 ? random.nextInt(3) : random.nextDouble() * 3;
        }).toArray();
    }
}
