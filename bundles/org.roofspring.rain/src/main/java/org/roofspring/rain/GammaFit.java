package org.roofspring.rain;

/**
 * Two-parameter gamma distribution of the depth of wet days, f(x) = x^(a-1) e^(-x/b) / (b^a Gamma(a)).
 *
 * @param shape   a, above 0, at most {@link #LARGEST_SHAPE}
 * @param scaleMm b [mm], above 0
 */
public record GammaFit(double shape, double scaleMm) {
    /** Larger shapes, of depths that hardly differ, are cut to this. */
    public static final double LARGEST_SHAPE = 1e6;

    public GammaFit {
        if (!(shape > 0 && shape <= LARGEST_SHAPE)) {
            throw new IllegalArgumentException("shape is " + shape + "; above 0 to " + LARGEST_SHAPE
                    + " is accepted");
        }
        if (!(scaleMm > 0 && scaleMm < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("scaleMm is " + scaleMm + "; a finite depth above 0 mm is accepted");
        }
    }

    /** The distribution of a shape and a mean depth [mm], both above 0. */
    public static GammaFit ofMean(double shape, double meanMm) {
        return new GammaFit(shape, meanMm / shape);
    }

    /** Mean a b [mm]. */
    public double meanMm() {
        return shape * scaleMm;
    }

    /**
     * Shape by the approximation of Thom (1958), "A note on the gamma distribution", Monthly Weather Review 86(4):
     * a = (1 + sqrt(1 + 4 Y / 3)) / (4 Y). From memory. Within 1 % of the maximum likelihood for shapes of at least 1.
     *
     * @param logDeficit Y = ln(mean) - mean(ln x), at least 0
     */
    public static double thomShape(double logDeficit) {
        requireDeficit(logDeficit);
        double deficit = Math.min(logDeficit, 1e300); // four times that is still a number
        return bounded((1 + Math.sqrt(1 + 4 * deficit / 3)) / (4 * deficit));
    }

    /**
     * Shape by the rational approximation of Greenwood and Durand (1960), "Aids for fitting the gamma distribution by
     * maximum likelihood", Technometrics 2(1), from memory. Up to Y = 17 it stays within 0.02 % of the maximum
     * likelihood, as measured against its solution.
     *
     * @param logDeficit Y = ln(mean) - mean(ln x), at least 0; taken as 17 where it is more
     */
    public static double greenwoodDurandShape(double logDeficit) {
        requireDeficit(logDeficit);
        double y = Math.min(logDeficit, 17);
        if (y <= 0.5772) {
            return bounded((0.5000876 + 0.1648852 * y - 0.0544274 * y * y) / y);
        }
        return bounded((8.898919 + 9.059950 * y + 0.9775373 * y * y) / (y * (17.79728 + 11.968477 * y + y * y)));
    }

    private static void requireDeficit(double logDeficit) {
        if (!(logDeficit >= 0 && logDeficit < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("logDeficit is " + logDeficit + "; a finite number of at least 0 is "
                    + "accepted");
        }
    }

    private static double bounded(double shape) {
        return Math.min(Math.max(shape, 1 / LARGEST_SHAPE), LARGEST_SHAPE);
    }
}
