package org.roofspring.treatment.train;

import org.roofspring.treatment.Source;
import org.roofspring.treatment.internal.Checks;

/**
 * Work that keeps a step working.
 *
 * @param text      what to do
 * @param intervalS between two times, above 0 to 3.2e9 [s]
 * @param durationS each time, 0 to 1e6 [s]
 * @param source    of the interval
 */
public record UpkeepTask(String text, double intervalS, double durationS, Source source) {
    /** A week [s]. */
    public static final double WEEK_S = 7 * 86_400.0;

    public UpkeepTask {
        Checks.text("task (text)", text);
        Checks.positive("interval (intervalS)", intervalS, 3.2e9, "s");
        Checks.within("duration (durationS)", durationS, 0, 1e6, "s");
        Checks.present("source", source);
    }

    /** True where the task comes round at least each week. */
    public boolean weekly() {
        return intervalS <= WEEK_S;
    }

    /** Work spread over the weeks [s]. */
    public double weeklyDurationS() {
        return durationS * WEEK_S / intervalS;
    }
}
