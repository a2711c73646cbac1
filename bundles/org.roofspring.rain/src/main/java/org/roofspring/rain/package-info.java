/**
 * Daily rain records: reading and checking them, filling gaps by a stated method, statistics, and invented weather
 * fitted to a record.
 *
 * <p>A {@link org.roofspring.rain.RainRecord} holds one depth [mm] for each calendar day; missing days stay missing
 * until {@link org.roofspring.rain.GapFilling} is asked to fill them, and are then counted as filled. Files are read
 * by {@link org.roofspring.rain.RainReader}, figures come from {@link org.roofspring.rain.RainStatistics}.
 */
package org.roofspring.rain;
