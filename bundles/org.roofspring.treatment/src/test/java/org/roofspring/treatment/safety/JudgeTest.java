package org.roofspring.treatment.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

import org.junit.jupiter.api.Test;

import org.roofspring.treatment.LogReductions;
import org.roofspring.treatment.train.StepLibrary;
import org.roofspring.treatment.train.TrainEvaluator;
import org.roofspring.treatment.train.TrainFlow;
import org.roofspring.treatment.train.TrainResult;
import org.roofspring.treatment.train.TrainStep;
import org.roofspring.treatment.train.WaterState;

/** Targets, tests, inspection, plan, and what every verdict has in common. */
class JudgeTest {
    private static final LocalDate DAY = LocalDate.of(2025, 6, 1);
    private static final WaterState WATER = WaterState.of(0.8, 7, 18, 0.9);
    private static final TrainFlow FLOW = new TrainFlow(8 / 60_000.0, 0.02, 0, OptionalDouble.of(40));

    private static WaterTest test(TestParameter parameter, double value, String date, WaterTest.Point point) {
        return new WaterTest(parameter, value, LocalDate.parse(date), "District laboratory", point);
    }

    /** WHO 2011 levels (MEM, from memory): 2/3/2 and 4/5/4 log of bacteria, viruses, protozoa. */
    @Test
    void targets() {
        assertEquals(new LogReductions(2, 3, 2, 2), UseTarget.of(Use.DRINKING, false, true).logs());
        assertEquals(new LogReductions(2, 0, 2, 2), UseTarget.of(Use.COOKING, false, false).logs());
        assertEquals(new LogReductions(4, 5, 4, 4), UseTarget.of(Use.DRINKING, true, false).logs());
        assertEquals(new LogReductions(1, 2, 1, 1), UseTarget.of(Use.WASHING, false, true).logs());
        assertEquals(LogReductions.NONE, UseTarget.of(Use.GARDEN, true, true).logs());
        UseTarget byRisk = UseTarget.fromRisk(group -> switch (group) {
            case BACTERIA -> 100;
            case VIRUSES -> 10;
            case GIARDIA -> 0;
            case CRYPTOSPORIDIUM -> 10;
        }, 1, 1e-6);
        assertEquals(5.96, byRisk.logs().bacteria(), 0.005);
        assertEquals(5.62, byRisk.logs().viruses(), 0.005);
        assertEquals(0, byRisk.logs().giardia());
        assertEquals(4.19, byRisk.logs().cryptosporidium(), 0.005);
    }

    @Test
    void testResultsTriggerTheirAction() {
        WaterTests tests = WaterTests.of(DAY, List.of(
                test(TestParameter.E_COLI, 12, "2025-01-01", WaterTest.Point.TAP),
                test(TestParameter.E_COLI, 0, "2025-05-01", WaterTest.Point.TAP),
                test(TestParameter.E_COLI, 150, "2025-05-01", WaterTest.Point.SOURCE),
                test(TestParameter.PH, 5.6, "2025-05-01", WaterTest.Point.SOURCE),
                test(TestParameter.TURBIDITY, 9, "2026-01-01", WaterTest.Point.TAP)));
        assertTrue(tests.sourceTested());
        assertEquals(List.of(TestParameter.E_COLI, TestParameter.PH),
                tests.bad().stream().map(WaterTest::parameter).toList());
        assertEquals(WaterTest.Point.SOURCE, tests.bad().get(0).point());
        TrainResult train = TrainEvaluator.evaluate(List.of(StepLibrary.uvLamp(40)), WATER, FLOW);
        Verdict verdict = Judge.judge(train, WATER, new Situation(Use.DRINKING, false, false, false, Set.of(), Set.of(),
                tests, Optional.empty()));
        assertEquals(Verdict.Outcome.SUITABLE_IF, verdict.outcome());
        assertTrue(verdict.text().contains("pH 5.6"));
        assertFalse(verdict.text().contains("150"), "E. coli in the tank is what the train is for");
        WaterTests positive = WaterTests.of(DAY, List.of(test(TestParameter.E_COLI, 1, "2025-05-01",
                WaterTest.Point.TAP)));
        Verdict bad = Judge.judge(train, WATER, new Situation(Use.DRINKING, false, false, false, Set.of(), Set.of(),
                positive, Optional.empty()));
        assertEquals(Verdict.Outcome.NOT_SUITABLE, bad.outcome());
        assertTrue(bad.text().contains("Boil or disinfect"));
    }

    @Test
    void limitsAreEditable() {
        WaterTest lead = test(TestParameter.LEAD, 0.008, "2025-05-01", WaterTest.Point.TAP);
        assertTrue(lead.withinLimit());
        TestLimit stricter = new TestLimit(OptionalDouble.empty(), OptionalDouble.of(0.005), true,
                TestParameter.LEAD.defaultLimit().source(), "stop");
        assertFalse(new WaterTests(List.of(lead), DAY, 366, Map.of(TestParameter.LEAD, stricter)).within(lead));
        assertEquals("from 6.5 to 8.5", TestParameter.PH.defaultLimit().text(""));
        assertEquals("at most 0.01 mg/L", TestParameter.LEAD.defaultLimit().text("mg/L"));
        assertTrue(TestParameter.FREE_CHLORINE.defaultLimit().allows(0.2));
        assertFalse(TestParameter.FREE_CHLORINE.defaultLimit().allows(0.19));
        for (TestParameter parameter : TestParameter.values()) {
            assertFalse(parameter.defaultLimit().source().text().isBlank());
        }
    }

    @Test
    void inspectionIsScored() {
        Map<InspectionQuestion, Boolean> answers = new EnumMap<>(InspectionQuestion.class);
        assertEquals(10, InspectionScore.of(answers).highest());
        assertEquals(InspectionScore.Level.VERY_HIGH, InspectionScore.of(answers).level(), "nothing was looked at");
        for (InspectionQuestion question : InspectionQuestion.values()) {
            answers.put(question, false);
        }
        assertEquals(InspectionScore.Level.LOW, InspectionScore.of(answers).level());
        InspectionScore.Level[] levels = {InspectionScore.Level.LOW, InspectionScore.Level.LOW,
            InspectionScore.Level.INTERMEDIATE, InspectionScore.Level.INTERMEDIATE, InspectionScore.Level.INTERMEDIATE,
            InspectionScore.Level.HIGH, InspectionScore.Level.HIGH, InspectionScore.Level.HIGH,
            InspectionScore.Level.VERY_HIGH, InspectionScore.Level.VERY_HIGH};
        for (int faults = 1; faults <= 10; faults++) {
            answers.put(InspectionQuestion.values()[faults - 1], true);
            assertEquals(levels[faults - 1], InspectionScore.of(answers).level());
        }
    }

    @Test
    void planCoversStepsHazardsAndTests() {
        TrainResult train = TrainEvaluator.evaluate(StepLibrary.palette(), WATER, FLOW);
        Situation situation = new Situation(Use.DRINKING, true, true, true, EnumSet.allOf(Hazard.class),
                EnumSet.allOf(VirusPathway.class), WaterTests.of(DAY, List.of()),
                Optional.of(InspectionScore.of(Map.of(InspectionQuestion.TANK_OPEN, true))));
        SafetyPlan plan = SafetyPlan.of(train, situation);
        for (TrainStep step : StepLibrary.palette()) {
            assertTrue(plan.rows().stream().anyMatch(row -> row.control().equals(step.name())), step.name());
        }
        for (Hazard hazard : Hazard.values()) {
            assertTrue(plan.rows().stream().anyMatch(row -> row.hazard().equals(hazard.danger())), hazard.label());
        }
        assertTrue(plan.rows().stream().anyMatch(row -> row.hazard().contains(TestParameter.E_COLI.label())));
        assertThrows(IllegalArgumentException.class, () -> new PlanRow(" ", "a", "b", "c", "d", "e"));
    }
}
