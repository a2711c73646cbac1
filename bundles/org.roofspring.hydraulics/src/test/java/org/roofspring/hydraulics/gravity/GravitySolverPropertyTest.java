package org.roofspring.hydraulics.gravity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.CancellationException;

import org.roofspring.hydraulics.Fittings;
import org.roofspring.hydraulics.HeadLoss;
import org.roofspring.hydraulics.PipeRun;
import org.roofspring.hydraulics.WaterProperties;

import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Scale;

class GravitySolverPropertyTest {
    private static final double FT = 0.3048;
    private static final double INCH = 0.0254;
    private static final double GPM = 3.785411784e-3 / 60;
    private static final GravityState FULL = new GravityState(6, 20, false);

    private static GravityFlow openAll(GravityTree tree, GravityState state) {
        return GravitySolver.open(tree, state, Supplies.all(tree), () -> false);
    }

    /**
     * Crane TP 410, Example 7.19, as quoted by the documentation of the open library "fluids": 11.5 ft of head through
     * 10 ft of 3 in, then 20 ft of 2 in schedule 40 give 137 gpm (the library 136.7) of water at 60 degF. The list of
     * fittings (sharp entrance and mitre bend of 60 fT on the 3 in; narrowing, gate valve and exit on the 2 in) is from
     * memory, so this shows agreement, not proof.
     */
    @Example
    void craneGravityDischarge() {
        double wide = 3.068 * INCH;
        double narrow = 2.067 * INCH;
        double steel = 0.0018 * INCH;
        PipeRun first = new PipeRun(wide, 10 * FT, steel, 0.5 + 60 * Fittings.turbulentFactor(wide));
        PipeRun second = new PipeRun(narrow, 20 * FT, steel,
                Fittings.suddenNarrowingK(wide, narrow) + 8 * Fittings.turbulentFactor(narrow));
        double velocityHeadAtOneGpm = new PipeRun(narrow, 0, 0, 1).lossAt(GPM, WaterProperties.at(15)).fittingLossM();
        GravityTree tree = GravityTree.of("tank", List.of(new Node("tank", 1), new Node("join", 0), new Node("end", 0)),
                List.of(Reach.of("3 in", "tank", "join", first), Reach.of("2 in", "join", "end", second)),
                List.of(new Outlet("exit", "end", HeadLoss.rated(GPM, velocityHeadAtOneGpm, 2), 100 * GPM)));
        GravityFlow flow = openAll(tree, new GravityState(11.5 * FT, (60 - 32) / 1.8, false));
        assertEquals(137, flow.totalFlowM3PerS() / GPM, 0.01 * 137);
    }

    /** Closed form: fittings and tap alone, h = (a + b) Q^2. */
    @Example
    void oneTapByAlgebra() {
        PipeRun bend = new PipeRun(0.02, 0, 0, 3);
        double perFlow2 = bend.lossAt(1e-3, WaterProperties.at(20)).fittingLossM() / 1e-6;
        GravityTree tree = GravityTree.of("a", List.of(new Node("a", 0), new Node("b", 1)),
                List.of(Reach.of("r", "a", "b", bend)), List.of(new Outlet("o", "b", Supplies.tap(), 1e-4)));
        GravityFlow flow = openAll(tree, FULL);
        assertEquals(Math.sqrt(5 / (perFlow2 + 2 / 0.04e-6)), flow.totalFlowM3PerS(), 1e-15);
        assertEquals(flow.weakest(), flow.outlets().get(0));
    }

    /** Independent: one outlet after another by plain bisection with the others held, until nothing moves. */
    @Property(tries = 25)
    void agreesWithSolvingOneOutletAfterAnother(@ForAll @LongRange(min = 0, max = 1_000_000) long seed,
            @ForAll boolean worn) {
        GravityTree tree = Supplies.random(seed);
        GravityState state = new GravityState(4.2, 20, worn);
        Map<String, Double> slow = oneAfterAnother(tree, state);
        for (GravityFlow.OutletFlow each : openAll(tree, state).outlets()) {
            assertEquals(slow.get(each.outlet().id()), each.flowM3PerS(), 2e-9,
                    each.outlet().id() + " of seed " + seed);
        }
    }

    private static Map<String, Double> oneAfterAnother(GravityTree tree, GravityState state) {
        Map<String, Double> flows = new LinkedHashMap<>();
        tree.outlets().forEach(outlet -> flows.put(outlet.id(), 0.0));
        double moved = 1;
        for (int sweep = 0; moved > 1e-11; sweep++) {
            assertTrue(sweep < 3000, "the slow way did not settle");
            moved = 0;
            for (Outlet outlet : tree.outlets()) {
                double before = flows.get(outlet.id());
                double low = 0;
                double high = 1e-2;
                for (int k = 0; k < 45; k++) {
                    double middle = (low + high) / 2;
                    flows.put(outlet.id(), middle);
                    if (residual(tree, state, flows, outlet) > outlet.tap().headM(middle)) {
                        low = middle;
                    } else {
                        high = middle;
                    }
                }
                flows.put(outlet.id(), low < 1e-14 ? 0 : low);
                moved = Math.max(moved, Math.abs(low - before));
            }
        }
        return flows;
    }

    private static double residual(GravityTree tree, GravityState state, Map<String, Double> flows, Outlet outlet) {
        double head = state.waterLevelM() - tree.node(outlet.node()).elevationM();
        WaterProperties water = WaterProperties.at(state.temperatureC());
        for (Reach reach : tree.wayTo(outlet.node())) {
            double sum = 0;
            for (Outlet other : tree.outlets()) {
                sum += tree.wayTo(other.node()).contains(reach) ? flows.get(other.id()) : 0;
            }
            head -= reach.devices(state.worn()).headM(sum);
            for (PipeRun pipe : reach.pipes(state.worn())) {
                head -= pipe.lossAt(sum, water).totalLossM();
            }
        }
        return head;
    }

    @Property(tries = 100)
    void flowsAndHeadsBalance(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        GravityTree tree = Supplies.random(seed);
        GravityFlow flow = openAll(tree, new GravityState(4.2, 20, false));
        for (GravityFlow.OutletFlow each : flow.outlets()) {
            if (each.flowM3PerS() > 0) {
                assertEquals(each.residualHeadM(), each.outlet().tap().headM(each.flowM3PerS()), 1e-9);
            } else {
                assertTrue(each.residualHeadM() <= 1e-9, "an outlet with head over it runs");
            }
        }
        for (Reach reach : tree.reaches()) {
            double drawn = flow.outlets().stream().filter(each -> tree.wayTo(each.outlet().node()).contains(reach))
                    .mapToDouble(GravityFlow.OutletFlow::flowM3PerS).sum();
            assertEquals(drawn, flow.flowByReach().get(reach.id()), 1e-18);
        }
    }

    @Property(tries = 30)
    void anotherOpenTapTakesFromTheOthersAndAHigherTankGives(@ForAll @LongRange(min = 0, max = 1_000_000) long seed,
            @ForAll @Scale(6) @DoubleRange(min = 0.001, max = 3) double rise) {
        GravityTree tree = Supplies.random(seed);
        GravityState state = new GravityState(4.2, 20, false);
        GravityFlow all = openAll(tree, state);
        GravityFlow higher = openAll(tree, new GravityState(4.2 + rise, 20, false));
        for (int i = 0; i < all.outlets().size(); i++) {
            Outlet outlet = all.outlets().get(i).outlet();
            GravityFlow alone = GravitySolver.open(tree, state, Set.of(outlet.id()), () -> false);
            assertTrue(alone.totalFlowM3PerS() >= all.outlets().get(i).flowM3PerS() - 1e-12);
            assertTrue(higher.outlets().get(i).flowM3PerS() >= all.outlets().get(i).flowM3PerS() - 1e-12);
        }
    }

    @Property(tries = 20)
    void leastLevelJustServesTheWeakest(@ForAll @LongRange(min = 0, max = 1_000_000) long seed) {
        GravityTree tree = Supplies.random(seed);
        GravityState state = new GravityState(0, 20, true);
        OptionalDouble found = GravitySolver.leastWaterLevelM(tree, state, Supplies.all(tree), () -> false);
        if (found.isEmpty()) {
            assertTrue(openAll(tree, new GravityState(1000, 20, true)).weakest().shareOfWanted() < 1);
            return;
        }
        double level = found.getAsDouble();
        assertEquals(1, openAll(tree, new GravityState(level, 20, true)).weakest().shareOfWanted(), 1e-9);
        assertTrue(openAll(tree, new GravityState(level - 0.01, 20, true)).weakest().shareOfWanted() < 1);
        double atFlows = GravitySolver.leastWaterLevelAtFlowsM(tree, state,
                GravitySolver.wantedFlows(tree, Supplies.all(tree)));
        assertTrue(atFlows <= level + 1e-9, "taps open wide draw more than they want where they are near");
    }

    @Example
    void fouledFilterTakesFromEveryTap() {
        GravityTree tree = Supplies.house();
        GravityFlow clean = openAll(tree, FULL);
        GravityFlow fouled = openAll(tree, new GravityState(6, 20, true));
        for (int i = 0; i < 3; i++) {
            assertTrue(fouled.outlets().get(i).flowM3PerS() < clean.outlets().get(i).flowM3PerS());
        }
        assertEquals("yard tap", clean.weakest().outlet().id());
        assertEquals(clean.totalFlowM3PerS(), clean.flowByReach().get("main"), 1e-18);
        assertEquals(6, clean.headByNode().get("tank"));
    }

    @Example
    void aTapAboveTheGradeLineStaysDry() {
        GravityTree tree = GravityTree.of("tank", List.of(new Node("tank", 0), new Node("join", 0),
                new Node("low", -20), new Node("high", 5.9)),
                List.of(Reach.of("main", "tank", "join", Supplies.pipe(0.013, 100)),
                Reach.of("down", "join", "low", Supplies.pipe(0.03, 1)),
                Reach.of("up", "join", "high", Supplies.pipe(0.02, 1))),
                List.of(new Outlet("high", "high", Supplies.tap(), 1e-4),
                        new Outlet("low", "low", HeadLoss.rated(1e-3, 1, 2), 1e-3)));
        GravityFlow both = openAll(tree, FULL);
        assertEquals(0, both.outlets().get(0).flowM3PerS());
        assertTrue(both.outlets().get(0).residualHeadM() < 0);
        assertEquals("high", both.weakest().outlet().id());
        GravityFlow dry = openAll(tree, new GravityState(-21, 20, false));
        assertEquals(0, dry.totalFlowM3PerS());
    }

    @Example
    void headsAtGivenFlows() {
        GravityTree tree = Supplies.house();
        Map<String, Double> flows = GravitySolver.wantedFlows(tree, Supplies.all(tree));
        assertEquals(0.45e-3, flows.get("main"), 1e-18);
        GravityFlow result = GravitySolver.atFlows(tree, FULL, flows);
        WaterProperties water = WaterProperties.at(20);
        Reach main = tree.reaches().get(0);
        assertEquals(6 - main.carrying(water, false).headM(0.45e-3), result.headByNode().get("hall"), 1e-12);
        double level = GravitySolver.leastWaterLevelAtFlowsM(tree, FULL, flows);
        GravityFlow raised = GravitySolver.atFlows(tree, new GravityState(level, 20, false), flows);
        assertEquals(0, raised.outlets().stream()
                .mapToDouble(each -> each.residualHeadM() - each.outlet().wantedHeadM()).min().getAsDouble(), 1e-12);
        assertThrows(IllegalArgumentException.class,
                () -> GravitySolver.atFlows(tree, FULL, Map.of("main", Double.NaN)));
    }

    @Example
    void anUnreachableWishHasNoLevel() {
        GravityTree tree = GravityTree.of("a", List.of(new Node("a", 0), new Node("b", 0)),
                List.of(Reach.of("r", "a", "b", new PipeRun(0.005, 1000, 0, 0))),
                List.of(new Outlet("o", "b", HeadLoss.rated(1e-3, 1, 2), 5e-3)));
        assertEquals(OptionalDouble.empty(), GravitySolver.leastWaterLevelM(tree, FULL, Set.of("o"), () -> false));
    }

    @Example
    void stopsWhenCancelled() {
        GravityTree tree = Supplies.house();
        assertThrows(CancellationException.class,
                () -> GravitySolver.open(tree, FULL, Supplies.all(tree), () -> true));
    }

    @Example
    void namesAnOutletWithoutLoss() {
        GravityTree tree = GravityTree.of("a", List.of(new Node("a", 0)), List.of(),
                List.of(new Outlet("odd", "a", flow -> Math.min(flow, 1e-3), 1e-3)));
        assertEquals("outlet \"odd\" must take more head the more it runs, and does not",
                assertThrows(IllegalArgumentException.class, () -> openAll(tree, FULL)).getMessage());
    }
}
