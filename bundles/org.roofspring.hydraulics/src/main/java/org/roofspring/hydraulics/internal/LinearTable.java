package org.roofspring.hydraulics.internal;

/** A table read by straight lines between its rows. */
public final class LinearTable {
    private final double[] x;
    private final double[] y;

    /**
     * @param rows x and y in turn, x strictly rising, at least two rows
     */
    public LinearTable(double... rows) {
        if (rows.length < 4 || rows.length % 2 != 0) {
            throw new IllegalArgumentException("a table must have at least two rows of two numbers, not " + rows.length
                    + " numbers");
        }
        x = new double[rows.length / 2];
        y = new double[rows.length / 2];
        for (int i = 0; i < x.length; i++) {
            x[i] = rows[2 * i];
            y[i] = rows[2 * i + 1];
            if (i > 0 && !(x[i] > x[i - 1])) {
                throw new IllegalArgumentException("rows must be in rising order, not " + x[i] + " after " + x[i - 1]);
            }
        }
    }

    /** First x. */
    public double low() {
        return x[0];
    }

    /** Last x. */
    public double high() {
        return x[x.length - 1];
    }

    /**
     * The value between the two rows around.
     *
     * @param at from {@link #low} to {@link #high}
     */
    public double value(double at) {
        if (!(at >= low() && at <= high())) {
            throw new IllegalArgumentException("the table holds " + low() + " to " + high() + ", not " + at);
        }
        int i = 0;
        while (i < x.length - 2 && at >= x[i + 1]) {
            i++;
        }
        return y[i] + (y[i + 1] - y[i]) * (at - x[i]) / (x[i + 1] - x[i]);
    }
}
