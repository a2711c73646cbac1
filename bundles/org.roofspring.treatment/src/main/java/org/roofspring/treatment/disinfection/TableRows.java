package org.roofspring.treatment.disinfection;

/** Finding one's place in a table with rising points. */
final class TableRows {
    /** Rounding of units must not push a value that stands on a row into the next one. */
    static final double SLACK = 1e-9;

    private TableRows() {
    }

    /** The last point not above the value; the first where all are above. */
    static int atOrBelow(double[] points, double value) {
        int row = 0;
        while (row + 1 < points.length && points[row + 1] <= value + SLACK) {
            row++;
        }
        return row;
    }

    /** The first point not below the value; the last where all are below. */
    static int atOrAbove(double[] points, double value) {
        int row = 0;
        while (row + 1 < points.length && points[row] < value - SLACK) {
            row++;
        }
        return row;
    }

    /** Linear between points, held at both ends. */
    static double linear(double[] points, double[] values, double at) {
        if (at <= points[0]) {
            return values[0];
        }
        int row = atOrBelow(points, at);
        if (row == points.length - 1) {
            return values[row];
        }
        double share = (at - points[row]) / (points[row + 1] - points[row]);
        return values[row] + share * (values[row + 1] - values[row]);
    }
}
