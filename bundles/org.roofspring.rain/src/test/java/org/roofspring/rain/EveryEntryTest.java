package org.roofspring.rain;

import java.time.LocalDate;
import java.util.Collections;
import java.util.stream.Stream;

import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.roofspring.kernel.testkit.NastyNumbers;

/** Nasty numbers through every public entry of this kernel, found by reflection. */
class EveryEntryTest {
    @TestFactory
    Stream<DynamicTest> everyEntry() {
        return NastyNumbers.ofKernel(RainRecord.class)
                .sample(twoYears()).sample(new MonthlyNormals(Collections.nCopies(12, 60.0), Collections.nCopies(12, 9.0)))
                .leaveOut("DepthUnit.toMm", "documented: what is no number stays none, as a missing day does")
                .leaveOut("RainReader.read", "reads files, which are fuzzed")
                .leaveOut("RainReader.readNormals", "reads files, which are fuzzed")
                .leaveOut("RainReader.readStations", "reads files, which are fuzzed")
                .leaveOut("RainReader.findFormat", "reads files, which are fuzzed").tests();
    }

    private static RainRecord twoYears() {
        double[] depthMm = new double[731];
        for (int day = 0; day < depthMm.length; day++) {
            depthMm[day] = day % 3 == 0 ? 1 + day % 17 : 0;
        }
        return RainRecord.of(LocalDate.of(2000, 1, 1), depthMm);
    }
}
