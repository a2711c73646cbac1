package org.roofspring.calc.tests;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BiFunction;

import org.roofspring.calc.Applicability;
import org.roofspring.calc.Calculation;
import org.roofspring.calc.CalculationContext;
import org.roofspring.calc.Finding;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.Inputs;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.engine.CalculationDescriptor;
import org.roofspring.calc.engine.CalculationRegistry;
import org.roofspring.quantity.Quantity;
import org.roofspring.site.snapshot.SiteSnapshot;

/** A calculation whose behaviour a test chooses, and that counts how often it ran. */
final class Probe implements Calculation {
    final AtomicInteger runs = new AtomicInteger();
    private final BiFunction<SiteSnapshot, CalculationContext, Outcome> body;

    Probe(BiFunction<SiteSnapshot, CalculationContext, Outcome> body) {
        this.body = body;
    }

    /** Counts the roofs of the site. */
    static Probe countingRoofs() {
        return new Probe((site, context) -> number(site.site().getRoofs().size()));
    }

    static Outcome number(double value) {
        return new Outcome.Completed(List.of(new Finding("n", "Number", new FindingValue.Number(Quantity.of(value)))), List.of(), List.of());
    }

    Probe addTo(CalculationRegistry registry, String id, String reads, String... requires) {
        return addTo(registry, id, 5, reads, requires);
    }

    Probe addTo(CalculationRegistry registry, String id, int deadlineS, String reads, String... requires) {
        registry.add(new CalculationDescriptor(id, "1", "Probe " + id, List.of(reads), List.of(requires), List.of(), deadlineS, "plugin.of." + id), this);
        return this;
    }

    @Override
    public Applicability check(SiteSnapshot site) {
        return Applicability.yes();
    }

    @Override
    public Outcome calculate(SiteSnapshot site, Inputs inputs, CalculationContext context) {
        runs.incrementAndGet();
        return body.apply(site, context);
    }
}
