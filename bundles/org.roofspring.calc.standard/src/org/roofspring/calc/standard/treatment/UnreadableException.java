package org.roofspring.calc.standard.treatment;

import org.roofspring.calc.Outcome.Problem;

/** A part of the site holds values that contradict each other, so nothing can be said about it. */
public final class UnreadableException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient Problem problem;

    /** @param elementId the element to look at */
    UnreadableException(String elementId, String name, IllegalArgumentException cause) {
        super(name + ": " + cause.getMessage() + ".", cause);
        this.problem = new Problem(elementId, null, getMessage());
    }

    /** What to show instead of an answer. */
    public Problem problem() {
        return problem;
    }
}
