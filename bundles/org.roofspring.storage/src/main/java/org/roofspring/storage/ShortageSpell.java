package org.roofspring.storage;

/**
 * A run of days on which demand was not met in full. A day without demand neither ends the run nor lengthens it.
 *
 * @param firstDay index of its first short day, from 0
 * @param lastDay index of its last short day
 * @param days short days in it [d]
 * @param missingM3 demand not supplied [m&sup3;]
 */
public record ShortageSpell(int firstDay, int lastDay, int days, double missingM3) {
}
