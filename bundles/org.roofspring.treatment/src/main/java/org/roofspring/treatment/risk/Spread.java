package org.roofspring.treatment.risk;

import org.hipparchus.special.Erf;
import org.roofspring.treatment.internal.Checks;

/** An uncertain input, drawn by its quantile function. */
public sealed interface Spread {

    /**
     * @param share 0 to below 1
     * @return the value that is not exceeded with this probability
     */
    double quantile(double share);

    /** The smallest value that can be drawn. */
    double least();

    /** A value that is known. */
    record Fixed(double value) implements Spread {
        public Fixed {
            Checks.within("value", value, -1e12, 1e12, "");
        }

        @Override
        public double quantile(double share) {
            return value;
        }

        @Override
        public double least() {
            return value;
        }
    }

    /** Any value between two is as likely. */
    record Uniform(double low, double high) implements Spread {
        public Uniform {
            Checks.within("low", low, -1e12, 1e12, "");
            Checks.within("high", high, low, 1e12, "");
        }

        @Override
        public double quantile(double share) {
            Checks.within("share", share, 0, 1, "");
            return low + share * (high - low);
        }

        @Override
        public double least() {
            return low;
        }
    }

    /** Between two values, with a likeliest one. */
    record Triangular(double low, double mode, double high) implements Spread {
        public Triangular {
            Checks.within("low", low, -1e12, 1e12, "");
            Checks.within("mode", mode, low, 1e12, "");
            Checks.within("high", high, mode, 1e12, "");
        }

        @Override
        public double quantile(double share) {
            Checks.within("share", share, 0, 1, "");
            double width = high - low;
            if (width == 0) {
                return low;
            }
            return share * width < mode - low ? low + Math.sqrt(share * width * (mode - low))
                    : high - Math.sqrt((1 - share) * width * (high - mode));
        }

        @Override
        public double least() {
            return low;
        }
    }

    /**
     * Lognormal.
     *
     * @param median above 0 to 1e12
     * @param p95    not exceeded with 95 %, {@code median} to a million times that
     */
    record LogNormal(double median, double p95) implements Spread {
        private static final double Z95 = 1.6448536269514722;

        public LogNormal {
            Checks.positive("median", median, 1e12, "");
            Checks.within("95th percentile (p95)", p95, median, 1e6 * median, "");
        }

        /** Standard deviation of the natural logarithm. */
        public double sigma() {
            return Math.log(p95 / median) / Z95;
        }

        @Override
        public double quantile(double share) {
            Checks.within("share", share, 0, 1, "");
            // The tails are held at 8 standard deviations, so that a draw of exactly 0 is finite.
            double z = Math.clamp(Math.sqrt(2) * Erf.erfInv(2 * share - 1), -8, 8);
            return median * Math.exp(sigma() * z);
        }

        @Override
        public double least() {
            return 0;
        }
    }
}
