package org.roofspring.drawing.chart;

import java.util.Arrays;

/** The values that a chart has to show. */
record Extent(double lowX, double highX, double lowY, double highY) {

    static Extent of(Chart chart) {
        Range x = new Range();
        Range y = new Range();
        for (Layer layer : chart.layers()) {
            switch (layer) {
                case Layer.Line line -> add(x, line.x(), y, line.y());
                case Layer.Step step -> add(x, step.x(), y, step.y());
                case Layer.Points points -> add(x, points.x(), y, points.y());
                case Layer.Band band -> {
                    add(x, band.x(), y, band.low());
                    y.add(band.high());
                }
                case Layer.Bars bars -> {
                    double half = barWidth(bars.x()) / 2;
                    add(x, Arrays.stream(bars.x()).map(v -> v - half).toArray(), y, bars.y());
                    x.add(Arrays.stream(bars.x()).map(v -> v + half).toArray());
                    y.add(0);
                }
                case Layer.Level level -> y.add(level.y());
            }
        }
        chart.x().low().ifPresent(x::add);
        chart.x().high().ifPresent(x::add);
        chart.y().low().ifPresent(y::add);
        chart.y().high().ifPresent(y::add);
        return new Extent(x.low(), x.high(), y.low(), y.high());
    }

    /** Four fifths of the smallest distance between two bars. */
    static double barWidth(double[] x) {
        double[] sorted = Arrays.stream(x).filter(Double::isFinite).sorted().distinct().toArray();
        double least = Double.POSITIVE_INFINITY;
        for (int i = 1; i < sorted.length; i++) {
            least = Math.min(least, sorted[i] - sorted[i - 1]);
        }
        return Double.isFinite(least) ? 0.8 * least : 0.8;
    }

    private static void add(Range x, double[] xs, Range y, double[] ys) {
        x.add(xs);
        y.add(ys);
    }

    /** Least and greatest of the finite values met. */
    private static final class Range {
        private double least = Double.POSITIVE_INFINITY;
        private double greatest = Double.NEGATIVE_INFINITY;

        void add(double... values) {
            for (double value : values) {
                if (Double.isFinite(value)) {
                    least = Math.min(least, value);
                    greatest = Math.max(greatest, value);
                }
            }
        }

        double low() {
            return least <= greatest ? least : 0;
        }

        double high() {
            return least <= greatest ? greatest : 1;
        }
    }
}
