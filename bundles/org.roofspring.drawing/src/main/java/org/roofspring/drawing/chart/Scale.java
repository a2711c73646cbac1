package org.roofspring.drawing.chart;

/**
 * Values of an axis to points of the drawing.
 *
 * @param low  value at {@code from}
 * @param high value at {@code to}
 */
record Scale(double low, double high, double from, double to) {
    /** Far outside values are held near the plot, where they are clipped, lest a painter meet absurd coordinates. */
    private static final double FAR = 10;

    double of(double value) {
        double share = (value - low) / (high - low);
        return from + (to - from) * Math.max(-FAR, Math.min(1 + FAR, share));
    }
}
