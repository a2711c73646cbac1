package org.roofspring.quantity;

import java.util.stream.Stream;

import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.roofspring.kernel.testkit.NastyNumbers;

/** Nasty numbers through every public entry of this kernel, found by reflection. */
class EveryEntryTest {
    @TestFactory
    Stream<DynamicTest> everyEntry() {
        return NastyNumbers.ofKernel(Quantity.class)
                .leaveOut("Unit.toSi", "documented: what is no finite number stays none, as a missing day does")
                .leaveOut("Unit.fromSi", "as toSi").tests();
    }
}
