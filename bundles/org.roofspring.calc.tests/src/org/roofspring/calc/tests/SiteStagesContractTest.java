package org.roofspring.calc.tests;

import org.roofspring.calc.Calculation;
import org.roofspring.calc.standard.SiteStagesCalculation;

class SiteStagesContractTest extends SchoolStorageContractTest {
    @Override
    protected Calculation calculation() {
        return new SiteStagesCalculation();
    }
}
