package org.roofspring.treatment.train;

import java.util.Locale;
import java.util.Optional;

import org.roofspring.treatment.Source;
import org.roofspring.treatment.internal.Checks;

/**
 * What a step is credited with for one pathogen group while all its conditions hold.
 *
 * @param log         [log, 0 or more]
 * @param source      the source that was chosen
 * @param alternative what another source would give, where one exists
 */
public record Credit(double log, Source source, Optional<Alternative> alternative) {

    /** What was not chosen. */
    public record Alternative(double log, Source source) {
    }

    public Credit {
        Checks.within("log credit (log)", log, 0, 20, "");
        Checks.present("source", source);
        Checks.present("alternative", alternative);
    }

    static Credit of(double log, Source source) {
        return new Credit(log, source, Optional.empty());
    }

    static Credit of(double log, Source source, double otherLog, Source otherSource) {
        return new Credit(log, source, Optional.of(new Alternative(otherLog, otherSource)));
    }

    /** Names the chosen source, and the other where it gives another number. */
    public String text() {
        String chosen = String.format(Locale.ROOT, "%.1f log by %s", log, source.text());
        return alternative.filter(other -> other.log() != log)
                .map(other -> chosen + String.format(Locale.ROOT, "; not used: %.1f log by %s", other.log(),
                        other.source().text()))
                .orElse(chosen);
    }
}
