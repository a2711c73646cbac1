package org.roofspring.drainage.intensity;

import org.roofspring.drainage.internal.Require;

/**
 * Sample L-moments: linear combinations of ranked values that describe location, spread and skew, and bend to a
 * single outlier less than ordinary moments do. Unbiased estimators (J. R. M. Hosking, L-moments, Journal of the Royal
 * Statistical Society B 52, 1990, from memory).
 *
 * @param l1Mm the mean
 * @param l2Mm half the mean difference of two values, 0 where all are equal
 * @param t3   L-skewness, from -1 to 1
 */
public record LMoments(double l1Mm, double l2Mm, double t3) {
    public LMoments {
        Require.range("l1Mm", l1Mm, -1e6, 1e6, "a mean from -1000000 to 1000000 mm");
        Require.range("l2Mm", l2Mm, 0, 1e6, "a scale from 0 to 1000000 mm");
        // rounding may carry the estimate of few values a hair beyond 1
        Require.range("t3", t3, -1 - 1e-9, 1 + 1e-9, "an L-skewness from -1 to 1");
    }

    /** Of yearly maxima. */
    public static LMoments of(AnnualMaxima maxima) {
        return ofSorted(maxima.depthsMm().stream().mapToDouble(Double::doubleValue).toArray());
    }

    static LMoments ofSorted(double[] ascending) {
        int n = ascending.length;
        double b0 = 0;
        double b1 = 0;
        double b2 = 0;
        for (int j = 0; j < n; j++) {
            double first = j / (n - 1.0);
            b0 += ascending[j];
            b1 += ascending[j] * first;
            b2 += ascending[j] * first * (j - 1) / (n - 2.0);
        }
        double l1 = b0 / n;
        double l2 = 2 * b1 / n - l1;
        double l3 = (6 * b2 - 6 * b1) / n + l1;
        return new LMoments(l1, l2, l2 == 0 ? 0 : l3 / l2); // equal values have no skew
    }
}
