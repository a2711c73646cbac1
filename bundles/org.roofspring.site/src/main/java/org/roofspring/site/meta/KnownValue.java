package org.roofspring.site.meta;

import java.util.Optional;

import org.roofspring.quantity.Quantity;

/**
 * A value a calculation can go on with.
 *
 * @param quantity      the value
 * @param defaultSource where it comes from when it is a default; empty when it was given for this very element
 */
public record KnownValue(Quantity quantity, Optional<String> defaultSource) {
    /** Whether nobody gave the value, so that the default holds. */
    public boolean isDefault() {
        return defaultSource.isPresent();
    }
}
