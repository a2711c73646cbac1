package org.roofspring.calc.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;

import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.engine.CalculationRegistry;
import org.roofspring.calc.engine.CalculationRunner;
import org.roofspring.calc.engine.SiteResults;
import org.roofspring.calc.standard.OverheadDayCalculation;
import org.roofspring.calc.standard.PumpDutyCalculation;
import org.roofspring.calc.standard.PumpRunningCalculation;
import org.roofspring.calc.standard.RainRecordCalculation;
import org.roofspring.calc.standard.RoofDrainageCalculation;
import org.roofspring.calc.standard.SiteEconomyCalculation;
import org.roofspring.calc.standard.SiteReadingsCalculation;
import org.roofspring.calc.standard.SiteStagesCalculation;
import org.roofspring.calc.standard.SiteUpkeepCalculation;
import org.roofspring.calc.standard.StorageAccidentsCalculation;
import org.roofspring.calc.standard.StorageBalanceCalculation;
import org.roofspring.calc.standard.StorageOutlookCalculation;
import org.roofspring.calc.standard.StorageSizingCalculation;
import org.roofspring.quantity.Quantity;
import org.roofspring.site.snapshot.SiteSnapshot;

/**
 * Whole demo sites against the figures in {@code demo-data/expected}: regression values, computed by this program and
 * looked at by people; they catch a change that nobody meant.
 */
class DemoSitesGoldenTest {

    @TestFactory
    List<DynamicTest> hillSchool() throws IOException {
        return golden("hill-school");
    }

    @TestFactory
    List<DynamicTest> household() throws IOException {
        return golden("household");
    }

    private static List<DynamicTest> golden(String name) throws IOException {
        CalculationRegistry registry = new CalculationRegistry();
        registry.add(new RainRecordCalculation());
        registry.add(new PumpDutyCalculation());
        registry.add(new RoofDrainageCalculation());
        registry.add(new StorageBalanceCalculation());
        registry.add(new StorageSizingCalculation());
        registry.add(new StorageOutlookCalculation());
        registry.add(new StorageAccidentsCalculation());
        registry.add(new OverheadDayCalculation());
        registry.add(new PumpRunningCalculation());
        registry.add(new SiteEconomyCalculation());
        registry.add(new SiteStagesCalculation());
        registry.add(new SiteUpkeepCalculation());
        registry.add(new SiteReadingsCalculation());
        SiteResults results = new CalculationRunner(registry).run(SiteSnapshot.of(DemoSites.site(name), 1, DemoSites.FOLDER));
        List<String> lines = Files.readAllLines(DemoSites.FOLDER.resolve("expected").resolve(name + ".csv"));
        assertTrue(lines.size() > 10, "expected figures of " + name);
        return lines.stream().skip(1).map(line -> line.split(",")).map(row -> DynamicTest.dynamicTest(row[0], () -> check(results, row))).toList();
    }

    /** A row: calculation/finding@element, value, unit, relative tolerance, standing. */
    private static void check(SiteResults results, String[] row) {
        String[] path = row[0].split("[/@]");
        FindingValue value = (path.length > 2 ? results.finding(path[0], path[1], path[2]) : results.finding(path[0], path[1])).orElseThrow().value();
        Quantity quantity = ((FindingValue.Number) value).quantity();
        double expected = Double.parseDouble(row[1]);
        assertEquals(row[2], quantity.unit().symbol());
        assertEquals(expected, quantity.value(), Math.abs(expected) * Double.parseDouble(row[3]));
    }
}
