package org.roofspring.drawing.chart;

import java.util.Objects;

/**
 * Something plotted over the axes of a chart. The arrays are shared, not copied, and must not be written to. A y that
 * is
 * not a number leaves a gap.
 */
public sealed interface Layer {
    /** What the legend calls it; empty keeps it out of the legend. */
    String name();

    /** Straight lines from point to point. */
    record Line(String name, double[] x, double[] y, boolean dashed) implements Layer {
        public Line {
            Objects.requireNonNull(name);
            sameLength(x, y);
        }
    }

    /** Each y holds until the next x. */
    record Step(String name, double[] x, double[] y) implements Layer {
        public Step {
            Objects.requireNonNull(name);
            sameLength(x, y);
        }
    }

    /** All between a lower and an upper line. */
    record Band(String name, double[] x, double[] low, double[] high) implements Layer {
        public Band {
            Objects.requireNonNull(name);
            sameLength(x, low);
            sameLength(x, high);
        }
    }

    /** A bar from zero about each x, as wide as its share of the smallest distance between two. */
    record Bars(String name, double[] x, double[] y) implements Layer {
        public Bars {
            Objects.requireNonNull(name);
            sameLength(x, y);
        }
    }

    /** Single points, each a small ring. */
    record Points(String name, double[] x, double[] y) implements Layer {
        public Points {
            Objects.requireNonNull(name);
            sameLength(x, y);
        }
    }

    /** A level across the whole chart. */
    record Level(String name, double y) implements Layer {
        public Level {
            Objects.requireNonNull(name);
        }
    }

    private static void sameLength(double[] x, double[] y) {
        if (x.length != y.length) {
            throw new IllegalArgumentException("a layer needs as many y as x: " + y.length + " and " + x.length);
        }
    }
}
