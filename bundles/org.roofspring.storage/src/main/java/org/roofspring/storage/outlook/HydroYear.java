package org.roofspring.storage.outlook;

import java.time.LocalDate;

/**
 * One hydrological year of a run.
 *
 * @param firstDate its first day
 * @param demandDays days with a demand [d]
 * @param shortDays of them, not met in full [d]
 * @param demandM3 asked for [m&sup3;]
 * @param missingM3 not supplied [m&sup3;]
 */
public record HydroYear(LocalDate firstDate, int demandDays, int shortDays, double demandM3, double missingM3) {

    /** Whether some day went short. */
    public boolean failed() {
        return shortDays > 0;
    }
}
