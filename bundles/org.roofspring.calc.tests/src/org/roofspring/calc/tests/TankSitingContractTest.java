package org.roofspring.calc.tests;

import org.roofspring.calc.Calculation;
import org.roofspring.calc.standard.TankSitingCalculation;
import org.roofspring.calc.testkit.CalculationContractTest;
import org.roofspring.site.snapshot.SiteSnapshot;

class TankSitingContractTest extends CalculationContractTest {
    @Override
    protected Calculation calculation() {
        return new TankSitingCalculation();
    }

    @Override
    protected SiteSnapshot site() {
        return DemoSites.school();
    }
}
