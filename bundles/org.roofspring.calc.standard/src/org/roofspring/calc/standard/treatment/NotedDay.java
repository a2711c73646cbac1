package org.roofspring.calc.standard.treatment;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

import org.roofspring.site.Site;
import org.roofspring.site.Tank;

/**
 * The day a verdict holds for: the latest day on which something was noted in the site. A calculation has no clock, so
 * the age of tests and filters is counted to this day, and whoever shows the verdict says which day that is.
 */
final class NotedDay {
    private NotedDay() {
    }

    /** The latest day of a test, reading, inspection, change or upkeep; empty where nothing is dated. */
    static Optional<LocalDate> of(Site site) {
        return Stream.of(
                Stream.of(site.getCreated()),
                site.getWaterTests().stream().map(test -> test.getDate()),
                site.getReadings().stream().map(reading -> reading.getDate()),
                site.getInspections().stream().map(inspection -> inspection.getDate()),
                site.getUpkeep().stream().map(task -> task.getLastDone()),
                site.getTanks().stream().map(Tank::getLastCleaned),
                site.getTrains().stream().flatMap(train -> train.getSteps().stream())
                        .flatMap(step -> Stream.of(step.getLastChanged(), step.getResidualDate())))
                .flatMap(days -> days).filter(Objects::nonNull).max(Comparator.naturalOrder());
    }
}
