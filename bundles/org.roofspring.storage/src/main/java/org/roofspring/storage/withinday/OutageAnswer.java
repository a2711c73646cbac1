package org.roofspring.storage.withinday;

/** The smallest overhead tank that an outage does not empty. */
public sealed interface OutageAnswer {

    /**
     * This one.
     *
     * @param tank of the proportions asked for; to one part in a million
     * @param worst moments at which a slightly smaller tank fails
     */
    record Smallest(OverheadTank tank, OutageStudy.HardMoment worst) implements OutageAnswer {
    }

    /**
     * There is none.
     *
     * @param reason why
     */
    record None(Reason reason) implements OutageAnswer {
    }

    /** Why there is none. */
    enum Reason {
        /** Nothing is drawn, so there is nothing to bridge. */
        NO_DRAW,
        /** In its hours the pump does not lift more than a day's draw, so the tank would not recover. */
        PUMP_TOO_WEAK,
        /** The pump starts only when the tank is empty, so no size helps. */
        NOTHING_ABOVE_START_LEVEL,
        /** The tank would be larger than 2,000,000 m&sup3;. */
        BEYOND_RANGE
    }
}
