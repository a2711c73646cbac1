package org.roofspring.quantity;

/** Says in one sentence what is wrong with a number, a unit or a dimension, and what is accepted. */
public class QuantityException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    public QuantityException(String message) {
        super(message);
    }
}
