package org.roofspring.treatment.train;

import java.util.List;

import org.roofspring.treatment.internal.Checks;

/**
 * A porous ceramic element.
 *
 * @param form   candle or block
 * @param silver carries silver against growth
 * @param intact looked at for cracks and leaking seals, and found whole
 */
public record Ceramic(Form form, boolean silver, boolean intact) implements Treatment {

    /** Shape of the element. */
    public enum Form { CANDLE, BLOCK }

    public Ceramic {
        Checks.present("form", form);
    }

    @Override
    public Mechanism mechanism() {
        return Mechanism.SIZE_EXCLUSION;
    }

    @Override
    public List<Condition> conditions(WaterState entering) {
        return List.of(Condition.of("ceramic.intact", intact, "The ceramic is whole and its seal tight",
                intact ? "inspected" : "cracked, leaking or not inspected"));
    }
}
