package org.roofspring.calc.tests;

import org.roofspring.calc.Calculation;
import org.roofspring.calc.standard.SiteReadingsCalculation;

class SiteReadingsContractTest extends SchoolStorageContractTest {
    @Override
    protected Calculation calculation() {
        return new SiteReadingsCalculation();
    }
}
