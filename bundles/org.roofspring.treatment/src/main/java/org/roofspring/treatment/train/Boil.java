package org.roofspring.treatment.train;

import java.util.List;

import org.roofspring.treatment.disinfection.Boiling;
import org.roofspring.treatment.internal.Checks;

/**
 * A rolling boil.
 *
 * @param altitudeM above sea level, -450 to 9000 [m]
 * @param agency    whose rule on the time is followed
 * @param heldS     how long it boils, 0 to 1e6 [s]
 */
public record Boil(double altitudeM, Boiling.Agency agency, double heldS) implements Treatment {
    public Boil {
        Boiling.at(altitudeM, agency);
        Checks.within("boiling time (heldS)", heldS, 0, 1e6, "s");
    }

    @Override
    public Mechanism mechanism() {
        return Mechanism.HEAT;
    }

    @Override
    public List<Condition> conditions(WaterState entering) {
        double neededS = Boiling.at(altitudeM, agency).durationS();
        return List.of(Condition.of("boil.time", heldS >= neededS,
                "A rolling boil of " + Checks.shown(neededS / 60) + " min at this altitude ("
                        + agency.source().text() + ")",
                Checks.shown(heldS / 60) + " min"));
    }

    @Override
    public double freeChlorineAfter(WaterState entering) {
        return 0;
    }
}
