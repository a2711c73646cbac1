package org.roofspring.calc.engine;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

import org.roofspring.calc.Applicability;
import org.roofspring.calc.Calculation;
import org.roofspring.calc.CalculationContext;
import org.roofspring.calc.Finding;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.Inputs;
import org.roofspring.calc.Outcome;
import org.roofspring.site.meta.Violation;
import org.roofspring.site.snapshot.SiteSnapshot;

/**
 * Runs every calculation over one snapshot, in order. A plug-in that throws, hangs or returns nonsense is named and
 * the rest goes on. May be called by several threads, each with a snapshot of its own.
 */
public final class CalculationRunner {
    private static final int CACHED_RESULTS = 512;

    private final CalculationRegistry registry;
    private final ResultCache cache = new ResultCache(CACHED_RESULTS);
    private final PluginWorkers workers = new PluginWorkers();

    public CalculationRunner(CalculationRegistry registry) {
        this.registry = registry;
    }

    /** Runs all calculations and waits. */
    public SiteResults run(SiteSnapshot site) {
        return run(site, () -> false, result -> { });
    }

    /**
     * Runs all calculations.
     *
     * @param cancelled polled between and inside calculations
     * @param each      is given every result as soon as it is there, on the calling thread
     * @throws CancellationException when cancelled
     */
    public SiteResults run(SiteSnapshot site, BooleanSupplier cancelled, Consumer<CalculationResult> each) {
        CalculationRegistry.Listing listing = registry.list();
        CalculationGraph graph = CalculationGraph.of(listing.entries());
        List<PluginFault> faults = new ArrayList<>(listing.faults());
        faults.addAll(graph.refused().values());
        List<Violation> violations = Violation.in(site.site());
        Fingerprints fingerprints = new Fingerprints(site);
        Map<String, CalculationResult> results = new LinkedHashMap<>();
        for (CalculationRegistry.Entry entry : graph.order()) {
            if (cancelled.getAsBoolean()) {
                throw new CancellationException();
            }
            CalculationResult result = runOne(entry, site, violations, fingerprints, results, cancelled);
            results.put(entry.descriptor().id(), result);
            each.accept(result);
        }
        return new SiteResults(site.revision(), results, faults);
    }

    private CalculationResult runOne(CalculationRegistry.Entry entry, SiteSnapshot site, List<Violation> violations,
            Fingerprints fingerprints, Map<String, CalculationResult> before, BooleanSupplier cancelled) {
        CalculationDescriptor descriptor = entry.descriptor();
        List<String> missing = new ArrayList<>();
        Map<String, Outcome.Completed> inputs = new LinkedHashMap<>();
        for (String dependency : descriptor.dependencies()) {
            CalculationResult result = before.get(dependency);
            if (result != null && result.completed().isPresent()) {
                inputs.put(dependency, result.completed().get());
            } else if (descriptor.requires().contains(dependency)) {
                missing.add(result == null ? "It needs the calculation " + dependency + ", which is not installed."
                        : "It needs " + result.descriptor().title() + ", which has no answer: " + String.join(" ", result.reasons()));
            }
        }
        // a value out of its range is no input: whatever reads it has no answer until it is mended
        Reads reads = Reads.of(descriptor);
        violations.stream().filter(v -> reads.of(v.object().eClass()).contains(v.feature()))
                .forEach(v -> missing.add(sentence(v)));
        String fingerprint = fingerprints.of(descriptor, before);
        if (!missing.isEmpty()) {
            return CalculationResult.notApplicable(descriptor, missing, fingerprint, site.revision());
        }
        return cache.get(fingerprint).map(cached -> cached.at(site.revision()))
                .orElseGet(() -> compute(entry, site, new Inputs(inputs), fingerprint, cancelled));
    }

    private static String sentence(Violation violation) {
        String sentence = violation.sentence();
        return Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1) + ".";
    }

    private CalculationResult compute(CalculationRegistry.Entry entry, SiteSnapshot site, Inputs inputs,
            String fingerprint, BooleanSupplier cancelled) {
        CalculationDescriptor descriptor = entry.descriptor();
        try {
            CalculationResult result = workers.run(() -> call(entry, site, inputs, new Context(cancelled), fingerprint),
                    descriptor.deadlineS(), cancelled);
            cache.put(result);
            return result;
        } catch (PluginWorkers.AbandonedException e) {
            PluginFault fault = fault(descriptor, e.getMessage() + " and is set aside until it is installed anew or the program restarts", e);
            registry.quarantine(fault);
            return CalculationResult.fault(descriptor, fault, site.revision());
        } catch (ExecutionException e) {
            return CalculationResult.fault(descriptor, fault(descriptor, "failed: " + e.getCause(), e.getCause()), site.revision());
        }
    }

    private static CalculationResult call(CalculationRegistry.Entry entry, SiteSnapshot site, Inputs inputs, CalculationContext context,
            String fingerprint) {
        Calculation calculation = entry.calculation().get();
        if (calculation == null) {
            throw new IllegalStateException("its service has gone or could not be created");
        }
        Applicability applicability = calculation.check(site);
        if (!applicability.applies()) {
            return CalculationResult.notApplicable(entry.descriptor(), applicability.reasons(), fingerprint, site.revision());
        }
        Outcome outcome = calculation.calculate(site, inputs, context);
        if (outcome == null) {
            throw new IllegalStateException("it returned nothing");
        }
        if (outcome instanceof Outcome.Completed completed) {
            completed.findings().forEach(CalculationRunner::requireFinite);
        }
        return CalculationResult.of(entry.descriptor(), outcome, fingerprint, site.revision());
    }

    /** A quantity is finite by construction; arrays are checked here, once for every consumer. */
    private static void requireFinite(Finding finding) {
        double[][] arrays = switch (finding.value()) {
            case FindingValue.Daily daily -> new double[][] { daily.values() };
            case FindingValue.Curve curve -> new double[][] { curve.x(), curve.y() };
            default -> new double[0][];
        };
        for (double[] array : arrays) {
            double sum = 0;
            for (double value : array) {
                sum += value * 0;
            }
            if (sum != 0) { // 0 * NaN and 0 * infinity are NaN, which is unequal to 0
                throw new IllegalStateException("its finding " + finding.id() + " holds a value that is not a number");
            }
        }
    }

    private static PluginFault fault(CalculationDescriptor descriptor, String what, Throwable cause) {
        return new PluginFault(descriptor.id(), descriptor.provider(), "The calculation \"" + descriptor.title() + "\" ("
                + descriptor.id() + " of " + descriptor.provider() + ") " + what + ".", cause);
    }

    /** The seed is fixed: a result depends on nothing but the site, so that undo and a second run agree. */
    private record Context(BooleanSupplier cancelled) implements CalculationContext {
        @Override
        public long randomSeed() {
            return 0x526f6f66L;
        }
    }
}
