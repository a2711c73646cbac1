package org.roofspring.drainage.intensity;

import org.roofspring.drainage.Source;
import org.roofspring.drainage.internal.Require;

/**
 * The intensity of a design storm, with each step from the daily record to it.
 *
 * @param returnPeriodYears of the storm
 * @param durationS         of the burst that the roof answers to
 * @param fixedDayMm        depth of that return period, read once a day at a fixed hour
 * @param dayFactor         from a fixed day to any 24 hours
 * @param slidingDayMm      depth of the wettest 24 hours
 * @param depthRatio        share of it that falls in the burst
 * @param depthMm           of the burst
 * @param intensityMmPerH   of the burst
 */
public record DesignIntensity(double returnPeriodYears, double durationS, double fixedDayMm, double dayFactor,
        double slidingDayMm, double depthRatio, double depthMm, double intensityMmPerH) {
    /** A day read at a fixed hour splits many storms in two; the wettest 24 hours hold about so much more. */
    public static final double DEFAULT_DAY_FACTOR = 1.13;
    /** Source of {@link #DEFAULT_DAY_FACTOR}. */
    public static final Source DAY_FACTOR_SOURCE = Source.fromMemory(
            "D. M. Hershfield, W. T. Wilson 1958, in WMO-No. 168, Guide to Hydrological Practices");
    /** Time in which a roof and its gutter answer to rain, unless another is given [s]. */
    public static final double DEFAULT_DURATION_S = 300;
    /** Source of {@link #DEFAULT_DURATION_S}. */
    public static final Source DURATION_SOURCE = Source.commonPractice("a burst of 5 minutes for roofs");

    /**
     * From a law of the yearly maxima of daily rain.
     *
     * @param law               of the yearly maxima of rain read once a day
     * @param returnPeriodYears from 1.01 to 10000
     * @param durationS         within the durations of {@code ratios}
     * @param dayFactor         from 1 to 2
     * @param ratios            between durations
     */
    public static DesignIntensity of(ExtremeLaw law, double returnPeriodYears, double durationS, double dayFactor,
            DurationRatios ratios) {
        Require.range("dayFactor", dayFactor, 1, 2, "a factor from 1 to 2");
        double day = Require.given("law", law).depthMm(returnPeriodYears);
        double ratio = Require.given("ratios", ratios).ratio(durationS);
        double depth = day * dayFactor * ratio;
        return new DesignIntensity(returnPeriodYears, durationS, day, dayFactor, day * dayFactor, ratio, depth,
                depth * 3600 / durationS);
    }
}
