package org.roofspring.hydraulics.gravity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;

import org.junit.jupiter.api.Test;
import org.roofspring.hydraulics.GradeLine;
import org.roofspring.hydraulics.HeadLoss;
import org.roofspring.hydraulics.ProfilePoint;

class GravityTreeTest {
    private static final List<Node> NODES = List.of(new Node("a", 0), new Node("b", 0), new Node("c", 0),
            new Node("d", 0));
    private static final List<Outlet> TAP = List.of(new Outlet("tap", "c", Supplies.tap(), 1e-4));

    private static Reach reach(String id, String from, String to) {
        return Reach.of(id, from, to, Supplies.pipe(0.02, 10));
    }

    private static void assertRefused(String message, List<Node> nodes, List<Reach> reaches, List<Outlet> outlets) {
        IllegalArgumentException refused = assertThrows(IllegalArgumentException.class,
                () -> GravityTree.of("a", nodes, reaches, outlets));
        assertTrue(refused.getMessage().startsWith(message), refused.getMessage());
    }

    @Test
    void loopsAreRefused() {
        assertRefused("reach \"y\" between \"b\" and \"c\" closes a loop; only pipes that branch without loops",
                NODES, List.of(reach("x", "a", "b"), reach("y", "b", "c"), reach("z", "c", "a")), TAP);
        assertRefused("reach \"y\" between \"b\" and \"a\" closes a loop", NODES,
                List.of(reach("x", "a", "b"), reach("y", "b", "a")), TAP);
        assertRefused("reach \"x\" between \"a\" and \"a\" closes a loop", NODES, List.of(reach("x", "a", "a")), TAP);
    }

    @Test
    void piecesApartAreRefused() {
        assertRefused("reach \"z\" must hang together with the tank at \"a\"", NODES,
                List.of(reach("x", "a", "c"), reach("z", "b", "d")), TAP);
        assertRefused("outlet \"tap\" at \"c\" must hang together with the tank", NODES, List.of(reach("x", "a", "b")),
                TAP);
    }

    @Test
    void namesMustBeKnownAndUnlike() {
        List<Reach> good = List.of(reach("x", "a", "c"));
        assertRefused("node \"a\" must be given once", List.of(NODES.get(0), NODES.get(0)), good, TAP);
        assertRefused("the tank must be at a node", List.of(new Node("b", 0)), good, TAP);
        assertRefused("each end of reach \"x\" must be at a node of the supply, not at \"e\"", NODES,
                List.of(reach("x", "a", "e")), TAP);
        assertRefused("reach \"x\" must be given once", NODES, List.of(reach("x", "a", "b"), reach("x", "b", "c")),
                TAP);
        assertRefused("outlet \"tap\" must be given once", NODES, good, List.of(TAP.get(0), TAP.get(0)));
        assertRefused("outlet \"t\" must be at a node", NODES, good,
                List.of(new Outlet("t", "e", Supplies.tap(), 1e-4)));
        assertRefused("number of outlets must be from 1", NODES, good, List.of());
        GravityTree tree = GravityTree.of("a", NODES, good, TAP);
        assertThrows(IllegalArgumentException.class, () -> tree.wayTo("e"));
        assertThrows(IllegalArgumentException.class, () -> GravitySolver.open(tree, new GravityState(5, 20, false),
                Set.of("e"), () -> false));
        assertThrows(IllegalArgumentException.class, () -> GravitySolver.open(tree, new GravityState(5, 20, false),
                Set.of(), () -> false));
    }

    @Test
    void findsItsWayInAnyDirectionGiven() {
        GravityTree tree = Supplies.house();
        assertEquals(List.of("main", "to shower"), tree.wayTo("shower").stream().map(Reach::id).toList());
        assertEquals("hall", tree.upstreamEnd(tree.reaches().get(2)));
        assertEquals("tank", tree.upstreamEnd(tree.reaches().get(0)));
        assertEquals("tank", tree.source().id());
        assertEquals(5, tree.nodes().size());
    }

    @Test
    void refusesImpossibleOutlets() {
        assertThrows(IllegalArgumentException.class, () -> new Outlet("o", "a", HeadLoss.none(), 1e-4));
        assertThrows(IllegalArgumentException.class, () -> new Outlet("o", "a", Supplies.tap(), 0));
        assertThrows(IllegalArgumentException.class, () -> new Node("", 0));
        assertThrows(IllegalArgumentException.class, () -> new GravityState(Double.NaN, 20, false));
    }

    /**
     * The main rises over a ridge to within a hand of the tank: the fouled filter pulls the grade below the pipe there.
     */
    @Test
    void gradeLineShowsWhereThePipeStandsOverIt() {
        GravityTree tree = Supplies.house();
        List<ProfilePoint> profile = List.of(new ProfilePoint(0, 5), new ProfilePoint(4, 5.2), new ProfilePoint(12, 1));
        GravityState worn = new GravityState(6, 20, true);
        GravityFlow flow = GravitySolver.open(tree, worn, Supplies.all(tree), () -> false);
        GradeLine line = flow.gradeLine(tree, worn, tree.reaches().get(0), profile);
        assertEquals(6 - tree.reaches().get(0).fouledDevices().headM(flow.flowByReach().get("main")),
                line.points().get(0).gradeM(), 1e-12);
        assertEquals(flow.headByNode().get("hall"), line.points().get(2).gradeM(), 1e-12);
        assertEquals(4, line.lowestPressure().distanceM());
        assertEquals(List.of(0.0, 4.0), line.belowPipe().stream().map(GradeLine.Point::distanceM).toList());
        GravityState fresh = new GravityState(6, 20, false);
        GravityFlow one = GravitySolver.open(tree, fresh, Set.of("kitchen tap"), () -> false);
        assertTrue(one.gradeLine(tree, fresh, tree.reaches().get(0), profile).belowPipe().isEmpty());
    }
}
