package org.roofspring.rain;

/**
 * Rain of one calendar year.
 *
 * @param year        calendar year
 * @param totalMm     rain of its days present [mm]
 * @param presentDays days of it with a reading
 * @param complete    whether every day of the year is present
 */
public record YearTotal(int year, double totalMm, int presentDays, boolean complete) {
}
