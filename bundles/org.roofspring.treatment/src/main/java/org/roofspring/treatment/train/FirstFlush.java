package org.roofspring.treatment.train;

import java.util.List;

import org.roofspring.treatment.internal.Checks;

/**
 * The first water of a rain is led away from the tank.
 *
 * @param depthMm of rain on the roof that is led away, 0 to 100 [mm]
 * @param drains  empties itself before the next rain
 */
public record FirstFlush(double depthMm, boolean drains) implements Treatment {
    public FirstFlush {
        Checks.within("diverted rain (depthMm)", depthMm, 0, 100, "mm");
    }

    @Override
    public Mechanism mechanism() {
        return Mechanism.DIVERSION;
    }

    @Override
    public List<Condition> conditions(WaterState entering) {
        return List.of(
                Condition.of("first-flush.depth", depthMm > 0, "Some of the first rain is led away",
                        Checks.shown(depthMm) + " mm"),
                Condition.of("first-flush.drains", drains, "The diverter empties itself before the next rain",
                        drains ? "it drains" : "it stays full"));
    }
}
