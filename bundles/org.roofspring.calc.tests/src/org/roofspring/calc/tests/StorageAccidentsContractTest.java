package org.roofspring.calc.tests;

import org.roofspring.calc.Calculation;
import org.roofspring.calc.standard.StorageAccidentsCalculation;

class StorageAccidentsContractTest extends SchoolStorageContractTest {
    @Override
    protected Calculation calculation() {
        return new StorageAccidentsCalculation();
    }
}
