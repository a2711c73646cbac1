package org.roofspring.treatment;

import java.util.stream.Stream;

import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.roofspring.kernel.testkit.NastyNumbers;
import org.roofspring.treatment.disinfection.ChlorineProduct;
import org.roofspring.treatment.train.Credit;
import org.roofspring.treatment.train.StepResult;
import org.roofspring.treatment.train.TrainResult;

/** Nasty numbers through every public entry of this kernel, found by reflection. */
class EveryEntryTest {
    @TestFactory
    Stream<DynamicTest> everyEntry() {
        return NastyNumbers.ofKernel(Source.class)
                .arguments("ChlorineDose.of", 5.0, 2.0, ChlorineProduct.of(ChlorineProduct.Form.LIQUID, 0.05), 5e-8)
                .arguments("GiardiaFormula.contactMgMinPerL", 2.0, 1.0, 7.0, 15.0)
                .madeByKernel(Credit.class, Credit.Alternative.class, StepResult.class, TrainResult.class).tests();
    }
}
