package org.roofspring.calc.tests;

import org.roofspring.calc.Calculation;
import org.roofspring.calc.standard.StorageOutlookCalculation;

class StorageOutlookContractTest extends SchoolStorageContractTest {
    @Override
    protected Calculation calculation() {
        return new StorageOutlookCalculation();
    }
}
