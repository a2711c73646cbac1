package org.roofspring.treatment.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

import org.roofspring.treatment.disinfection.Baffling;
import org.roofspring.treatment.train.Running;
import org.roofspring.treatment.train.StepLibrary;
import org.roofspring.treatment.train.TrainEvaluator;
import org.roofspring.treatment.train.TrainFlow;
import org.roofspring.treatment.train.TrainResult;
import org.roofspring.treatment.train.TrainStep;
import org.roofspring.treatment.train.WaterState;

/** What every verdict has in common. */
class JudgePropertyTest {
    private static final LocalDate DAY = LocalDate.of(2025, 6, 1);
    private static final WaterState WATER = WaterState.of(0.8, 7, 18, 0.9);
    private static final TrainFlow FLOW = new TrainFlow(8 / 60_000.0, 0.02, 0, OptionalDouble.of(40));

    @Provide
    Arbitrary<Situation> situations() {
        Arbitrary<WaterTests> tests = Combinators.combine(Arbitraries.of(TestParameter.class),
                Arbitraries.of(0.0, 0.02, 1.0, 7.0, 9.0), Arbitraries.of(WaterTest.Point.class))
                .as((parameter, value, point) -> new WaterTest(parameter, value, LocalDate.of(2025, 1, 1), "own kit",
                        point)).list().ofMaxSize(4).map(list -> WaterTests.of(DAY, list));
        return Combinators.combine(Arbitraries.of(Use.class), Arbitraries.of(true, false), Arbitraries.of(true, false),
                Arbitraries.of(true, false), Arbitraries.of(Hazard.class).set().ofMaxSize(3),
                Arbitraries.of(VirusPathway.class).set().ofMaxSize(2), tests)
                .as((use, vulnerable, aerosol, stored, hazards, ways, results) -> new Situation(use, vulnerable,
                        aerosol, stored, hazards, ways, results, Optional.empty()));
    }

    @Provide
    Arbitrary<TrainResult> trains() {
        List<TrainStep> library = new ArrayList<>(StepLibrary.palette());
        library.add(StepLibrary.chlorination(OptionalDouble.of(2), 7200, Baffling.STANDING));
        return Combinators.combine(Arbitraries.of(library), Arbitraries.of(0.0, 0.0, 0.05))
                .as((step, out) -> step.withRunning(Running.out(out))).list().ofMaxSize(4).map(steps -> {
                    List<TrainStep> numbered = new ArrayList<>();
                    steps.forEach(step -> numbered.add(step.withId("s" + numbered.size())));
                    return TrainEvaluator.evaluate(numbered, WATER, FLOW);
                });
    }

    /** What no verdict may do, whatever the train and the situation. */
    @Property
    void everyVerdictKeepsTheRules(@ForAll("trains") TrainResult train, @ForAll("situations") Situation situation) {
        Verdict verdict = Judge.judge(train, WATER, situation);
        assertTrue(verdict.text().endsWith(Verdict.ADVICE));
        assertFalse(verdict.text().toLowerCase(Locale.ROOT).matches("(?s).*\\bsafe\\b.*"), verdict.text());
        if (!situation.tests().sourceTested()) {
            assertTrue(verdict.conditions().stream().anyMatch(text -> text.contains("tested for E. coli")));
        }
        if (verdict.outcome() == Verdict.Outcome.SUITABLE) {
            assertTrue(situation.tests().sourceTested());
            assertTrue(train.total().reaches(situation.defaultTarget().logs()));
            if (situation.use() != Use.GARDEN) {
                assertTrue(train.steps().stream().noneMatch(step -> step.interrupted()));
            }
            if (situation.use().swallowed()) {
                assertTrue(situation.hazards().isEmpty());
            }
        }
        if (situation.use().swallowed() && !situation.virusPathways().isEmpty() && train.total().viruses() < 3 - 1e-9) {
            assertEquals(Verdict.Outcome.NOT_SUITABLE, verdict.outcome());
            situation.virusPathways().forEach(way -> assertTrue(verdict.text().contains(way.label())));
        }
        assertEquals(verdict.outcome() == Verdict.Outcome.NOT_SUITABLE, !verdict.reasons().isEmpty());
    }
}
