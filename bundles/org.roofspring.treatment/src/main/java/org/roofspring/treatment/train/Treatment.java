package org.roofspring.treatment.train;

import java.util.List;

import org.roofspring.treatment.PathogenGroup;
import org.roofspring.treatment.Removal;

/** What a step does to the water, with the settings its credit depends on. */
public sealed interface Treatment permits MeshScreen, Settling, FirstFlush, Cartridge, Ceramic, GranularCarbon,
        SlowSand, Membrane, UvLamp, Boil, SolarBottles, Chlorination {

    Mechanism mechanism();

    /** What must hold for a credit, judged on the water that enters. */
    List<Condition> conditions(WaterState entering);

    /** The credit while all conditions hold: by default the low end of the editable range. */
    default Credit credit(PathogenGroup group, WaterState entering, Removal removal) {
        return Credit.of(removal.of(group).low(), removal.of(group).source());
    }

    /** Free chlorine behind the step [mg/L]; by default what came in. */
    default double freeChlorineAfter(WaterState entering) {
        return entering.freeChlorineMgPerL();
    }
}
