package org.roofspring.calc;

import java.util.Objects;

/**
 * One answer of a calculation.
 *
 * @param id        stable within the calculation, such as {@code volumetricReliability}
 * @param title     a short name for people
 * @param elementId the element it is about, or null for the site
 * @param value     number, series, table, verdict, text or flag
 */
public record Finding(String id, String title, String elementId, FindingValue value) {
    public Finding {
        Objects.requireNonNull(id);
        Objects.requireNonNull(title);
        Objects.requireNonNull(value);
    }

    public Finding(String id, String title, FindingValue value) {
        this(id, title, null, value);
    }
}
