package org.roofspring.drainage.intensity;

import org.roofspring.drainage.internal.Require;

/**
 * The Gumbel (extreme value type I) law, {@code F(x) = exp(-exp(-(x - location) / scale))}.
 *
 * @param locationMm the mode, from -1e30 to 1e30 mm
 * @param scaleMm    the spread, from 1e-9 to 1e30 mm
 */
public record GumbelLaw(double locationMm, double scaleMm) implements ExtremeLaw {
    /** Euler's constant. */
    static final double EULER = 0.57721566490153286;

    public GumbelLaw {
        Require.range("locationMm", locationMm, -1e30, 1e30, "a location from -1e30 to 1e30 mm");
        Require.range("scaleMm", scaleMm, 1e-9, 1e30, "a scale from 1e-9 to 1e30 mm");
    }

    /** Fitted by L-moments: {@code scale = l2 / ln 2, location = l1 - 0.5772 scale}. */
    public static GumbelLaw of(LMoments moments) {
        double scale = moments.l2Mm() / Math.log(2);
        return new GumbelLaw(moments.l1Mm() - EULER * scale, scale);
    }

    /**
     * Fitted by ordinary moments: {@code scale = sqrt(6) sd / pi, location = mean - 0.5772 scale}.
     *
     * @param meanMm              of the yearly maxima
     * @param standardDeviationMm of the yearly maxima
     */
    public static GumbelLaw ofMoments(double meanMm, double standardDeviationMm) {
        double scale = Math.sqrt(6) / Math.PI * standardDeviationMm;
        return new GumbelLaw(meanMm - EULER * scale, scale);
    }

    @Override
    public double depthAtVariateMm(double reducedVariate) {
        return locationMm + scaleMm
                * Require.range("reducedVariate", reducedVariate, -7, 100, "a reduced variate from -7 to 100");
    }

    @Override
    public double nonExceedance(double depthMm) {
        Require.range("depthMm", depthMm, -1e30, 1e30, "a depth from -1e30 to 1e30 mm");
        return Math.exp(-Math.exp(-(depthMm - locationMm) / scaleMm));
    }

    @Override
    public GumbelLaw refitted(LMoments moments) {
        return of(moments);
    }
}
