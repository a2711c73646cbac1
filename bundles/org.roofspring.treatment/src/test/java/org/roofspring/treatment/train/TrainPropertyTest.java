package org.roofspring.treatment.train;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.statistics.Statistics;

import org.roofspring.treatment.PathogenGroup;
import org.roofspring.treatment.disinfection.Baffling;
import org.roofspring.treatment.disinfection.Boiling;

/** What holds for any train. */
class TrainPropertyTest {
    private static final TrainFlow FLOW = new TrainFlow(8 / 60_000.0, 0.02, 0, OptionalDouble.of(35));

    @Provide
    Arbitrary<List<TrainStep>> trains() {
        return steps().list().ofMinSize(0).ofMaxSize(7).map(TrainPropertyTest::numbered);
    }

    @Provide
    Arbitrary<TrainStep> steps() {
        List<TrainStep> library = new ArrayList<>(StepLibrary.palette());
        library.add(StepLibrary.chlorination(OptionalDouble.of(0.4), 3000, Baffling.POOR));
        library.add(StepLibrary.chlorination(OptionalDouble.of(2), 7200, Baffling.STANDING));
        library.add(StepLibrary.uvLamp(5));
        library.add(StepLibrary.uvLamp(150));
        library.add(StepLibrary.boil(3000, Boiling.Agency.CDC, 60));
        Arbitrary<Double> out = Arbitraries.of(0.0, 0.0, 0.001, 0.05, 1.0);
        return Combinators.combine(Arbitraries.of(library), out)
                .as((step, ratio) -> step.withRunning(Running.out(ratio)));
    }

    @Provide
    Arbitrary<WaterState> waters() {
        return Combinators.combine(Arbitraries.of(0.2, 0.9, 2.0, 8.0, 40.0), Arbitraries.of(5.0, 6.5, 7.4, 8.6, 9.5),
                Arbitraries.of(0.1, 4.0, 18.0, 32.0), Arbitraries.of(0.6, 0.9)).as(WaterState::of);
    }

    private static List<TrainStep> numbered(List<TrainStep> steps) {
        List<TrainStep> numbered = new ArrayList<>();
        for (int i = 0; i < steps.size(); i++) {
            numbered.add(steps.get(i).withId("s" + i));
        }
        return numbered;
    }

    /** Adding a barrier anywhere never lowers a reduction unless a condition that held is broken by it. */
    @Property
    void addingABarrierNeverLowersAReduction(@ForAll("trains") List<TrainStep> train, @ForAll("steps") TrainStep added,
            @ForAll @IntRange(min = 0, max = 7) int place, @ForAll("waters") WaterState water) {
        TrainResult before = TrainEvaluator.evaluate(train, water, FLOW);
        List<TrainStep> longer = new ArrayList<>(train);
        longer.add(Math.min(place, train.size()), added.withId("added"));
        TrainResult after = TrainEvaluator.evaluate(longer, water, FLOW);
        boolean breaks = !broken(before).containsAll(broken(after).stream().filter(code -> !code.startsWith("added"))
                .toList());
        Statistics.label("a condition breaks").collect(breaks)
                .coverage(coverage -> coverage.check(false).percentage(share -> share > 60));
        if (breaks) {
            return;
        }
        for (PathogenGroup group : PathogenGroup.values()) {
            assertTrue(after.total().of(group) >= before.total().of(group) - 1e-12, group + ": " + before.total()
                    + " became " + after.total());
        }
    }

    private static Set<String> broken(TrainResult result) {
        return result.steps().stream().flatMap(step -> step.failed().stream()
                .map(condition -> step.step().id() + " " + condition.code())).collect(Collectors.toSet());
    }

    /** Cumulative reductions rise along the train, end in the total and stay inside the caps. */
    @Property
    void cumulativeRisesToTheTotal(@ForAll("trains") List<TrainStep> train, @ForAll("waters") WaterState water) {
        TrainResult result = TrainEvaluator.evaluate(train, water, FLOW);
        for (PathogenGroup group : PathogenGroup.values()) {
            double last = 0;
            for (StepResult step : result.steps()) {
                assertTrue(step.cumulative().of(group) >= last);
                assertTrue(step.earned().of(group) <= CreditCaps.DEFAULT.perStep());
                assertTrue(step.failed().isEmpty() || step.earned().of(group) == 0);
                last = step.cumulative().of(group);
            }
            assertEquals(last, result.total().of(group));
            assertTrue(last <= CreditCaps.DEFAULT.perTrain());
        }
    }

    /** A slow second way: the total by sorting all steps into mechanisms afterwards. */
    @Property
    void totalAgreesWithASlowSecondWay(@ForAll("trains") List<TrainStep> train, @ForAll("waters") WaterState water) {
        TrainResult result = TrainEvaluator.evaluate(train, water, FLOW);
        for (PathogenGroup group : PathogenGroup.values()) {
            Map<Mechanism, Double> best = new HashMap<>();
            for (StepResult step : result.steps()) {
                double credit = step.conditions().stream().allMatch(Condition::met)
                        ? Math.min(6, step.credits().get(group).log()) : 0;
                double out = step.step().running().outageRatio();
                double passing = (1 - out) * Math.pow(10, -credit) + out;
                best.merge(step.step().treatment().mechanism(), -Math.log10(passing), Math::max);
            }
            double sum = best.values().stream().mapToDouble(Double::doubleValue).sum();
            assertEquals(Math.min(9, sum), result.total().of(group), 1e-9);
        }
    }

    @Property
    void outageOnlyTakesAway(@ForAll @DoubleRange(min = 0, max = 20) double log,
            @ForAll @DoubleRange(min = 0, max = 1) @Scale(6) double out) {
        double left = Availability.effectiveLog(log, out);
        assertTrue(left >= 0 && left <= log);
        if (out > 0) {
            assertTrue(left <= -Math.log10(out) + 1e-9);
        }
    }

    @Property
    void headLossRisesWithFlowAndFouling(@ForAll @DoubleRange(min = 0, max = 0.001) @Scale(7) double flow) {
        for (TrainStep step : StepLibrary.palette()) {
            HeadLoss loss = step.service().headLoss();
            assertTrue(loss.fouledHeadM(flow) >= loss.cleanHeadM(flow));
            assertTrue(loss.cleanHeadM(flow * 1.1) >= loss.cleanHeadM(flow));
        }
    }
}
