package org.roofspring.economy.readings;

/**
 * Water used, by a meter behind the tank.
 *
 * @param day     index of the day, read in the morning
 * @param totalM3 on its counter [m3]
 */
public record MeterReading(int day, double totalM3) {
}
