package org.roofspring.rain;

/**
 * What a rain file gave.
 *
 * @param record  the rain; missing days are not filled
 * @param quality what is to be known about it
 * @param format  the layout of the file, never {@link RainFormat#AUTO}
 * @param station identifier of the station; empty where the file names none
 */
public record RainReading(RainRecord record, QualityReport quality, RainFormat format, String station) {
}
