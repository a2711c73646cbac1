package org.roofspring.calc.engine;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The order in which calculations run, so that each comes after those it depends on. Calculations that depend on each
 * other in a circle are refused, each with the circle spelt out. The order does not depend on the order of arrival.
 */
public final class CalculationGraph {
    private final List<CalculationRegistry.Entry> order;
    private final Map<String, PluginFault> refused;

    private CalculationGraph(List<CalculationRegistry.Entry> order, Map<String, PluginFault> refused) {
        this.order = List.copyOf(order);
        this.refused = Map.copyOf(refused);
    }

    public static CalculationGraph of(List<CalculationRegistry.Entry> entries) {
        Map<String, CalculationRegistry.Entry> byId = new TreeMap<>();
        entries.forEach(entry -> byId.put(entry.descriptor().id(), entry));
        List<CalculationRegistry.Entry> order = new ArrayList<>();
        Map<String, PluginFault> refused = new LinkedHashMap<>();
        Map<String, Boolean> finished = new HashMap<>();
        for (String id : byId.keySet()) {
            visit(id, byId, finished, new ArrayDeque<>(), order, refused);
        }
        order.removeIf(entry -> refused.containsKey(entry.descriptor().id()));
        return new CalculationGraph(order, refused);
    }

    private static void visit(String id, Map<String, CalculationRegistry.Entry> byId, Map<String, Boolean> finished,
            Deque<String> path, List<CalculationRegistry.Entry> order, Map<String, PluginFault> refused) {
        CalculationRegistry.Entry entry = byId.get(id);
        if (entry == null || Boolean.TRUE.equals(finished.get(id))) {
            return;
        }
        if (path.contains(id)) {
            List<String> circle = new ArrayList<>(path).subList(new ArrayList<>(path).indexOf(id), path.size());
            String words = String.join(" needs ", circle) + " needs " + id;
            for (String member : circle) {
                CalculationDescriptor descriptor = byId.get(member).descriptor();
                refused.putIfAbsent(member, new PluginFault(member, descriptor.provider(),
                        "The calculation " + member + " of " + descriptor.provider() + " is left out: " + words + ".", null));
            }
            return;
        }
        path.addLast(id);
        for (String dependency : entry.descriptor().dependencies()) {
            visit(dependency, byId, finished, path, order, refused);
        }
        path.removeLast();
        finished.put(id, true);
        order.add(entry);
    }

    /** Runnable calculations, each after those it depends on. */
    public List<CalculationRegistry.Entry> order() {
        return order;
    }

    /** Calculations that need each other in a circle, by id. */
    public Map<String, PluginFault> refused() {
        return refused;
    }
}
