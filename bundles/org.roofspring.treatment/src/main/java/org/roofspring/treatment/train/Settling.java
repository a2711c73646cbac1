package org.roofspring.treatment.train;

import java.util.List;

import org.roofspring.treatment.internal.Checks;

/**
 * Standing in a tank before it is drawn.
 *
 * @param standingS       after the last inflow, 0 to 1e9 [s]
 * @param drawnAboveFloor drawn by a floating or raised outlet, clear of the sludge
 */
public record Settling(double standingS, boolean drawnAboveFloor) implements Treatment {
    /** A day without inflow [s]: assumed. */
    public static final double MIN_STANDING_S = 86_400;

    public Settling {
        Checks.within("standing (standingS)", standingS, 0, 1e9, "s");
    }

    @Override
    public Mechanism mechanism() {
        return Mechanism.SETTLING;
    }

    @Override
    public List<Condition> conditions(WaterState entering) {
        return List.of(
                Condition.of("settling.time", standingS >= MIN_STANDING_S,
                        "The water stands at least a day after the last rain", Checks.shown(standingS / 3600) + " h"),
                Condition.of("settling.outlet", drawnAboveFloor, "The outlet draws clear of the sludge",
                        drawnAboveFloor ? "floating or raised outlet" : "outlet at the floor"));
    }
}
