package org.roofspring.treatment.train;

import org.roofspring.treatment.internal.Checks;

/** Conditions that several steps share. */
final class Limits {
    private Limits() {
    }

    static Condition turbidity(String code, WaterState entering, double belowNtu) {
        return Condition.of(code, entering.turbidityNtu() < belowNtu,
                "The water that enters is below " + Checks.shown(belowNtu) + " NTU",
                Checks.shown(entering.turbidityNtu()) + " NTU");
    }
}
