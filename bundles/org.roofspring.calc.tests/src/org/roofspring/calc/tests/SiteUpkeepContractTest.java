package org.roofspring.calc.tests;

import org.roofspring.calc.Calculation;
import org.roofspring.calc.standard.SiteUpkeepCalculation;

class SiteUpkeepContractTest extends SchoolStorageContractTest {
    @Override
    protected Calculation calculation() {
        return new SiteUpkeepCalculation();
    }
}
