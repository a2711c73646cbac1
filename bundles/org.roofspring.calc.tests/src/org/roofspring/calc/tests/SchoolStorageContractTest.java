package org.roofspring.calc.tests;

import org.roofspring.calc.Inputs;
import org.roofspring.calc.standard.PumpDutyCalculation;
import org.roofspring.calc.standard.RainRecordCalculation;
import org.roofspring.calc.standard.RoofDrainageCalculation;
import org.roofspring.calc.testkit.CalculationContractTest;
import org.roofspring.site.snapshot.SiteSnapshot;

/** The contract for calculations of storage, on the demo school with all that they may use. */
abstract class SchoolStorageContractTest extends CalculationContractTest {
    private static final SiteSnapshot SITE = DemoSites.school();
    private static final Inputs INPUTS = DemoSites.outcomes(SITE, new RainRecordCalculation(),
            new PumpDutyCalculation(), new RoofDrainageCalculation());

    @Override
    protected SiteSnapshot site() {
        return SITE;
    }

    @Override
    protected Inputs inputs() {
        return INPUTS;
    }
}
