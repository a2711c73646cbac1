package org.roofspring.hydraulics.gravity;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.roofspring.hydraulics.internal.Require;

/**
 * A gravity supply: a tank and reaches that branch out from it to outlets, without loops, so that there is one way to
 * each outlet.
 */
public final class GravityTree {
    private final String source;
    private final List<Reach> reaches;
    private final List<Outlet> outlets;
    private final Map<String, Node> nodes = new LinkedHashMap<>();
    private final Map<String, Reach> feedOf = new LinkedHashMap<>();
    private final Map<String, String> upstreamOf = new LinkedHashMap<>();

    private GravityTree(String source, List<Node> nodes, List<Reach> reaches, List<Outlet> outlets) {
        this.source = source;
        this.reaches = Require.list("reaches", reaches);
        this.outlets = Require.list("outlets", outlets);
        for (Node node : Require.list("nodes", nodes)) {
            if (this.nodes.put(node.id(), node) != null) {
                throw new IllegalArgumentException("node \"" + node.id() + "\" must be given once, not twice");
            }
        }
        requireNode(source, "the tank");
        requireKnownEnds();
        requireKnownOutlets();
        orient();
    }

    /**
     * Builds the tree and checks it.
     *
     * @param source  node at which the tank feeds in
     * @param nodes   all nodes
     * @param reaches in any order and direction
     * @param outlets at least one
     * @throws IllegalArgumentException with one sentence: a name that is unknown or comes twice, a reach that closes a
     *                                  loop, a reach that does not hang together with the tank
     */
    public static GravityTree of(String source, List<Node> nodes, List<Reach> reaches, List<Outlet> outlets) {
        return new GravityTree(source, nodes, reaches, outlets);
    }

    private void requireNode(String id, String what) {
        if (!nodes.containsKey(id)) {
            throw new IllegalArgumentException(what + " must be at a node of the supply, not at \"" + id + "\"");
        }
    }

    private void requireKnownEnds() {
        Set<String> ids = new LinkedHashSet<>();
        for (Reach reach : reaches) {
            if (!ids.add(reach.id())) {
                throw new IllegalArgumentException("reach \"" + reach.id() + "\" must be given once, not twice");
            }
            requireNode(reach.from(), "each end of reach \"" + reach.id() + "\"");
            requireNode(reach.to(), "each end of reach \"" + reach.id() + "\"");
        }
    }

    private void requireKnownOutlets() {
        Require.within("number of outlets", outlets.size(), 1, 10_000);
        Set<String> ids = new LinkedHashSet<>();
        for (Outlet outlet : outlets) {
            if (!ids.add(outlet.id())) {
                throw new IllegalArgumentException("outlet \"" + outlet.id() + "\" must be given once, not twice");
            }
            requireNode(outlet.node(), "outlet \"" + outlet.id() + "\"");
        }
    }

    /** Walks out from the tank; a reach that leads to a node already reached closes a loop. */
    private void orient() {
        Set<Reach> left = new LinkedHashSet<>(reaches);
        Set<String> reached = new LinkedHashSet<>(Set.of(source));
        Deque<String> open = new ArrayDeque<>(reached);
        while (!open.isEmpty()) {
            String node = open.remove();
            for (Reach reach : reaches) {
                boolean touches = reach.from().equals(node) || reach.to().equals(node);
                if (!touches || !left.remove(reach)) {
                    continue;
                }
                String far = reach.from().equals(node) ? reach.to() : reach.from();
                if (!reached.add(far)) {
                    throw new IllegalArgumentException("reach \"" + reach.id() + "\" between \"" + reach.from()
                            + "\" and \"" + reach.to() + "\" closes a loop; only pipes that branch without loops are"
                            + " solved here, so leave one reach of the loop out or split it at a closed valve");
                }
                feedOf.put(far, reach);
                upstreamOf.put(far, node);
                open.add(far);
            }
        }
        if (!left.isEmpty()) {
            throw new IllegalArgumentException("reach \"" + left.iterator().next().id()
                    + "\" must hang together with the tank at \"" + source + "\", and does not");
        }
        for (Outlet outlet : outlets) {
            if (!reached.contains(outlet.node())) {
                throw new IllegalArgumentException("outlet \"" + outlet.id() + "\" at \"" + outlet.node()
                        + "\" must hang together with the tank at \"" + source + "\", and does not");
            }
        }
    }

    /** The node at which the tank feeds in. */
    public Node source() {
        return nodes.get(source);
    }

    public Node node(String id) {
        requireNode(id, "a place asked for");
        return nodes.get(id);
    }

    /** All nodes in the order given. */
    public List<Node> nodes() {
        return List.copyOf(nodes.values());
    }

    /** All reaches in the order given. */
    public List<Reach> reaches() {
        return reaches;
    }

    /** All outlets in the order given. */
    public List<Outlet> outlets() {
        return outlets;
    }

    /** The node that feeds a reach. */
    public String upstreamEnd(Reach reach) {
        if (!reaches.contains(Require.present("reach", reach))) {
            throw new IllegalArgumentException("a reach of the supply must be given, not " + reach);
        }
        return reach.equals(feedOf.get(reach.to())) ? upstreamOf.get(reach.to()) : upstreamOf.get(reach.from());
    }

    /** The reaches from the tank to a node, in the order of flow. */
    public List<Reach> wayTo(String nodeId) {
        requireNode(nodeId, "a place asked for");
        List<Reach> way = new ArrayList<>();
        for (String node = nodeId; feedOf.containsKey(node); node = upstreamOf.get(node)) {
            way.add(0, feedOf.get(node));
        }
        return way;
    }
}
