package org.roofspring.treatment.disinfection;

import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

/** Demand and decay there and back. */
class ChlorineResidualPropertyTest {
    private static final double HOUR = 3600;

    @Property
    void fitFindsWhatWasPutIn(@ForAll @DoubleRange(min = 1, max = 10) double dose,
            @ForAll @DoubleRange(min = 0, max = 0.9) double demand,
            @ForAll @DoubleRange(min = 1e-7, max = 1e-4) @Scale(7) double decay) {
        ChlorineResidual truth = new ChlorineResidual(dose, demand, decay);
        ChlorineResidual found = ChlorineResidual.fit(dose, HOUR, truth.afterMgPerL(HOUR), 6 * HOUR,
                truth.afterMgPerL(6 * HOUR));
        assertEquals(decay, found.decayPerS(), 1e-9);
        assertEquals(demand, found.demandMgPerL(), 1e-6);
        double needed = ChlorineResidual.doseForMgPerL(truth.afterMgPerL(HOUR), HOUR, demand, decay);
        assertEquals(dose, needed, dose * 1e-9);
    }
}
