package org.roofspring.economy.readings;

/** Turns values with a known covariance into independent ones of unit variance: x -> L^-1 x, where L L' is it. */
final class Whitening {
    private final double[][] lower;

    /** @param covariance symmetric and positive definite; overwritten */
    Whitening(double[][] covariance) {
        lower = covariance;
        for (int row = 0; row < lower.length; row++) {
            for (int column = 0; column <= row; column++) {
                double sum = lower[row][column];
                for (int k = 0; k < column; k++) {
                    sum -= lower[row][k] * lower[column][k];
                }
                lower[row][column] = row == column ? Math.sqrt(sum) : sum / lower[column][column];
            }
        }
    }

    double[] of(double[] values) {
        double[] white = new double[values.length];
        for (int row = 0; row < white.length; row++) {
            double sum = values[row];
            for (int k = 0; k < row; k++) {
                sum -= lower[row][k] * white[k];
            }
            white[row] = sum / lower[row][row];
        }
        return white;
    }

    static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}
