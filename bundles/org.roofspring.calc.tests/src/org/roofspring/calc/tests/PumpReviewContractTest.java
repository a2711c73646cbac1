package org.roofspring.calc.tests;

import org.roofspring.calc.Calculation;
import org.roofspring.calc.standard.PumpReviewCalculation;
import org.roofspring.calc.testkit.CalculationContractTest;
import org.roofspring.site.snapshot.SiteSnapshot;

class PumpReviewContractTest extends CalculationContractTest {
    @Override
    protected Calculation calculation() {
        return new PumpReviewCalculation();
    }

    @Override
    protected SiteSnapshot site() {
        return DemoSites.school();
    }
}
