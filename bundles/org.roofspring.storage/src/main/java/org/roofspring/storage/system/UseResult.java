package org.roofspring.storage.system;

import java.util.OptionalDouble;
import org.roofspring.storage.DayCounts;

/**
 * How one use fared.
 *
 * @param name of the use
 * @param demandM3 asked for [m&sup3;]
 * @param suppliedM3 given [m&sup3;]
 * @param demandDays days with a demand [d]
 * @param fullDays days on which all of it was given [d]
 * @param rationedDays days on which a ration below the demand was set [d]
 */
public record UseResult(String name, double demandM3, double suppliedM3, int demandDays, int fullDays,
        int rationedDays) {

    /** Supplied over demand [-]; empty when nothing was asked for. */
    public OptionalDouble volumetricReliability() {
        return demandM3 > 0 ? OptionalDouble.of(suppliedM3 / demandM3) : OptionalDouble.empty();
    }

    /** Full days over days with demand [-]; empty when nothing was asked for. */
    public OptionalDouble timeReliability() {
        return new DayCounts(0, demandDays, fullDays, 0).timeReliability();
    }
}
