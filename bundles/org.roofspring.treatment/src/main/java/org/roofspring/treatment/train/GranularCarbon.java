package org.roofspring.treatment.train;

import java.util.List;

import org.roofspring.treatment.internal.Checks;

/**
 * Granular activated carbon: taste, smell, chlorine and some organic chemicals. Never credited with pathogens; it takes
 * the chlorine out and can grow bacteria.
 *
 * @param emptyBedContactS bed volume over flow, above 0 to 1e6 [s]
 */
public record GranularCarbon(double emptyBedContactS) implements Treatment {
    public GranularCarbon {
        Checks.positive("empty bed contact (emptyBedContactS)", emptyBedContactS, 1e6, "s");
    }

    @Override
    public Mechanism mechanism() {
        return Mechanism.ADSORPTION;
    }

    @Override
    public List<Condition> conditions(WaterState entering) {
        return List.of();
    }

    @Override
    public double freeChlorineAfter(WaterState entering) {
        return 0;
    }
}
