package org.roofspring.ui.parts.chart;

import java.util.Arrays;

/**
 * Thins a series to the pixels it is drawn on: of the values that fall on one column of pixels only the least and the
 * greatest are kept, in the order in which they come. The line drawn through them covers the same pixels as the whole.
 */
public final class TraceThinner {

    /**
     * What is left of a series.
     *
     * @param index  places of the kept values in the series, rising
     * @param values the kept values
     */
    public record Thinned(int[] index, double[] values) {
    }

    private TraceThinner() {
    }

    /**
     * @param values  the series; not changed
     * @param from    first place that is drawn
     * @param to      place after the last that is drawn; at most the length of the series
     * @param columns columns of pixels, at least 1
     */
    public static Thinned thin(double[] values, int from, int to, int columns) {
        if (from < 0 || to > values.length || from > to || columns < 1) {
            throw new IllegalArgumentException("cannot thin " + from + " to " + to + " of " + values.length + " to " + columns + " columns");
        }
        int count = to - from;
        int[] index = new int[Math.min(count, 2 * columns)];
        int kept = 0;
        if (count <= 2 * columns) {
            for (int i = from; i < to; i++) {
                index[kept++] = i;
            }
        } else {
            for (int column = 0; column < columns; column++) {
                int begin = from + (int) ((long) count * column / columns);
                int end = from + (int) ((long) count * (column + 1) / columns);
                int least = begin;
                int greatest = begin;
                for (int i = begin + 1; i < end; i++) {
                    if (values[i] < values[least]) {
                        least = i;
                    }
                    if (values[i] > values[greatest]) {
                        greatest = i;
                    }
                }
                index[kept++] = Math.min(least, greatest);
                if (least != greatest) {
                    index[kept++] = Math.max(least, greatest);
                }
            }
        }
        int[] places = Arrays.copyOf(index, kept);
        double[] thinned = new double[kept];
        for (int i = 0; i < kept; i++) {
            thinned[i] = values[places[i]];
        }
        return new Thinned(places, thinned);
    }
}
