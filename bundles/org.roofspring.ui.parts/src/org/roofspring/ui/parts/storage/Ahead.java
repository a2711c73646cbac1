package org.roofspring.ui.parts.storage;

import java.time.LocalDate;
import java.util.Optional;

import org.roofspring.calc.FindingValue.Daily;

/**
 * The days ahead, as found.
 *
 * @param low    usable water that one year in ten does not exceed
 * @param middle that half of the years do not exceed
 * @param high   that nine years in ten do not exceed
 * @param chance of having gone short by each day
 */
record Ahead(Daily low, Daily middle, Daily high, Daily chance) {

    static Optional<Ahead> of(Found found) {
        Optional<Daily> low = found.value("fanLow", Daily.class);
        Optional<Daily> middle = found.value("fanMiddle", Daily.class);
        Optional<Daily> high = found.value("fanHigh", Daily.class);
        Optional<Daily> chance = found.value("chanceByDate", Daily.class);
        return low.isPresent() && middle.isPresent() && high.isPresent() && chance.isPresent()
                ? Optional.of(new Ahead(low.get(), middle.get(), high.get(), chance.get())) : Optional.empty();
    }

    int days() {
        return low.days();
    }

    LocalDate date(int day) {
        return low.firstDay().plusDays(day);
    }
}
