package org.roofspring.rain.internal;

import java.time.LocalDate;
import org.roofspring.rain.QualityReport;
import org.roofspring.rain.RainRecord;

/**
 * The days of one station as a parser found them.
 *
 * @param station  identifier; empty where the file names none
 * @param depthMm  depth of each day [mm], NaN where missing; handed over, not copied
 * @param marks    ordinals of {@link org.roofspring.rain.DayMark}; handed over, not copied
 */
public record ParsedStation(String station, LocalDate firstDay, double[] depthMm, byte[] marks, Findings findings) {
    static ParsedStation of(String station, DayTable days, Findings findings) {
        return new ParsedStation(station, LocalDate.ofEpochDay(days.firstEpochDay()), days.copyDepthsMm(),
                days.copyMarks(), findings);
    }

    /** The report of the record that was made of these days. */
    public QualityReport report(RainRecord record) {
        return QualityChecks.report(this, record);
    }
}
