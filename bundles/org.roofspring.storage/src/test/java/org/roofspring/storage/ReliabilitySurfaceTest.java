package org.roofspring.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.CancellationException;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ReliabilitySurfaceTest {

    private static final SweepSettings YAS = SweepSettings.empty(YieldRule.YAS);

    // First rows of the real-record regression: litres.
    @Test
    void curveHoldsTheRegressionRow() throws IOException {
        double[] inflow = new CatchmentInflow(100, 0.8, 0).inflowM3(RealRecord.depthMm());
        double[] demand = TankBalance.constantDemand(0.2, inflow.length);
        ReliabilityCurve curve = ReliabilityCurve.of(inflow, demand, new double[] {10, 5, 5, 0}, YAS, () -> false);
        assertEquals(226.448, curve.suppliedM3(1));
        assertEquals(123.512, curve.spilledM3(1));
        assertEquals(4.12, curve.endVolumeM3(1));
        assertEquals(1112, curve.fullDays(1));
        assertEquals(1112, curve.fullDays(2));
        assertEquals(0, curve.fullDays(3));
        assertEquals(1461, curve.demandDays());
        assertEquals(5, curve.capacityM3(1));
        assertTrue(curve.timeReliability(0).orElseThrow() > curve.timeReliability(1).orElseThrow());
    }

    @Test
    void curveCrossesTheTargetAtTheVolumeThatSizingFinds() throws IOException {
        double[] inflow = new CatchmentInflow(100, 0.8, 0).inflowM3(RealRecord.depthMm());
        double[] demand = TankBalance.constantDemand(0.15, inflow.length);
        SizingAnswer.Sized sized = (SizingAnswer.Sized) TankSizing.smallestTank(inflow, demand, YieldRule.YBS, 0.97,
                () -> false);
        ReliabilityCurve curve = ReliabilityCurve.of(inflow, demand,
                new double[] {sized.volumeM3() - 1e-9, sized.volumeM3()}, SweepSettings.warm(YieldRule.YBS),
                () -> false);
        assertTrue(curve.timeReliability(0).orElseThrow() < 0.97);
        assertTrue(curve.timeReliability(1).orElseThrow() >= 0.97);
        assertEquals(sized.timeReliability(), curve.timeReliability(1).orElseThrow());
        assertEquals(sized.warmStartM3(), curve.startVolumeM3(1));
    }

    /** Were a number kept for each design and day, this would need 7 GB; the test heap has 1. */
    @Test
    void memoryDoesNotGrowWithDesignsTimesDays() {
        Random random = new Random(7);
        double[] depth = random.doubles(22_000).map(value -> value < 0.7 ? 0 : value * 20).toArray();
        double[] demand = TankBalance.constantDemand(0.4, depth.length);
        List<CatchmentInflow> roofs = IntStream.range(0, 200).mapToObj(i -> new CatchmentInflow(i, 0.8, 0)).toList();
        double[] tanks = IntStream.range(0, 200).mapToDouble(i -> i / 4.0).toArray();
        ReliabilitySurface surface = ReliabilitySurface.of(roofs, depth, demand, tanks, YAS, () -> false);
        assertEquals(200, surface.curves().size());
        assertEquals(TankBalance.run(roofs.get(137).inflowM3(depth), demand,
                new StorageDesign(tanks[151], 0, YieldRule.YAS)).totals().suppliedM3(),
                surface.curves().get(137).suppliedM3(151));
    }

    @Test
    void cheapestPairMeetsTheTarget() throws IOException {
        double[] depth = RealRecord.depthMm();
        List<CatchmentInflow> roofs = new ArrayList<>();
        for (double area : new double[] {40, 80, 120}) {
            roofs.add(new CatchmentInflow(area, 0.8, 0));
        }
        double[] tanks = {2, 5, 10, 20};
        ReliabilitySurface surface = ReliabilitySurface.of(roofs, depth,
                TankBalance.constantDemand(0.15, depth.length), tanks, YAS, () -> false);
        double[] roofCost = {400, 800, 1200};
        double[] tankCost = {200, 500, 1000, 2000};
        CheapestPair pair = CheapestPair.of(surface, roofCost, tankCost, 0.85).orElseThrow();
        for (int roof = 0; roof < 3; roof++) {
            for (int tank = 0; tank < 4; tank++) {
                boolean meets = surface.curves().get(roof).timeReliability(tank).orElseThrow() >= 0.85;
                assertTrue(!meets || roofCost[roof] + tankCost[tank] >= pair.cost());
            }
        }
        assertTrue(pair.timeReliability() >= 0.85);
        assertEquals(roofCost[pair.roof()] + tankCost[pair.tank()], pair.cost());
        assertEquals(Optional.empty(), CheapestPair.of(surface, roofCost, tankCost, 1));
    }

    @Test
    void equalCostsGoToTheMoreReliablePair() {
        double[] depth = {10, 0, 0, 0, 10, 0, 0, 0};
        ReliabilitySurface surface = ReliabilitySurface.of(List.of(new CatchmentInflow(100, 1, 0)), depth,
                TankBalance.constantDemand(0.5, 8), new double[] {0.5, 1, 2}, YAS, () -> false);
        assertEquals(1, CheapestPair.of(surface, new double[] {0}, new double[] {7, 7, 8}, 0.2).orElseThrow().tank());
    }

    @Test
    void stopsWhenCancelled() {
        assertThrows(CancellationException.class, () -> ReliabilityCurve.of(new double[1], new double[1],
                new double[] {1}, YAS, () -> true));
    }

    @Test
    void badInputIsNamed() {
        List<CatchmentInflow> roof = List.of(new CatchmentInflow(100, 1, 0));
        double[] one = {1};
        refused("capacityM3 of tank 1 is NaN", () -> ReliabilityCurve.of(one, one, new double[] {1, Double.NaN}, YAS,
                () -> false));
        refused("capacityM3 has no tanks", () -> ReliabilityCurve.of(one, one, new double[0], YAS, () -> false));
        refused("roofs is empty", () -> ReliabilitySurface.of(List.of(), one, one, one, YAS, () -> false));
        refused("depthMm has 1 days and demandM3 2",
                () -> ReliabilitySurface.of(roof, one, new double[2], one, YAS, () -> false));
        refused("depthMm on day 0 is -1.0",
                () -> ReliabilitySurface.of(roof, new double[] {-1}, one, one, YAS, () -> false));
        refused("inflow of the wettest day is ",
                () -> ReliabilitySurface.of(roof, new double[] {1e300}, one, one, YAS, () -> false));
        refused("startVolumeM3 is NaN", () -> new SweepSettings(YieldRule.YAS, Double.NaN, 0));
        refused("warmUpPasses is 11", () -> new SweepSettings(YieldRule.YAS, 0, 11));
        ReliabilitySurface surface = ReliabilitySurface.of(roof, one, one, one, YAS, () -> false);
        refused("roofCost has 2 values", () -> CheapestPair.of(surface, new double[2], one, 1));
        refused("tankCost holds NaN", () -> CheapestPair.of(surface, one, new double[] {Double.NaN}, 1));
        refused("targetRatio is 0.0", () -> CheapestPair.of(surface, one, one, 0));
    }

    private static void refused(String start, org.junit.jupiter.api.function.Executable action) {
        String message = assertThrows(IllegalArgumentException.class, action).getMessage();
        assertTrue(message.startsWith(start), message);
    }
}
