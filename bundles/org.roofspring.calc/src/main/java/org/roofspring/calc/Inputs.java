package org.roofspring.calc;

import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;

import org.roofspring.quantity.Quantity;

/** The outcomes of the calculations that a calculation requires or uses, by id. */
public final class Inputs {
    private final Map<String, Outcome.Completed> completed;

    /** @param completed required and used calculations that have an answer, by id */
    public Inputs(Map<String, Outcome.Completed> completed) {
        this.completed = Map.copyOf(completed);
    }

    /** For a calculation that requires nothing. */
    public static Inputs none() {
        return new Inputs(Map.of());
    }

    /** The outcome of a calculation, if it has an answer. */
    public Optional<Outcome.Completed> outcome(String calculationId) {
        return Optional.ofNullable(completed.get(calculationId));
    }

    /** A finding of the site as a whole. */
    public Optional<Finding> finding(String calculationId, String findingId) {
        return finding(calculationId, findingId, null);
    }

    /** A finding about one element. */
    public Optional<Finding> finding(String calculationId, String findingId, String elementId) {
        return outcome(calculationId).flatMap(outcome -> outcome.finding(findingId, elementId));
    }

    /**
     * A number that a required calculation has promised.
     *
     * @throws NoSuchElementException when it is missing, which is a bug of one of the two
     */
    public Quantity number(String calculationId, String findingId) {
        return value(calculationId, findingId, FindingValue.Number.class).quantity();
    }

    /**
     * A value that a required calculation has promised.
     *
     * @throws NoSuchElementException when it is missing or of another kind, which is a bug of one of the two
     */
    public <V extends FindingValue> V value(String calculationId, String findingId, Class<V> kind) {
        return finding(calculationId, findingId).map(Finding::value).filter(kind::isInstance).map(kind::cast).orElseThrow(
                () -> new NoSuchElementException("no " + kind.getSimpleName() + " finding " + findingId + " of " + calculationId));
    }
}
