package org.roofspring.rain;

/** The record is sound, but days are missing and no method to fill them was chosen, or the chosen one cannot. */
public class MissingRainException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public MissingRainException(String message) {
        super(message);
    }
}
