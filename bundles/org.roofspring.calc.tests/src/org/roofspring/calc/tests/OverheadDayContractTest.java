package org.roofspring.calc.tests;

import org.roofspring.calc.Calculation;
import org.roofspring.calc.standard.OverheadDayCalculation;

class OverheadDayContractTest extends SchoolStorageContractTest {
    @Override
    protected Calculation calculation() {
        return new OverheadDayCalculation();
    }
}
