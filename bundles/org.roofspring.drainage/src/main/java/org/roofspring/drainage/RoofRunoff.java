package org.roofspring.drainage;

import org.roofspring.drainage.internal.Require;

/** What a roof sheds while a storm lasts: the rational method, {@code Q = C i A}. */
public final class RoofRunoff {
    /** At the peak of a storm a wet roof sheds everything; coefficients below 1 belong to yearly yield. */
    public static final double PEAK_RUNOFF_RATIO = 1.0;

    private static final double MM_PER_H_TO_M_PER_S = 1e-3 / 3600;

    private RoofRunoff() {
    }

    /**
     * Flow off a roof [m3/s] at the peak of a storm.
     *
     * @param areaM2          effective area, from 0 to 1e6 m2
     * @param intensityMmPerH from 0 to 3000 mm/h (more than any minute on record)
     * @param runoffRatio     share that runs off, from 0 to 1
     */
    public static double flowM3PerS(double areaM2, double intensityMmPerH, double runoffRatio) {
        Require.range("areaM2", areaM2, 0, 1e6, "a roof area from 0 to 1000000 m2");
        Require.range("intensityMmPerH", intensityMmPerH, 0, 3000, "an intensity from 0 to 3000 mm/h");
        Require.share("runoffRatio", runoffRatio);
        return runoffRatio * intensityMmPerH * MM_PER_H_TO_M_PER_S * areaM2;
    }

    /** As {@link #flowM3PerS(double, double, double)} with {@link #PEAK_RUNOFF_RATIO}. */
    public static double flowM3PerS(double areaM2, double intensityMmPerH) {
        return flowM3PerS(areaM2, intensityMmPerH, PEAK_RUNOFF_RATIO);
    }
}
