package org.roofspring.calc.tests;

import org.roofspring.calc.Calculation;
import org.roofspring.calc.standard.TreatmentVerdictCalculation;
import org.roofspring.calc.testkit.CalculationContractTest;
import org.roofspring.site.snapshot.SiteSnapshot;

class TreatmentVerdictContractTest extends CalculationContractTest {
    @Override
    protected Calculation calculation() {
        return new TreatmentVerdictCalculation();
    }

    @Override
    protected SiteSnapshot site() {
        return DemoSites.school();
    }
}
