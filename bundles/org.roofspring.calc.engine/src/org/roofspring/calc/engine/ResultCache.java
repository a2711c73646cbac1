package org.roofspring.calc.engine;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Results by what they were computed from, the least recently used dropped first; so that undo finds the old answer.
 * Faults are not kept. Safe for use by several threads.
 */
final class ResultCache {
    private final int capacity;
    private final Map<String, CalculationResult> results = new LinkedHashMap<>(64, 0.75f, true);

    ResultCache(int capacity) {
        this.capacity = capacity;
    }

    synchronized Optional<CalculationResult> get(String fingerprint) {
        return Optional.ofNullable(results.get(fingerprint));
    }

    synchronized void put(CalculationResult result) {
        if (result.status() == CalculationResult.Status.FAULT) {
            return;
        }
        results.put(result.fingerprint(), result);
        if (results.size() > capacity) {
            var eldest = results.entrySet().iterator();
            eldest.next();
            eldest.remove();
        }
    }
}
