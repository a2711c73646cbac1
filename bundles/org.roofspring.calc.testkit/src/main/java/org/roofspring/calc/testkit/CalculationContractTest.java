package org.roofspring.calc.testkit;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.BooleanSupplier;

import org.junit.jupiter.api.Test;
import org.roofspring.calc.Calculation;
import org.roofspring.calc.CalculationContext;
import org.roofspring.calc.CalculationInfo;
import org.roofspring.calc.Caution;
import org.roofspring.calc.Finding;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.Inputs;
import org.roofspring.calc.Outcome;
import org.roofspring.quantity.QuantityFormat;
import org.roofspring.site.SiteFactory;
import org.roofspring.site.snapshot.SiteSnapshot;

/**
 * The rules that every calculation keeps. Extend it, say which calculation and which site, and run it with JUnit 5.
 */
public abstract class CalculationContractTest {
    private static final int LONGEST_TITLE = 50;

    /** The calculation under test. */
    protected abstract Calculation calculation();

    /** A site to which it applies and for which it has an answer. */
    protected abstract SiteSnapshot site();

    /** The findings it requires, for {@link #site()}; none unless overridden. */
    protected Inputs inputs() {
        return Inputs.none();
    }

    /** Longest time from being asked to cancel until it stops. */
    protected Duration cancelBound() {
        return Duration.ofSeconds(1);
    }

    private CalculationContext context(BooleanSupplier cancelled) {
        return new CalculationContext() {
            @Override
            public BooleanSupplier cancelled() {
                return cancelled;
            }

            @Override
            public long randomSeed() {
                return 42;
            }
        };
    }

    private Outcome calculate() {
        return calculation().calculate(site(), inputs(), context(() -> false));
    }

    private Outcome.Completed completed() {
        Outcome outcome = calculate();
        if (outcome instanceof Outcome.NotComputable none) {
            throw new AssertionError("no answer for the site of this test: " + none.problems());
        }
        return (Outcome.Completed) outcome;
    }

    @Test
    void carriesItsIdentity() {
        CalculationInfo info = calculation().getClass().getAnnotation(CalculationInfo.class);
        assertNotNull(info, "@CalculationInfo is missing");
        assertTrue(info.id().matches("[a-z][a-z0-9]*([.-][a-z0-9]+)*"), "id is dotted lower case: " + info.id());
        assertFalse(info.title().isBlank(), "title");
        assertFalse(info.version().isBlank(), "version");
        assertTrue(info.reads().length + info.requires().length > 0, "it must say what it reads");
    }

    @Test
    void anEmptySiteIsAnsweredWithReasonsOrAnAnswer() {
        SiteSnapshot empty = SiteSnapshot.of(SiteFactory.eINSTANCE.createSite(), 1, null);
        assertDoesNotThrow(() -> calculation().check(empty));
    }

    @Test
    void appliesToItsSite() {
        assertEquals(List.of(), calculation().check(site()).reasons());
    }

    @Test
    void sameInputSameOutcome() {
        assertEquals(calculate(), calculate());
    }

    @Test
    void severalThreadsGetTheSameOutcome() throws Exception {
        Outcome expected = calculate();
        Calculation shared = calculation();
        SiteSnapshot site = site();
        Inputs inputs = inputs();
        ExecutorService threads = Executors.newFixedThreadPool(4);
        try {
            List<Future<Outcome>> outcomes = new ArrayList<>();
            for (int i = 0; i < 8; i++) {
                outcomes.add(threads.submit(() -> shared.calculate(site, inputs, context(() -> false))));
            }
            for (Future<Outcome> outcome : outcomes) {
                assertEquals(expected, outcome.get());
            }
        } finally {
            threads.shutdownNow();
        }
    }

    @Test
    void stopsSoonWhenCancelled() {
        Calculation calculation = calculation();
        SiteSnapshot site = site();
        Inputs inputs = inputs();
        assertTimeoutPreemptively(cancelBound(), () -> {
            try {
                calculation.calculate(site, inputs, context(() -> true));
            } catch (CancellationException e) {
                assertNotNull(e, "stopping this way is what cancelling is for");
            }
        });
    }

    @Test
    void findingsAreNamedOnce() {
        Set<String> names = new HashSet<>();
        for (Finding finding : completed().findings()) {
            assertTrue(names.add(finding.id() + "@" + finding.elementId()), "twice: " + finding.id() + "@" + finding.elementId());
            assertFalse(finding.title().isBlank(), finding.id());
            assertTrue(finding.title().length() <= LONGEST_TITLE,
                    "a title fits its column with at most " + LONGEST_TITLE + " characters: " + finding.title());
        }
    }

    @Test
    void everyNumberHasWorkingsWithASource() {
        Outcome.Completed outcome = completed();
        Set<String> explained = new HashSet<>();
        outcome.workings().forEach(working -> {
            assertTrue(outcome.finding(working.findingId(), working.elementId()).isPresent(),
                    "workings for no finding: " + working.findingId() + "@" + working.elementId());
            assertFalse(working.steps().isEmpty(), working.findingId());
            working.steps().forEach(step -> assertFalse(step.source().toString().isBlank(), working.findingId()));
            explained.add(working.findingId() + "@" + working.elementId());
        });
        for (Finding finding : outcome.findings()) {
            if (finding.value() instanceof FindingValue.Number) {
                assertTrue(explained.contains(finding.id() + "@" + finding.elementId()),
                        "no workings for " + finding.id() + "@" + finding.elementId());
            }
        }
    }

    @Test
    void cautionsCanBeRead() {
        for (Caution caution : calculate().cautions()) {
            String text = caution.text(QuantityFormat.metric());
            assertFalse(text.isBlank() || text.contains("{"), caution.code() + ": " + text);
            assertTrue(caution.code().matches("[a-z][a-z0-9]*([.-][a-z0-9]+)*"), caution.code());
        }
    }
}
