package org.roofspring.storage;

/**
 * A run of days without inflow.
 *
 * @param firstDay index of its first day, from 0
 * @param days length [d]
 */
public record DaySpell(int firstDay, int days) {
}
