package org.roofspring.economy.readings;

/**
 * How a cause that begins on a day would show in the stretches between readings, for a size of one.
 *
 * @param cause    the cause
 * @param sinceDay index of the day it begins on
 * @param white    what would be missing in each stretch, whitened
 * @param squares  sum of its squares
 */
record Pattern(Cause cause, int sinceDay, double[] white, double squares) {
    Pattern(Cause cause, int sinceDay, double[] white) {
        this(cause, sinceDay, white, Whitening.dot(white, white));
    }

    /** How far it stands out of whitened readings, in standard deviations. */
    double signal(double[] readings) {
        return Whitening.dot(white, readings) / Math.sqrt(squares);
    }
}
