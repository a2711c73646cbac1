package org.roofspring.drainage;

/** The input is sound but has no answer; the message says why in one sentence. */
public final class NoAnswerException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public NoAnswerException(String message) {
        super(message);
    }
}
