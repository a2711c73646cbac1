package org.roofspring.calc.engine;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What is shown of a site: the newest result of each calculation, and which of them an edit has overtaken. A result
 * that is older than the one shown is dropped. Safe for use by several threads.
 */
public final class FindingsStore {
    private final Map<String, CalculationResult> shown = new LinkedHashMap<>();
    private final Map<String, Long> touchedAt = new HashMap<>();
    private List<PluginFault> faults = List.of();

    /**
     * Takes over a result unless a newer one is shown.
     *
     * @return false when the result was stale and dropped
     */
    public synchronized boolean publish(CalculationResult result) {
        CalculationResult old = shown.get(result.descriptor().id());
        if (old != null && old.revision() > result.revision()) {
            return false;
        }
        shown.put(result.descriptor().id(), result);
        return true;
    }

    /** Ends a run: its faults are shown, and results of calculations that are gone are removed. */
    synchronized void finish(SiteResults run) {
        faults = run.faults();
        shown.keySet().retainAll(run.byCalculation().keySet());
    }

    /** Notes that an edit of this revision bears on these calculations. */
    synchronized void touch(Set<String> calculationIds, long revision) {
        calculationIds.forEach(id -> touchedAt.put(id, revision));
    }

    /** True while the result shown is of before an edit that bears on it. */
    public synchronized boolean outOfDate(String calculationId) {
        CalculationResult result = shown.get(calculationId);
        return result != null && result.revision() < touchedAt.getOrDefault(calculationId, 0L);
    }

    /** True while any result shown is out of date. */
    public synchronized boolean anyOutOfDate() {
        return shown.keySet().stream().anyMatch(this::outOfDate);
    }

    /** All that is shown now. */
    public synchronized SiteResults results() {
        long revision = shown.values().stream().mapToLong(CalculationResult::revision).max().orElse(0);
        return new SiteResults(revision, shown, faults);
    }
}
