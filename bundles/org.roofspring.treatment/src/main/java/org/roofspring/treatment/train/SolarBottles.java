package org.roofspring.treatment.train;

import java.util.ArrayList;
import java.util.List;

import org.roofspring.treatment.PathogenGroup;
import org.roofspring.treatment.Removal;
import org.roofspring.treatment.Source;
import org.roofspring.treatment.disinfection.SolarDisinfection;
import org.roofspring.treatment.internal.Checks;

/**
 * Clear bottles in the sun.
 *
 * @param bottleVolumeM3 above 0 to 1e6 [m3]
 * @param sky            over the exposure
 * @param exposureS      0 to 1e8 [s]
 */
public record SolarBottles(double bottleVolumeM3, SolarDisinfection.Sky sky, double exposureS) implements Treatment {
    /** Echovirus lost 1.5 log, phiX174 and adenovirus resisted: lower than the class of technology is credited with. */
    public static final Source VIRUS_SOURCE = Source.read("PMC4702646: 1.5 log of echovirus at 1.34 kJ/cm2 and "
            + "22 degC, adenovirus resistant");
    /** What that study found [log]. */
    public static final double VIRUS_LOG = 1.5;

    public SolarBottles {
        SolarDisinfection.of(bottleVolumeM3, sky, 0);
        Checks.within("exposure (exposureS)", exposureS, 0, 1e8, "s");
    }

    @Override
    public Mechanism mechanism() {
        return Mechanism.ULTRAVIOLET;
    }

    @Override
    public List<Condition> conditions(WaterState entering) {
        SolarDisinfection needed = SolarDisinfection.of(bottleVolumeM3, sky, entering.turbidityNtu());
        List<Condition> conditions = new ArrayList<>();
        conditions.add(Limits.turbidity("solar.turbidity", entering, SolarDisinfection.TURBIDITY_LIMIT_NTU));
        conditions.add(Condition.of("solar.bottle",
                bottleVolumeM3 <= SolarDisinfection.MAX_BOTTLE_M3 * (1 + 1e-9), "A bottle holds at most 2 L",
                Checks.shown(bottleVolumeM3 * 1000) + " L"));
        conditions.add(Condition.of("solar.exposure", exposureS >= needed.durationS(),
                "The bottles lie out for " + Checks.shown(needed.durationS() / 3600) + " h under this sky",
                Checks.shown(exposureS / 3600) + " h"));
        return conditions;
    }

    @Override
    public Credit credit(PathogenGroup group, WaterState entering, Removal removal) {
        Credit byClass = Treatment.super.credit(group, entering, removal);
        return group == PathogenGroup.VIRUSES && byClass.log() > VIRUS_LOG
                ? Credit.of(VIRUS_LOG, VIRUS_SOURCE, byClass.log(), byClass.source()) : byClass;
    }
}
