package org.roofspring.rain;

import java.time.YearMonth;

/**
 * Rain of one month of one year.
 *
 * @param month       year and month
 * @param totalMm     rain of its days present [mm]
 * @param presentDays days of it with a reading
 * @param wetDays     of these, the wet ones
 * @param complete    whether every day of the month is present
 */
public record MonthTotal(YearMonth month, double totalMm, int presentDays, int wetDays, boolean complete) {
}
