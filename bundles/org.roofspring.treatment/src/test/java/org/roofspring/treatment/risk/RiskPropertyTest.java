package org.roofspring.treatment.risk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

/** What holds for any dose response and any chain. */
class RiskPropertyTest {

    @Provide
    Arbitrary<DoseResponse> curves() {
        return Arbitraries.of(Pathogen.CAMPYLOBACTER_CURVE, Pathogen.ROTAVIRUS_CURVE,
                Pathogen.CRYPTOSPORIDIUM_HOMINIS_CURVE, Pathogen.E_COLI_O157_CURVE, new DoseResponse.Exponential(1),
                new DoseResponse.BetaPoisson(1e-3, 1e-3), new DoseResponse.BetaPoisson(1e6, 1e12));
    }

    @Property
    void infectionIsAProbabilityThatGrowsWithDose(@ForAll("curves") DoseResponse curve,
            @ForAll @DoubleRange(min = 0, max = 1e12) @Scale(9) double dose) {
        double p = curve.infection(dose);
        assertTrue(p >= 0 && p <= 1);
        assertTrue(curve.infection(2 * dose) >= p);
    }

    @Property
    void doseInvertsInfection(@ForAll("curves") DoseResponse curve,
            @ForAll @DoubleRange(min = 1e-9, max = 0.5) @Scale(12) double probability) {
        double dose = curve.dose(probability);
        if (dose < DoseResponse.MAX_DOSE) {
            assertEquals(probability, curve.infection(dose), probability * 1e-9);
        }
    }

    @Property
    void backwardsThenForwardsMeetsTheTarget(@ForAll @DoubleRange(min = 1e-3, max = 1e6) @Scale(3) double raw,
            @ForAll @DoubleRange(min = 0.1, max = 5) double litres,
            @ForAll @DoubleRange(min = 1e-8, max = 1e-4) @Scale(10) double target) {
        for (Pathogen pathogen : Pathogen.references()) {
            double log = RiskChain.neededLog(pathogen, raw, litres, 365, target);
            double daly = RiskChain.forward(pathogen, raw, log, litres, 365).yearlyDaly();
            assertTrue(daly <= target * (1 + 1e-6));
            if (log > 0) {
                assertEquals(target, daly, target * 1e-6);
            }
        }
    }

    @Property
    void quantilesRise(@ForAll @DoubleRange(min = 0, max = 0.999) @Scale(6) double share) {
        Spread[] spreads = {new Spread.Uniform(1, 4), new Spread.Triangular(0, 1, 5), new Spread.LogNormal(3, 40),
            new Spread.Triangular(2, 2, 2), new Spread.Triangular(0, 0, 1)};
        for (Spread spread : spreads) {
            double value = spread.quantile(share);
            assertTrue(Double.isFinite(value) && value >= spread.least() && spread.quantile(share + 0.0009) >= value);
        }
    }
}
