package org.roofspring.drawing.chart;

import java.util.Arrays;

/**
 * Fewer points that look the same: of each stretch the least and the greatest value are kept, in their order, so that
 * no
 * peak and no trough is lost.
 *
 * @param x of the points kept
 * @param y of the points kept
 */
public record Thinning(double[] x, double[] y) {

    /**
     * Thins a series with an even step.
     *
     * @param firstX    x of the first value
     * @param values    one for each step of 1 in x, not written to
     * @param stretches how many to look at; about two points are kept of each
     */
    public static Thinning of(double firstX, double[] values, int stretches) {
        if (stretches < 1) {
            throw new IllegalArgumentException("at least one stretch is needed, not " + stretches);
        }
        int count = values.length;
        if (count <= 2 * stretches) {
            double[] x = new double[count];
            Arrays.setAll(x, i -> firstX + i);
            return new Thinning(x, values.clone());
        }
        double[] x = new double[2 * stretches + 2];
        double[] y = new double[x.length];
        int kept = 0;
        x[kept] = firstX;
        y[kept++] = values[0];
        for (int s = 0; s < stretches; s++) {
            int from = (int) ((long) s * count / stretches);
            int to = (int) ((long) (s + 1) * count / stretches);
            int least = from;
            int greatest = from;
            for (int i = from + 1; i < to; i++) {
                least = values[i] < values[least] ? i : least;
                greatest = values[i] > values[greatest] ? i : greatest;
            }
            for (int i : least < greatest ? new int[] { least, greatest } : new int[] { greatest, least }) {
                if (firstX + i > x[kept - 1]) {
                    x[kept] = firstX + i;
                    y[kept++] = values[i];
                }
            }
        }
        if (x[kept - 1] < firstX + count - 1) {
            x[kept] = firstX + count - 1;
            y[kept++] = values[count - 1];
        }
        return new Thinning(Arrays.copyOf(x, kept), Arrays.copyOf(y, kept));
    }
}
