package org.roofspring.hydraulics.gravity;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.roofspring.hydraulics.GradeLine;
import org.roofspring.hydraulics.PipeRun;
import org.roofspring.hydraulics.ProfilePoint;
import org.roofspring.hydraulics.WaterProperties;
import org.roofspring.hydraulics.internal.Require;

/**
 * Flows and heads of a gravity supply.
 *
 * @param outlets          those in use, in the order of the tree
 * @param flowByReach      [m3/s] by name of the reach, nil where nothing is drawn
 * @param headByNode       level of the grade line by name of the node [m]
 */
public record GravityFlow(List<OutletFlow> outlets, Map<String, Double> flowByReach, Map<String, Double> headByNode) {

    /**
     * What an outlet gets.
     *
     * @param outlet        which
     * @param flowM3PerS    [m3/s]; nil where the grade line does not reach it
     * @param residualHeadM head over the outlet while it runs [m]; negative where the grade line is below it, and an
     *                      open outlet then draws air into the pipe
     */
    public record OutletFlow(Outlet outlet, double flowM3PerS, double residualHeadM) {
        /** Flow over wanted flow. */
        public double shareOfWanted() {
            return flowM3PerS / outlet.wantedFlowM3PerS();
        }
    }

    public GravityFlow {
        outlets = Require.list("outlets", outlets);
        flowByReach = Map.copyOf(flowByReach);
        headByNode = Map.copyOf(headByNode);
        Require.within("number of outlets in use", outlets.size(), 1, 10_000);
    }

    /** Works out the heads from the flows. */
    static GravityFlow of(GravityTree tree, GravityState state, Map<String, Double> flowByReach, List<Outlet> outlets,
            double[] outletFlows) {
        WaterProperties water = WaterProperties.at(state.temperatureC());
        Map<String, Double> flows = new LinkedHashMap<>();
        Map<String, Double> losses = new LinkedHashMap<>();
        for (Reach reach : tree.reaches()) {
            double flow = flowByReach.getOrDefault(reach.id(), 0.0);
            Require.within("flow of reach \"" + reach.id() + "\"", flow, 0, PipeRun.HIGHEST_FLOW_M3_PER_S, "m3/s");
            flows.put(reach.id(), flow);
            losses.put(reach.id(), reach.carrying(water, state.worn()).headM(flow));
        }
        Map<String, Double> heads = new LinkedHashMap<>();
        for (Node node : tree.nodes()) {
            heads.put(node.id(), state.waterLevelM()
                    - tree.wayTo(node.id()).stream().mapToDouble(reach -> losses.get(reach.id())).sum());
        }
        List<OutletFlow> results = new ArrayList<>();
        for (int i = 0; i < outletFlows.length; i++) {
            Outlet outlet = outlets.get(i);
            results.add(new OutletFlow(outlet, outletFlows[i],
                    heads.get(outlet.node()) - tree.node(outlet.node()).elevationM()));
        }
        return new GravityFlow(results, flows, heads);
    }

    /**
     * The grade line over a reach, which begins where its devices end.
     *
     * @param profile along the reach in the direction of flow; its elevations are on the datum of the nodes
     */
    public GradeLine gradeLine(GravityTree tree, GravityState state, Reach reach, List<ProfilePoint> profile) {
        Require.present("tree", tree);
        Require.present("state", state);
        String begin = tree.upstreamEnd(reach);
        double flow = flowByReach.get(reach.id());
        double startM = headByNode.get(begin) - reach.devices(state.worn()).headM(flow);
        return GradeLine.along(profile, reach.pipes(state.worn()), startM, flow,
                WaterProperties.at(state.temperatureC()));
    }

    /** The outlet that gets the smallest share of what it wants, then the lowest head; the first such. */
    public OutletFlow weakest() {
        return outlets.stream().reduce((a, b) -> isWeaker(b, a) ? b : a).orElseThrow();
    }

    private static boolean isWeaker(OutletFlow one, OutletFlow other) {
        double difference = one.shareOfWanted() - other.shareOfWanted();
        return difference < 0 || difference == 0 && one.residualHeadM() < other.residualHeadM();
    }

    /** All water drawn [m3/s]. */
    public double totalFlowM3PerS() {
        return outlets.stream().mapToDouble(OutletFlow::flowM3PerS).sum();
    }
}
