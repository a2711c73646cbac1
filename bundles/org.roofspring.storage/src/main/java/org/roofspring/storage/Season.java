package org.roofspring.storage;

import java.time.LocalDate;
import java.time.MonthDay;

/**
 * A stretch of every year, both ends included; it may run over the new year.
 *
 * @param from first day
 * @param to last day; before {@code from}, the season ends in the next year
 */
public record Season(MonthDay from, MonthDay to) {

    /** Whether the date is inside. */
    public boolean contains(LocalDate date) {
        MonthDay day = MonthDay.from(date);
        boolean begun = day.compareTo(from) >= 0;
        boolean open = day.compareTo(to) <= 0;
        return from.compareTo(to) <= 0 ? begun && open : begun || open;
    }
}
