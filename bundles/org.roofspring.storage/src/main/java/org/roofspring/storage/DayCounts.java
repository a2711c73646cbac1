package org.roofspring.storage;

import java.util.OptionalDouble;

/**
 * Days of a run.
 *
 * @param days all [d]
 * @param demandDays with a demand above zero [d]
 * @param fullDays with a demand, all of it supplied [d]
 * @param emptyDays ending with nothing in store that can be drawn [d]
 */
public record DayCounts(int days, int demandDays, int fullDays, int emptyDays) {

    /** Full days over days with demand [-]; empty when there was no demand. */
    public OptionalDouble timeReliability() {
        return demandDays > 0 ? OptionalDouble.of((double) fullDays / demandDays) : OptionalDouble.empty();
    }
}
