package org.roofspring.calc.tests;

import org.roofspring.calc.Calculation;
import org.roofspring.calc.Inputs;
import org.roofspring.calc.standard.PumpDutyCalculation;
import org.roofspring.calc.standard.PumpRunningCalculation;
import org.roofspring.calc.standard.RainRecordCalculation;
import org.roofspring.calc.standard.RoofDrainageCalculation;
import org.roofspring.calc.standard.SiteEconomyCalculation;
import org.roofspring.calc.standard.StorageBalanceCalculation;
import org.roofspring.calc.testkit.CalculationContractTest;
import org.roofspring.site.snapshot.SiteSnapshot;

class SiteEconomyContractTest extends CalculationContractTest {
    private static final SiteSnapshot SITE = DemoSites.school();
    private static final Inputs INPUTS = DemoSites.outcomes(SITE, new RainRecordCalculation(),
            new PumpDutyCalculation(),
            new RoofDrainageCalculation(), new StorageBalanceCalculation(), new PumpRunningCalculation());

    @Override
    protected Calculation calculation() {
        return new SiteEconomyCalculation();
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
