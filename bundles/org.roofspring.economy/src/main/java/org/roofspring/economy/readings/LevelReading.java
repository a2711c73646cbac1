package org.roofspring.economy.readings;

/**
 * Water in the tank, by dipstick.
 *
 * @param day      index of the day, read in the morning
 * @param volumeM3 0 or more [m3]
 */
public record LevelReading(int day, double volumeM3) {
}
