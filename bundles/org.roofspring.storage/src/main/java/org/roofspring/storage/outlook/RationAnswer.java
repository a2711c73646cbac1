package org.roofspring.storage.outlook;

/** Which ration keeps the chance of running dry under a limit. */
public sealed interface RationAnswer {

    /**
     * This one does.
     *
     * @param ration the largest that does, in whole percent
     * @param chance of running dry under it
     */
    record Enough(Ration ration, Chance chance) implements RationAnswer {
    }

    /**
     * None does.
     *
     * @param chance of running dry even when the uses that can be cut get nothing
     */
    record NotEnough(Chance chance) implements RationAnswer {
    }
}
