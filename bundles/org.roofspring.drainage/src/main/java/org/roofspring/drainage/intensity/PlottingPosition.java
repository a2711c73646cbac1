package org.roofspring.drainage.intensity;

/**
 * The probability at which a ranked yearly maximum is plotted: {@code p = (m - a) / (n + 1 - 2a)} is the chance that
 * the m-th largest of n is exceeded in a year (V. T. Chow, D. R. Maidment, L. W. Mays, Applied Hydrology, McGraw-Hill
 * 1988, section 12.4, from memory).
 */
public enum PlottingPosition {
    /** Unbiased in probability, whatever the law: a = 0. */
    WEIBULL(0),
    /** Nearly unbiased in depth for many laws: a = 0.4. */
    CUNNANE(0.4),
    /** Nearly unbiased in depth for the Gumbel law: a = 0.44. */
    GRINGORTEN(0.44),
    /** a = 0.5. */
    HAZEN(0.5);

    private final double a;

    PlottingPosition(double a) {
        this.a = a;
    }

    /**
     * Chance that a maximum is exceeded in a year.
     *
     * @param rank  1 for the largest, up to {@code count}
     * @param count of the yearly maxima
     */
    public double exceedance(int rank, int count) {
        if (rank < 1 || rank > count) {
            throw new IllegalArgumentException("rank is " + rank + "; a rank from 1 (largest) to " + count
                    + " is accepted");
        }
        return (rank - a) / (count + 1 - 2 * a);
    }

    /** Return period [years], the inverse of {@link #exceedance}. */
    public double returnPeriodYears(int rank, int count) {
        return 1 / exceedance(rank, count);
    }
}
