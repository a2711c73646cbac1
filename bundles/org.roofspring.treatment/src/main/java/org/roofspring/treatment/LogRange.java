package org.roofspring.treatment;

import org.roofspring.treatment.internal.Checks;

/**
 * What a barrier takes out of one pathogen group, as a range that the user may edit.
 *
 * @param low    what is credited: reached in ordinary use [log, 0 to 20]
 * @param high   the cap: reached by a well-kept unit at its best [log, {@code low} to 20]
 * @param source where the range comes from
 */
public record LogRange(double low, double high, Source source) {
    public LogRange {
        Checks.within("low end (low)", low, 0, 20, "log");
        Checks.within("high end (high)", high, low, 20, "log");
        Checks.present("source", source);
    }

    /** Nothing, at the best of times. */
    public static LogRange none(Source source) {
        return new LogRange(0, 0, source);
    }
}
