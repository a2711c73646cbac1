package org.roofspring.calc.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.roofspring.calc.Finding;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.engine.CalculationRegistry;
import org.roofspring.calc.engine.CalculationRunner;
import org.roofspring.calc.engine.SiteResults;
import org.roofspring.calc.standard.GravitySupplyCalculation;
import org.roofspring.calc.standard.TreatmentVerdictCalculation;
import org.roofspring.quantity.Quantity;
import org.roofspring.site.Site;
import org.roofspring.site.TreatmentStep;
import org.roofspring.site.snapshot.SiteSnapshot;

/** A filter's head loss is one value of the site: the train and the taps behind it feel it in one recalculation. */
class TreatmentGravityTest {
    private static final String TAP = "tap-fountain";

    private final CalculationRunner runner;
    private final Site school = DemoSites.site("hill-school");
    private final TreatmentStep filter = TreatmentSites.step(school, "step-1um");

    TreatmentGravityTest() {
        CalculationRegistry registry = new CalculationRegistry();
        registry.add(new GravitySupplyCalculation());
        registry.add(new TreatmentVerdictCalculation());
        runner = new CalculationRunner(registry);
    }

    private SiteResults run(long revision) {
        SiteResults results = runner.run(SiteSnapshot.of(school, revision, DemoSites.FOLDER));
        results.results().forEach(result -> assertEquals(revision, result.revision(), result.descriptor().id()));
        return results;
    }

    private static double head(SiteResults results, String calculation, String finding, String element) {
        return results.finding(calculation, finding, element).map(Finding::value)
                .map(value -> ((FindingValue.Number) value).quantity().si()).orElseThrow();
    }

    @Test
    void aFouledFilterTakesHeadFromTheTapInTheSameRecalculation() {
        SiteResults before = run(1);
        double residual = head(before, "gravity.supply", "residualHeadFouled", TAP);
        double train = head(before, "treatment.verdict", "headLossFouled", "train");
        filter.setHeadLossFouled(Quantity.valueOf("2.8 m(head)"));
        SiteResults after = run(2);
        // 1 m more at 12 L/min, which is the design flow and the reference flow
        assertEquals(train + 1, head(after, "treatment.verdict", "headLossFouled", "train"), 1e-9);
        double less = residual - head(after, "gravity.supply", "residualHeadFouled", TAP);
        assertTrue(less > 0.05, "only " + less + " m less at the tap");
        assertEquals(head(before, "gravity.supply", "residualHead", TAP),
                head(after, "gravity.supply", "residualHead", TAP), 1e-9, "a clean filter is as it was");
        filter.setHeadLossFouled(Quantity.valueOf("1.8 m(head)"));
        assertEquals(residual, head(run(3), "gravity.supply", "residualHeadFouled", TAP), 1e-12);
    }

    @Test
    void aFilterSetAsideGivesItsHeadBack() {
        double residual = head(run(1), "gravity.supply", "residualHead", TAP);
        filter.setActive(false);
        SiteResults after = run(2);
        assertTrue(head(after, "gravity.supply", "residualHead", TAP) > residual);
        assertEquals(0.6, head(after, "treatment.verdict", "headLossClean", "train"), 1e-9);
    }
}
