package org.roofspring.drainage.intensity;

import org.hipparchus.special.Gamma;
import org.roofspring.drainage.internal.Require;
import org.roofspring.drainage.internal.Root;

/**
 * The generalised extreme value law, {@code F(x) = exp(-(1 - shape (x - location) / scale)^(1/shape))}. With a shape
 * below 0 rare storms outgrow those of the Gumbel law; at 0 it is the Gumbel law; above 0 depths have a ceiling.
 * (Sign of the shape as in J. R. M. Hosking, J. R. Wallis, Regional Frequency Analysis, Cambridge 1997; many texts use
 * the opposite one.)
 *
 * @param locationMm from -1e30 to 1e30 mm
 * @param scaleMm    from 1e-9 to 1e30 mm
 * @param shape      above -1
 */
public record GevLaw(double locationMm, double scaleMm, double shape) implements ExtremeLaw {
    private static final double LEAST_SHAPE = -0.999;
    private static final double GREATEST_SHAPE = 30;

    public GevLaw {
        Require.range("locationMm", locationMm, -1e30, 1e30, "a location from -1e30 to 1e30 mm");
        Require.range("scaleMm", scaleMm, 1e-9, 1e30, "a scale from 1e-9 to 1e30 mm");
        Require.range("shape", shape, LEAST_SHAPE, GREATEST_SHAPE, "a shape from -0.999 to 30");
    }

    /**
     * Fitted by L-moments: the shape k solves {@code t3 = 2 (1 - 3^-k) / (1 - 2^-k) - 3}, then
     * {@code scale = l2 k / ((1 - 2^-k) Gamma(1 + k))} and {@code location = l1 - scale (1 - Gamma(1 + k)) / k}
     * (J. R. M. Hosking, J. R. Wallis, Regional Frequency Analysis, Cambridge 1997, appendix A.7, from memory; the
     * shape is solved for rather than taken from their approximation).
     */
    public static GevLaw of(LMoments moments) {
        double shape = shape(moments.t3());
        double scale = moments.l2Mm() / (decay(2, shape) * Math.exp(logGamma1p(shape)));
        return new GevLaw(moments.l1Mm() - scale * gammaDeficit(shape), scale, shape);
    }

    private static double shape(double t3) {
        if (t3 >= skewness(LEAST_SHAPE)) {
            return LEAST_SHAPE;
        }
        if (t3 <= skewness(GREATEST_SHAPE)) {
            return GREATEST_SHAPE;
        }
        return Root.between(LEAST_SHAPE, GREATEST_SHAPE, shape -> skewness(shape) - t3);
    }

    private static double skewness(double shape) {
        return 2 * decay(3, shape) / decay(2, shape) - 3;
    }

    /** {@code (1 - base^-shape) / shape}, which is ln(base) at 0. */
    private static double decay(double base, double shape) {
        return shape == 0 ? Math.log(base) : -Math.expm1(-shape * Math.log(base)) / shape;
    }

    /** {@code (1 - Gamma(1 + shape)) / shape}, which is Euler's constant at 0. */
    private static double gammaDeficit(double shape) {
        return shape == 0 ? GumbelLaw.EULER : -Math.expm1(logGamma1p(shape)) / shape;
    }

    private static double logGamma1p(double shape) {
        return Math.abs(shape) <= 0.5 ? Gamma.logGamma1p(shape) : Gamma.logGamma(1 + shape);
    }

    @Override
    public double depthAtVariateMm(double reducedVariate) {
        Require.range("reducedVariate", reducedVariate, -7, 100, "a reduced variate from -7 to 100");
        double growth = shape == 0 ? reducedVariate : -Math.expm1(-shape * reducedVariate) / shape;
        return locationMm + scaleMm * growth;
    }

    @Override
    public double nonExceedance(double depthMm) {
        Require.range("depthMm", depthMm, -1e30, 1e30, "a depth from -1e30 to 1e30 mm");
        double standard = (depthMm - locationMm) / scaleMm;
        if (shape == 0) {
            return Math.exp(-Math.exp(-standard));
        }
        double left = 1 - shape * standard;
        if (left <= 0) {
            return shape > 0 ? 1 : 0;
        }
        return Math.exp(-Math.exp(Math.log1p(-shape * standard) / shape));
    }

    @Override
    public GevLaw refitted(LMoments moments) {
        return of(moments);
    }
}
