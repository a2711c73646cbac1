package org.roofspring.ui.parts.storage;

import java.util.Optional;

import org.roofspring.calc.FindingValue;
import org.roofspring.calc.Outcome;
import org.roofspring.quantity.Quantity;

/** Findings about the site as a whole, by their names. */
record Found(Outcome.Completed outcome, Figures figures) {

    /** A number as it is shown. */
    Optional<String> words(String id) {
        return quantity(id).map(figures::words);
    }

    Optional<Quantity> quantity(String id) {
        return value(id, FindingValue.Number.class).map(FindingValue.Number::quantity);
    }

    <V extends FindingValue> Optional<V> value(String id, Class<V> type) {
        return outcome.finding(id).map(finding -> finding.value()).filter(type::isInstance).map(type::cast);
    }
}
