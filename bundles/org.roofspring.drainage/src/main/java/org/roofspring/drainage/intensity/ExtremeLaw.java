package org.roofspring.drainage.intensity;

import org.roofspring.drainage.internal.Require;

/** A law of yearly maxima. */
public sealed interface ExtremeLaw permits GumbelLaw, GevLaw {

    /**
     * The depth [mm] that a year's maximum stays below with a given chance.
     *
     * @param reducedVariate {@code y = -ln(-ln p)} for the chance p, from -7 to 100
     */
    double depthAtVariateMm(double reducedVariate);

    /** The chance that a year's maximum stays below a depth from -1e30 to 1e30 mm. */
    double nonExceedance(double depthMm);

    /** The same kind of law, fitted to other L-moments. */
    ExtremeLaw refitted(LMoments moments);

    /**
     * The depth [mm] exceeded once in so many years on average. Never below 0: a law may allow negative depths at
     * short return periods, rain does not.
     *
     * @param returnPeriodYears from 1.01 to 10000
     */
    default double depthMm(double returnPeriodYears) {
        return Math.max(0, depthAtVariateMm(reducedVariate(returnPeriodYears)));
    }

    /**
     * Gumbel's reduced variate of a return period, {@code -ln(-ln(1 - 1/T))}.
     *
     * @param returnPeriodYears from 1.01 to 10000
     */
    static double reducedVariate(double returnPeriodYears) {
        Require.range("returnPeriodYears", returnPeriodYears, 1.01, 10000, "a return period from 1.01 to 10000 years");
        return -Math.log(-Math.log1p(-1 / returnPeriodYears));
    }

    /**
     * The frequency factor by which moments give a Gumbel depth, {@code x = mean + KT sd}
     * (V. T. Chow, D. R. Maidment, L. W. Mays, Applied Hydrology, McGraw-Hill 1988, section 12.3, from memory).
     *
     * @param returnPeriodYears from 1.01 to 10000
     */
    static double gumbelFrequencyFactor(double returnPeriodYears) {
        return Math.sqrt(6) / Math.PI * (reducedVariate(returnPeriodYears) - GumbelLaw.EULER);
    }
}
