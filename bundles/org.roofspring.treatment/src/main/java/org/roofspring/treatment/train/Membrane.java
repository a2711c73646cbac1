package org.roofspring.treatment.train;

import java.util.List;

import org.roofspring.treatment.internal.Checks;

/**
 * A membrane module.
 *
 * @param kind            by pore size
 * @param integrityTested pressure or bubble test passed at the maker's interval
 */
public record Membrane(Kind kind, boolean integrityTested) implements Treatment {

    /** By pore size, from coarse to fine. */
    public enum Kind {
        MICROFILTRATION(false),
        ULTRAFILTRATION(false),
        NANOFILTRATION(true),
        REVERSE_OSMOSIS(true);

        private final boolean harmedByChlorine;

        Kind(boolean harmedByChlorine) {
            this.harmedByChlorine = harmedByChlorine;
        }

        /** Thin-film membranes are destroyed by free chlorine. */
        public boolean harmedByChlorine() {
            return harmedByChlorine;
        }
    }

    public Membrane {
        Checks.present("kind", kind);
    }

    @Override
    public Mechanism mechanism() {
        return Mechanism.SIZE_EXCLUSION;
    }

    @Override
    public List<Condition> conditions(WaterState entering) {
        Condition integrity = Condition.of("membrane.integrity", integrityTested, "The membrane passed its leak test",
                integrityTested ? "passed" : "not tested");
        if (!kind.harmedByChlorine()) {
            return List.of(integrity);
        }
        return List.of(integrity, Condition.of("membrane.chlorine", entering.freeChlorineMgPerL() == 0,
                "No chlorine reaches a thin-film membrane", Checks.shown(entering.freeChlorineMgPerL()) + " mg/L"));
    }
}
