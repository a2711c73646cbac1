package org.roofspring.calc.tests;

import org.roofspring.calc.Calculation;
import org.roofspring.calc.standard.GravitySupplyCalculation;
import org.roofspring.calc.testkit.CalculationContractTest;
import org.roofspring.site.snapshot.SiteSnapshot;

class GravitySupplyContractTest extends CalculationContractTest {
    @Override
    protected Calculation calculation() {
        return new GravitySupplyCalculation();
    }

    @Override
    protected SiteSnapshot site() {
        return DemoSites.school();
    }
}
