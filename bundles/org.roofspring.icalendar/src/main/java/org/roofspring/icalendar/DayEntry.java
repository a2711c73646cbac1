package org.roofspring.icalendar;

import java.time.LocalDate;
import java.util.Objects;

/**
 * A whole day in a calendar.
 *
 * @param uid         the same whenever the same work of the same day is written, so that a calendar replaces it
 * @param date        the day
 * @param title       one line
 * @param description more lines; may be empty
 */
public record DayEntry(String uid, LocalDate date, String title, String description) {
    public DayEntry {
        if (uid == null || uid.isBlank() || title == null || title.isBlank()) {
            throw new IllegalArgumentException("an entry needs an identifier and a title that are not blank");
        }
        Objects.requireNonNull(date, "date");
        Objects.requireNonNull(description, "description");
    }
}
