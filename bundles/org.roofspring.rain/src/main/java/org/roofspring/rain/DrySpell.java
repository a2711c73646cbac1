package org.roofspring.rain;

import java.time.LocalDate;

/**
 * Consecutive days of which none is wet.
 *
 * @param firstDay its first day
 * @param days     its length
 * @param bounded  false where it touches a missing day or an end of the record, so that it may have been longer
 */
public record DrySpell(LocalDate firstDay, int days, boolean bounded) {
    /** Its last day. */
    public LocalDate lastDay() {
        return firstDay.plusDays(days - 1L);
    }
}
