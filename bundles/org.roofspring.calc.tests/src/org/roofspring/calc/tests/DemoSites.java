package org.roofspring.calc.tests;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.BooleanSupplier;

import org.roofspring.calc.Calculation;
import org.roofspring.calc.CalculationContext;
import org.roofspring.calc.Inputs;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.engine.CalculationDescriptor;
import org.roofspring.site.Site;
import org.roofspring.site.io.SiteFiles;
import org.roofspring.site.snapshot.SiteSnapshot;

/** The demo sites, and the outcomes of calculations run on them by hand. */
final class DemoSites {
    static final Path FOLDER = Path.of(System.getProperty("roofspring.demo-data", "../../demo-data"));

    private DemoSites() {
    }

    static Site site(String name) {
        try {
            return SiteFiles.load(FOLDER.resolve(name + ".site"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static SiteSnapshot school() {
        return SiteSnapshot.of(site("hill-school"), 1, FOLDER);
    }

    /** Outcomes of calculations, each run with those before it as inputs. */
    static Inputs outcomes(SiteSnapshot site, Calculation... inOrder) {
        Map<String, Outcome.Completed> outcomes = new LinkedHashMap<>();
        for (Calculation calculation : inOrder) {
            Outcome outcome = calculation.calculate(site, new Inputs(outcomes), new CalculationContext() {
                @Override
                public BooleanSupplier cancelled() {
                    return () -> false;
                }

                @Override
                public long randomSeed() {
                    return 42;
                }
            });
            if (outcome instanceof Outcome.Completed completed) {
                outcomes.put(CalculationDescriptor.of(calculation.getClass()).id(), completed);
            } else {
                throw new AssertionError(calculation.getClass().getSimpleName() + " has no answer: " + outcome);
            }
        }
        return new Inputs(outcomes);
    }
}
