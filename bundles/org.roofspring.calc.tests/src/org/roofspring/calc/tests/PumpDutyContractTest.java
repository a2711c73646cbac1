package org.roofspring.calc.tests;

import org.roofspring.calc.Calculation;
import org.roofspring.calc.standard.PumpDutyCalculation;
import org.roofspring.calc.testkit.CalculationContractTest;
import org.roofspring.site.snapshot.SiteSnapshot;

class PumpDutyContractTest extends CalculationContractTest {
    @Override
    protected Calculation calculation() {
        return new PumpDutyCalculation();
    }

    @Override
    protected SiteSnapshot site() {
        return DemoSites.school();
    }
}
