package org.roofspring.hydraulics;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.roofspring.hydraulics.gravity.GravitySolver;
import org.roofspring.hydraulics.gravity.GravityState;
import org.roofspring.hydraulics.gravity.GravityTree;
import org.roofspring.hydraulics.gravity.Node;
import org.roofspring.hydraulics.gravity.Outlet;
import org.roofspring.hydraulics.gravity.Reach;
import org.roofspring.hydraulics.pump.PumpCurve;
import org.roofspring.hydraulics.pump.PumpFile;
import org.roofspring.hydraulics.pump.PumpSet;
import org.roofspring.kernel.testkit.NastyNumbers;

/** Nasty numbers through every public entry of this kernel, found by reflection. */
class EveryEntryTest {
    private static final PumpCurve PUMP = PumpFile.parse("pump.csv", """
            flow[L/s],head[m],efficiency[%],npshr[m],power[W]
            0,40,0,2,500
            1,38,40,2.2,700
            2,32,55,2.6,900
            3,22,50,3.2,1100
            """);
    private static final PipeRun PIPE = new PipeRun(0.03, 20, 7e-6, 2);
    private static final GravityState STATE = new GravityState(12, 20, false);
    private static final List<Node> NODES = List.of(new Node("tank", 5), new Node("a", 1), new Node("b", 0.5));
    private static final List<Reach> REACHES = List.of(Reach.of("main", "tank", "a", PIPE),
            Reach.of("arm", "a", "b", PIPE));
    private static final List<Outlet> OUTLETS = List.of(new Outlet("tap", "a", HeadLoss.rated(2e-4, 2, 2), 1.5e-4),
            new Outlet("yard", "b", HeadLoss.rated(2e-4, 2, 2), 1.5e-4));
    private static final GravityTree TREE = GravityTree.of("tank", NODES, REACHES, OUTLETS);
    private static final Map<String, Double> FLOWS = Map.of("tap", 1e-4, "yard", 1e-4);

    @TestFactory
    Stream<DynamicTest> everyEntry() {
        List<ProfilePoint> profile = List.of(new ProfilePoint(0, 5), new ProfilePoint(10, 3), new ProfilePoint(20, 1));
        NastyNumbers test = NastyNumbers.ofKernel(WaterHammer.class).sample(PIPE).sample(STATE).sample(TREE)
                .sample(PipeCatalogue.PE_100).sample(PipeCatalogue.sizes(PipeCatalogue.PE_100).getFirst())
                .sample(PumpSet.single(PUMP)).sample(PUMP)
                .arguments("PumpCurve.of", "pump", PUMP.points())
                .arguments("GravityTree.of", "tank", NODES, REACHES, OUTLETS)
                .arguments("GravityTree.upstreamEnd", REACHES.getFirst())
                .arguments("GradeLine.along", profile, List.of(PIPE), 10.0, 1e-4, WaterProperties.at(20))
                .sample(GravitySolver.atFlows(TREE, STATE, FLOWS))
                .arguments("GravityFlow.gradeLine", TREE, STATE, REACHES.getFirst(), profile)
                .arguments("FixtureUnits.flows", TREE, Map.of("tap", 2.0, "yard", 3.0))
                .arguments("GravitySolver.atFlows", TREE, STATE, FLOWS)
                .arguments("GravitySolver.leastWaterLevelAtFlowsM", TREE, STATE, FLOWS);
        for (String entry : List.of("open", "leastWaterLevelM")) {
            test.arguments("GravitySolver." + entry, TREE, STATE, Set.of("tap", "yard"),
                    (java.util.function.BooleanSupplier) () -> false);
        }
        return test.tests();
    }
}
