package org.roofspring.cli.internal;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;

import org.roofspring.calc.Calculation;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.engine.CalculationDescriptor;
import org.roofspring.calc.engine.CalculationRegistry;
import org.roofspring.calc.engine.CalculationResult;
import org.roofspring.calc.engine.CalculationRunner;
import org.roofspring.calc.engine.SiteResults;
import org.roofspring.site.NamedElement;
import org.roofspring.site.Site;
import org.roofspring.site.io.SiteFileException;
import org.roofspring.site.io.SiteFiles;
import org.roofspring.site.meta.Violation;
import org.roofspring.site.snapshot.SiteSnapshot;

/** A site file that a command asks about. */
final class SiteInput {
    private final Path file;
    private final Site site;
    private final Map<String, String> names = new HashMap<>();

    private SiteInput(Path file, Site site) {
        this.file = file;
        this.site = site;
        site.eAllContents().forEachRemaining(object -> {
            if (object instanceof NamedElement element && element.getName() != null) {
                names.put(element.getId(), element.getName());
            }
        });
    }

    /** Loads it; whatever is wrong with the file is bad input. */
    static SiteInput load(Path file) throws IOException {
        try {
            return new SiteInput(file, SiteFiles.load(InputFiles.existing("site file", file)));
        } catch (SiteFileException e) {
            throw new Failures.BadInputException(e.getMessage(), e);
        }
    }

    Site site() {
        return site;
    }

    SiteSnapshot snapshot() {
        return SiteSnapshot.of(site, 1, file.toAbsolutePath().getParent());
    }

    /** What people call an element. */
    String name(String elementId) {
        return names.getOrDefault(elementId, elementId);
    }

    /**
     * One calculation, run with all the checks of the engine.
     *
     * @param before those that it needs or uses
     */
    Outcome outcome(Calculation calculation, Calculation... before) {
        CalculationRegistry registry = new CalculationRegistry();
        registry.add(calculation);
        for (Calculation needed : before) {
            registry.add(needed);
        }
        SiteResults results = new CalculationRunner(registry).run(snapshot());
        results.results().stream().filter(result -> result.fault() != null).findFirst().ifPresent(result -> {
            throw new IllegalStateException(result.fault().text(), result.fault().cause());
        });
        CalculationResult result = results.result(CalculationDescriptor.of(calculation.getClass()).id()).orElseThrow();
        if (result.outcome() == null) {
            String reasons = String.join(" ", result.reasons());
            // a value out of its range is what keeps a calculation from applying to a site that has what it needs
            throw Violation.in(site).isEmpty() ? new Failures.NoAnswerException(reasons)
                    : new Failures.BadInputException(file + ": " + reasons);
        }
        return result.outcome();
    }
}
