package org.roofspring.economy.upkeep;

import java.time.LocalDate;

/**
 * A day on which a task is due.
 *
 * @param task     what is due
 * @param date     day to do it, within the days asked for
 * @param occasion why
 * @param dueSince day on which it really fell due; before {@code date} where it is overdue
 */
public record DueDay(UpkeepTask task, LocalDate date, Occasion occasion, LocalDate dueSince) {

    /** What makes a task due. */
    public enum Occasion {
        INTERVAL("so long after the last time"),
        SEASON("day of the year"),
        VOLUME("water that has passed"),
        FIRST_RAIN("before the first rain"),
        NEVER_DONE("not known to have been done");

        private final String words;

        Occasion(String words) {
            this.words = words;
        }

        /** In plain words. */
        public String words() {
            return words;
        }
    }

    public boolean overdue() {
        return dueSince.isBefore(date);
    }
}
