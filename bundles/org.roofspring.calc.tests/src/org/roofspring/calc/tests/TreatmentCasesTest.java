package org.roofspring.calc.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Stream;

import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.FindingValue.Verdict.Level;
import org.roofspring.calc.Outcome;
import org.roofspring.quantity.Quantity;
import org.roofspring.site.PipeMaterial;
import org.roofspring.site.Site;

/**
 * Trains that reach every microbial target and yet have a chemical hazard, an untested source or an interrupted
 * barrier. None may read "suitable"; each does as soon as its one fault is put right, so the fault is what was seen.
 */
class TreatmentCasesTest {
    /** What is wrong in a case: the word that the verdict must say it with, its level, and how it is put right. */
    private record Case(Level level, String says, Consumer<Site> mend) {
    }

    private static final Map<String, Case> CASES = new LinkedHashMap<>();

    static {
        CASES.put("lead-flashing", new Case(Level.BAD, "Lead flashing",
                site -> site.getRoofs().get(0).getHazards().clear()));
        CASES.put("spray-drift", new Case(Level.BAD, "Crops near the roof are sprayed",
                site -> site.getRoofs().get(0).getHazards().clear()));
        CASES.put("acid-water-in-copper", new Case(Level.BAD, "Copper dissolves", site -> {
            site.getRawWater().setPh(Quantity.of(7.2));
            site.getPipeRuns().get(0).setMaterial(PipeMaterial.POLYETHYLENE);
        }));
        CASES.put("new-concrete", new Case(Level.CONDITIONAL, "New concrete", site -> {
            site.getRawWater().setPh(Quantity.of(7.9));
            site.getTanks().get(0).setInstalled(LocalDate.of(2015, 6, 1));
        }));
        CASES.put("untested-source", new Case(Level.CONDITIONAL, "tested for E. coli", site -> {
            Site tested = TreatmentSites.load("lead-flashing");
            site.getWaterTests().addAll(List.copyOf(tested.getWaterTests().subList(0, 2)));
        }));
        CASES.put("lamp-without-power", new Case(Level.CONDITIONAL, "out for 5.00 % of the time",
                site -> TreatmentSites.step(site, "step-uv").setAvailability(Quantity.valueOf("100 %"))));
        CASES.put("overdue-filter", new Case(Level.CONDITIONAL, "no credit until this holds: It is changed after 180",
                site -> TreatmentSites.step(site, "step-02um").setLastChanged(LocalDate.of(2024, 11, 10))));
        CASES.put("carbon-after-chlorine", new Case(Level.CONDITIONAL, "Carbon after chlorine",
                site -> site.getTrains().get(0).getSteps().move(2, 3)));
    }

    @TestFactory
    Stream<DynamicTest> neverSuitable() {
        return CASES.entrySet().stream().map(entry -> DynamicTest.dynamicTest(entry.getKey(), () -> {
            Outcome.Completed outcome = TreatmentSites.completed(TreatmentSites.load(entry.getKey()));
            reachesEveryTarget(outcome);
            FindingValue.Verdict verdict = TreatmentSites.verdict(TreatmentSites.load(entry.getKey()));
            Case wrong = entry.getValue();
            assertEquals(wrong.level(), verdict.level(), verdict.toString());
            String expected = wrong.level() == Level.BAD ? "not suitable for drinking"
                    : "suitable for drinking if all of this holds";
            assertEquals(expected, verdict.text());
            assertTrue(verdict.reasons().stream().anyMatch(reason -> reason.contains(wrong.says())),
                    verdict.toString());
            assertTrue(verdict.reasons().stream().anyMatch(reason -> reason.contains("health authority")
                    && reason.contains("tested")), "the advice stands under every verdict");
            assertFalse(verdict.toString().matches("(?s).*\\bsafe\\b.*"), verdict.toString());
        }));
    }

    @TestFactory
    Stream<DynamicTest> suitableOnceTheFaultIsPutRight() {
        return CASES.entrySet().stream().map(entry -> DynamicTest.dynamicTest(entry.getKey(), () -> {
            Site site = TreatmentSites.load(entry.getKey());
            entry.getValue().mend().accept(site);
            FindingValue.Verdict verdict = TreatmentSites.verdict(site);
            assertEquals(Level.GOOD, verdict.level(), verdict.toString());
            assertTrue(verdict.text().startsWith("suitable for drinking, on the stated assumptions"), verdict.text());
        }));
    }

    @Test
    void everyCommittedCaseIsTested() throws IOException {
        try (Stream<java.nio.file.Path> files = Files.list(TreatmentSites.FOLDER)) {
            assertEquals(new TreeSet<>(CASES.keySet()), new TreeSet<>(files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".site")).map(name -> name.replace(".site", "")).toList()));
        }
        assertEquals(8, CASES.size());
    }

    private static void reachesEveryTarget(Outcome.Completed outcome) {
        double[] logs = TreatmentSites.logs(outcome);
        double[] target = TreatmentSites.target(outcome);
        double asked = 0;
        for (int i = 0; i < logs.length; i++) {
            assertTrue(logs[i] >= target[i] - 1e-9, "group " + i + ": " + logs[i] + " of " + target[i]);
            asked += target[i];
        }
        assertTrue(asked > 0, "something is asked for");
    }
}
