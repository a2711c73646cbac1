package org.roofspring.treatment.risk;

import org.roofspring.treatment.internal.Checks;

/** Probability of infection from a dose of organisms, and back. */
public sealed interface DoseResponse {
    /** Largest dose: more organisms than that change no probability. */
    double MAX_DOSE = 1e30;

    /**
     * @param dose mean number of organisms swallowed, 0 to 1e30
     * @return 0 to 1
     */
    double infection(double dose);

    /**
     * The dose that gives a probability of infection, held at 1e30.
     *
     * @param probability 0 to below 1
     */
    double dose(double probability);

    /**
     * P = 1 - exp(-r d).
     *
     * @param r probability that one organism infects, above 0 to 1
     */
    record Exponential(double r) implements DoseResponse {
        public Exponential {
            Checks.positive("r", r, 1, "");
        }

        @Override
        public double infection(double dose) {
            return -Math.expm1(-r * checkedDose(dose));
        }

        @Override
        public double dose(double probability) {
            return Math.min(MAX_DOSE, -Math.log1p(-checkedProbability(probability)) / r);
        }
    }

    /**
     * The approximate beta-Poisson model, P = 1 - (1 + d / beta)^-alpha.
     *
     * @param alpha above 0 to 1e6
     * @param beta  above 0 to 1e12
     */
    record BetaPoisson(double alpha, double beta) implements DoseResponse {
        public BetaPoisson {
            Checks.positive("alpha", alpha, 1e6, "");
            Checks.positive("beta", beta, 1e12, "");
        }

        /** From the median infective dose: beta = N50 / (2^(1/alpha) - 1). */
        public static BetaPoisson fromMedianDose(double alpha, double n50) {
            Checks.within("alpha", alpha, 0.01, 1e6, "");
            Checks.positive("N50 (n50)", n50, 1e12, "");
            return new BetaPoisson(alpha, n50 / Math.expm1(Math.log(2) / alpha));
        }

        /** N50 = beta (2^(1/alpha) - 1). */
        public double medianDose() {
            return dose(0.5);
        }

        @Override
        public double infection(double dose) {
            return -Math.expm1(-alpha * Math.log1p(checkedDose(dose) / beta));
        }

        @Override
        public double dose(double probability) {
            return Math.min(MAX_DOSE, beta * Math.expm1(-Math.log1p(-checkedProbability(probability)) / alpha));
        }
    }

    private static double checkedDose(double dose) {
        return Checks.within("dose", dose, 0, MAX_DOSE, "organisms");
    }

    private static double checkedProbability(double probability) {
        if (!(probability >= 0 && probability < 1)) {
            throw new IllegalArgumentException("probability must be from 0 to below 1, not " + probability);
        }
        return probability;
    }
}
