package org.roofspring.report;

import java.time.LocalDate;
import java.util.Objects;

import org.roofspring.quantity.UnitSystem;

/**
 * What a report needs to know besides site and results.
 *
 * @param date           day of the report
 * @param units          units to show
 * @param productVersion version of this program, as shown
 */
public record ReportSettings(LocalDate date, UnitSystem units, String productVersion) {
    public ReportSettings {
        Objects.requireNonNull(date);
        Objects.requireNonNull(units);
        Objects.requireNonNull(productVersion);
    }
}
