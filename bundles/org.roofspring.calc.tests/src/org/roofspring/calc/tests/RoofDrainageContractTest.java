package org.roofspring.calc.tests;

import org.roofspring.calc.Calculation;
import org.roofspring.calc.Inputs;
import org.roofspring.calc.standard.RainRecordCalculation;
import org.roofspring.calc.standard.RoofDrainageCalculation;
import org.roofspring.calc.testkit.CalculationContractTest;
import org.roofspring.site.snapshot.SiteSnapshot;

class RoofDrainageContractTest extends CalculationContractTest {
    private static final SiteSnapshot SITE = DemoSites.school();
    private static final Inputs INPUTS = DemoSites.outcomes(SITE, new RainRecordCalculation());

    @Override
    protected Calculation calculation() {
        return new RoofDrainageCalculation();
    }

    @Override
    protected SiteSnapshot site() {
        return SITE;
    }

    @Override
    protected Inputs inputs() {
        return INPUTS;
    }
}
