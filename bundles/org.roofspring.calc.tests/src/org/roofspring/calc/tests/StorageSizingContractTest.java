package org.roofspring.calc.tests;

import org.roofspring.calc.Calculation;
import org.roofspring.calc.standard.StorageSizingCalculation;

class StorageSizingContractTest extends SchoolStorageContractTest {
    @Override
    protected Calculation calculation() {
        return new StorageSizingCalculation();
    }
}
