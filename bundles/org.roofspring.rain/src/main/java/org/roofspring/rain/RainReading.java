package org.roofspring.rain;

import java.util.function.Supplier;

/** What a rain file gave: the rain, and what is to be known about it. */
public final class RainReading {
    private final RainRecord record;
    private final RainFormat format;
    private final String station;
    private final Supplier<QualityReport> checks;
    private QualityReport quality;

    RainReading(RainRecord record, RainFormat format, String station, Supplier<QualityReport> checks) {
        this.record = record;
        this.format = format;
        this.station = station;
        this.checks = checks;
    }

    /** The rain; missing days are not filled. */
    public RainRecord record() {
        return record;
    }

    /** What is to be known about the rain. The record is checked when this is first asked for. */
    public synchronized QualityReport quality() {
        if (quality == null) {
            quality = checks.get();
        }
        return quality;
    }

    /** The layout of the file, never {@link RainFormat#AUTO}. */
    public RainFormat format() {
        return format;
    }

    /** Identifier of the station; empty where the file names none. */
    public String station() {
        return station;
    }
}
