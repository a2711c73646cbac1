package org.roofspring.storage;

/** Answer to "how much tank?": a volume, or the reason why there is none. */
public sealed interface SizingAnswer {

    /**
     * The smallest volume that reaches the target.
     *
     * @param volumeM3 that volume [m&sup3;], smallest to the microlitre
     * @param warmStartM3 volume in the tank as the counted pass begins [m&sup3;]
     * @param timeReliability share of the days with demand met in full in the counted pass [-]
     */
    record Sized(double volumeM3, double warmStartM3, double timeReliability) implements SizingAnswer {
    }

    /**
     * No tank does it.
     *
     * @param reason why
     * @param inflowM3 inflow over the record [m&sup3;]
     * @param demandM3 demand over the record [m&sup3;]
     */
    record NoAnswer(Reason reason, double inflowM3, double demandM3) implements SizingAnswer {
    }

    /** Why there is no answer. */
    enum Reason {
        /** The demand of the record is above its inflow: no tank makes up for missing rain. */
        DEMAND_ABOVE_INFLOW,
        /** Nothing is asked for, so reliability has no meaning. */
        NO_DEMAND,
        /** The tank would be larger than the largest volume that can be computed with, 2,000,000 m&sup3;. */
        TANK_BEYOND_RANGE
    }
}
