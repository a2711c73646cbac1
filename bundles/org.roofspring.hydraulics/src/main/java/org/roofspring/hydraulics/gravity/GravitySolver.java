package org.roofspring.hydraulics.gravity;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.BooleanSupplier;

import org.roofspring.hydraulics.internal.Require;
import org.roofspring.hydraulics.internal.Roots;

/**
 * Solves a gravity supply: all outlets in use together, each wide open, and what each then gets; or the heads at given
 * flows.
 */
public final class GravitySolver {
    /** Highest tank that is looked for, over the highest outlet [m]. */
    public static final double HIGHEST_TANK_M = 1000;

    private GravitySolver() {
    }

    /**
     * What every outlet in use gets when all are wide open at once.
     *
     * @param open      names of the outlets in use, at least one
     * @param cancelled polled now and then; when true the call ends with a CancellationException
     */
    public static GravityFlow open(GravityTree tree, GravityState state, Set<String> open, BooleanSupplier cancelled) {
        Require.present("state", state);
        Require.present("cancelled", cancelled);
        return new Draw(tree, state, outlets(tree, open)).solve(cancelled);
    }

    /**
     * The lowest level of water in the tank at which every outlet in use gets at least its wanted flow, all open at
     * once [m]; absent where even {@value #HIGHEST_TANK_M} m over the highest outlet would not do. A higher tank never
     * takes flow from an outlet, so there is one such level.
     *
     * @param state its own water level does not count
     */
    public static OptionalDouble leastWaterLevelM(GravityTree tree, GravityState state, Set<String> open,
            BooleanSupplier cancelled) {
        Require.present("state", state);
        Require.present("cancelled", cancelled);
        List<Outlet> inUse = outlets(tree, open);
        double lowM = inUse.stream().mapToDouble(outlet -> tree.node(outlet.node()).elevationM()).max().orElseThrow();
        double highM = lowM + HIGHEST_TANK_M;
        double shortAtHigh = surplus(tree, state, inUse, highM, cancelled);
        if (shortAtHigh < 0) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(Roots.bracketed(levelM -> surplus(tree, state, inUse, levelM, cancelled),
                lowM, -1, highM, shortAtHigh));
    }

    private static double surplus(GravityTree tree, GravityState state, List<Outlet> inUse, double levelM,
            BooleanSupplier cancelled) {
        return new Draw(tree, state.withWaterLevelM(levelM), inUse).solve(cancelled).weakest().shareOfWanted() - 1;
    }

    /**
     * Heads where the flow of each reach is given, such as the design flow of {@link FixtureUnits}: what is left over
     * each outlet, negative where the tank is too low. Each outlet is listed with its wanted flow.
     *
     * @param flowByReach [m3/s] by name of the reach, 0 to 1000; a reach that is not named carries nothing
     */
    public static GravityFlow atFlows(GravityTree tree, GravityState state,
            Map<String, Double> flowByReach) {
        Require.present("tree", tree);
        Require.present("state", state);
        Require.present("flows", flowByReach);
        return GravityFlow.of(tree, state, flowByReach, tree.outlets(),
                tree.outlets().stream().mapToDouble(Outlet::wantedFlowM3PerS).toArray());
    }

    /**
     * The lowest level of water in the tank that leaves every outlet the head for its wanted flow at given flows [m].
     */
    public static double leastWaterLevelAtFlowsM(GravityTree tree, GravityState state,
            Map<String, Double> flowByReach) {
        return atFlows(tree, state, flowByReach).outlets().stream()
                .mapToDouble(each -> state.waterLevelM() + each.outlet().wantedHeadM() - each.residualHeadM()).max()
                .orElseThrow();
    }

    /** Flow of each reach when every outlet in use takes exactly its wanted flow [m3/s]. */
    public static Map<String, Double> wantedFlows(GravityTree tree, Set<String> open) {
        Map<String, Double> flows = new LinkedHashMap<>();
        for (Outlet outlet : outlets(tree, open)) {
            for (Reach reach : tree.wayTo(outlet.node())) {
                flows.merge(reach.id(), outlet.wantedFlowM3PerS(), Double::sum);
            }
        }
        return flows;
    }

    static List<Outlet> outlets(GravityTree tree, Set<String> open) {
        Require.present("tree", tree);
        Require.present("outlets in use", open);
        for (String id : open) {
            if (tree.outlets().stream().noneMatch(outlet -> outlet.id().equals(id))) {
                throw new IllegalArgumentException("outlets in use must be outlets of the supply, not \"" + id + "\"");
            }
        }
        List<Outlet> inUse = tree.outlets().stream().filter(outlet -> open.contains(outlet.id())).toList();
        Require.within("number of outlets in use", inUse.size(), 1, 1000);
        return inUse;
    }
}
