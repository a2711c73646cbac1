package org.roofspring.ui.tests.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.osgi.framework.FrameworkUtil;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.engine.CalculationRegistry;
import org.roofspring.calc.engine.CalculationResult;
import org.roofspring.calc.engine.CalculationRunner;
import org.roofspring.calc.engine.SiteResults;
import org.roofspring.site.Purpose;
import org.roofspring.site.RoofMaterial;
import org.roofspring.site.Site;
import org.roofspring.site.edit.FirstSite;
import org.roofspring.site.io.SiteFiles;
import org.roofspring.site.snapshot.SiteSnapshot;

/** Eight answers make a site that can be saved, read again and calculated at once. */
class FirstSiteTest {
    private static final List<Double> NORMALS = Collections.nCopies(12, 80.0);
    private static final List<Double> WET_DAYS = Collections.nCopies(12, 8.0);
    @TempDir
    Path folder;

    private static FirstSite site(Optional<String> rainFile, double liftM) {
        return new FirstSite("Ridge house", 4, List.of(Purpose.DRINKING, Purpose.WASHING, Purpose.GARDEN), 80, RoofMaterial.CLAY_TILE,
                rainFile, rainFile.isPresent() ? List.of() : NORMALS, rainFile.isPresent() ? List.of() : WET_DAYS, 10, liftM, 0.95,
                Optional.of(2000.0));
    }

    private SiteResults results(FirstSite answers) throws IOException {
        Path file = folder.resolve("first.site");
        SiteFiles.save(answers.build(), file);
        Site again = SiteFiles.load(file);
        var context = FrameworkUtil.getBundle(getClass()).getBundleContext();
        CalculationRegistry registry = context.getService(context.getServiceReference(CalculationRegistry.class));
        return new CalculationRunner(registry).run(SiteSnapshot.of(again, 1, folder));
    }

    private static double number(SiteResults results, String calculation, String finding) {
        return ((FindingValue.Number) results.finding(calculation, finding).orElseThrow().value()).quantity().si();
    }

    private static void nothingFailed(SiteResults results) {
        for (CalculationResult result : results.results()) {
            assertTrue(result.status() != CalculationResult.Status.FAULT, () -> result.descriptor().id() + " failed");
        }
    }

    @Test
    void normalsAloneGiveAnAnswer() throws IOException {
        SiteResults results = results(site(Optional.empty(), 0));
        nothingFailed(results);
        double share = number(results, "storage.balance", "timeReliability");
        assertTrue(share > 0.5 && share <= 1, () -> "share of days " + share);
        assertEquals(12 * 80, number(results, "rain.record", "annualMean") * 1000, 120, "mean yearly rain [mm]");
        assertTrue(results.completed("rain.record").orElseThrow().cautions().stream().anyMatch(caution -> caution.code().equals("rain.invented")));
        assertTrue(results.completed("roof.drainage").isPresent());
    }

    @Test
    void aRecordAndALiftGiveAnAnswerAndSayWhatIsStillOpen() throws IOException {
        Files.copy(Path.of(System.getProperty("roofspring.demo-data"), "rain", "upland-40y.csv"), folder.resolve("rain.csv"));
        FirstSite answers = site(Optional.of("rain.csv"), 6);
        SiteResults results = results(answers);
        nothingFailed(results);
        assertTrue(number(results, "storage.balance", "timeReliability") > 0.3);
        assertEquals(2, answers.build().getTanks().size());
        assertEquals(1, answers.stillOpen().size());
        assertTrue(answers.stillOpen().get(0).contains("points of the pump"));
    }

    @Test
    void impossibleAnswersAreSentences() {
        assertTrue(assertThrows(IllegalArgumentException.class, () -> new FirstSite(" ", 4, List.of(Purpose.DRINKING), 80,
                RoofMaterial.SLATE, Optional.of("a.csv"), List.of(), List.of(), 10, 0, 0.9, Optional.empty())).getMessage().contains("name"));
        assertTrue(assertThrows(IllegalArgumentException.class, () -> new FirstSite("a", 4, List.of(), 80,
                RoofMaterial.SLATE, Optional.of("a.csv"), List.of(), List.of(), 10, 0, 0.9, Optional.empty())).getMessage().contains("use"));
        for (double area : new double[] { 0, -1, Double.NaN, 1e9 }) {
            assertTrue(assertThrows(IllegalArgumentException.class, () -> new FirstSite("a", 4, List.of(Purpose.DRINKING), area,
                    RoofMaterial.SLATE, Optional.of("a.csv"), List.of(), List.of(), 10, 0, 0.9, Optional.empty())).getMessage().contains("roof"));
        }
        assertThrows(IllegalArgumentException.class, () -> new FirstSite("a", 4, List.of(Purpose.DRINKING), 80, RoofMaterial.SLATE,
                Optional.empty(), NORMALS.subList(0, 11), WET_DAYS, 10, 0, 0.9, Optional.empty()));
        assertThrows(IllegalArgumentException.class, () -> new FirstSite("a", 4, List.of(Purpose.DRINKING), 80, RoofMaterial.SLATE,
                Optional.of("a.csv"), List.of(), List.of(), 10, 0, 1.5, Optional.empty()));
    }
}
