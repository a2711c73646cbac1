package org.roofspring.storage.outlook;

import java.time.LocalDate;

/**
 * How the look ahead goes with the weather of one year of the record.
 *
 * @param start day of the record from which its weather is taken
 * @param joined whether the record ended first, so that the run went on in the first year of the record
 * @param daysLeft days met before the first day that goes short [d]; the whole look ahead when none does
 * @param dry whether some day went short
 */
public record YearRun(LocalDate start, boolean joined, int daysLeft, boolean dry) {
}
