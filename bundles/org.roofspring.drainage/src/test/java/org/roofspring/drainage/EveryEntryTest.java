package org.roofspring.drainage;

import java.util.stream.Stream;

import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.roofspring.kernel.testkit.NastyNumbers;
import org.roofspring.drainage.intensity.DurationRatios;
import org.roofspring.drainage.siting.Flotation;

/** Nasty numbers through every public entry of this kernel, found by reflection. */
class EveryEntryTest {
    @TestFactory
    Stream<DynamicTest> everyEntry() {
        return NastyNumbers.ofKernel(Gutter.class)
                .sample(new Downpipe(0.1, 0.3, 0.25)).sample(DurationRatios.brazilian())
                .arguments("Flotation.missingAnchorKg", 1.1, 2400.0)
                .sample(new Flotation(5, 100, 0, 0))
                .mayBeMissing("CollectionEfficiency.caughtDepthsMm").tests();
    }
}
