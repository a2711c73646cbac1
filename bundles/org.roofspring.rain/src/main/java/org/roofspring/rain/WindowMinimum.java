package org.roofspring.rain;

import java.time.LocalDate;

/**
 * The least rain of any run of a given number of days.
 *
 * @param days     length of the run
 * @param firstDay first day of the driest run
 * @param depthMm  rain of that run [mm]
 */
public record WindowMinimum(int days, LocalDate firstDay, double depthMm) {
}
