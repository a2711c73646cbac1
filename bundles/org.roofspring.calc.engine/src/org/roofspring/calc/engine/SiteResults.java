package org.roofspring.calc.engine;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.roofspring.calc.Finding;
import org.roofspring.calc.Outcome;

/**
 * The results of all calculations of a site, in the order they ran, and the faults of plug-ins that did not run.
 *
 * @param revision newest revision in it
 */
public record SiteResults(long revision, Map<String, CalculationResult> byCalculation, List<PluginFault> faults) {
    public SiteResults {
        byCalculation = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(byCalculation));
        faults = List.copyOf(faults);
    }

    /** Before anything has run. */
    public static SiteResults none() {
        return new SiteResults(0, Map.of(), List.of());
    }

    public Collection<CalculationResult> results() {
        return byCalculation.values();
    }

    public Optional<CalculationResult> result(String calculationId) {
        return Optional.ofNullable(byCalculation.get(calculationId));
    }

    public Optional<Outcome.Completed> completed(String calculationId) {
        return result(calculationId).flatMap(CalculationResult::completed);
    }

    /** A finding of the site as a whole. */
    public Optional<Finding> finding(String calculationId, String findingId) {
        return completed(calculationId).flatMap(outcome -> outcome.finding(findingId));
    }

    /** A finding about one element. */
    public Optional<Finding> finding(String calculationId, String findingId, String elementId) {
        return completed(calculationId).flatMap(outcome -> outcome.finding(findingId, elementId));
    }

    /** All faults: plug-ins that could not be listed or ordered, and those that failed while running. */
    public List<PluginFault> allFaults() {
        List<PluginFault> all = new java.util.ArrayList<>(faults);
        results().stream().map(CalculationResult::fault).filter(java.util.Objects::nonNull).forEach(all::add);
        return List.copyOf(all);
    }
}
