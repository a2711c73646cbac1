package org.roofspring.storage.outlook;

/**
 * Days of water left.
 *
 * @param days whole days that are met in full [d]
 * @param orMore whether the look ahead ended first, so that it may be more
 */
public record DaysLeft(int days, boolean orMore) {
}
