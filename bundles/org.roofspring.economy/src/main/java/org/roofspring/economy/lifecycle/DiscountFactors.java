package org.roofspring.economy.lifecycle;

import org.roofspring.economy.internal.Checks;

/**
 * Factors that turn money of one time into money of another. Source: S. K. Fuller and S. R. Petersen, Life-Cycle
 * Costing Manual for the Federal Energy Management Program, NIST Handbook 135, 1995 edition (from memory, verify), and
 * the standard tables of engineering economy.
 */
public final class DiscountFactors {
    /** Lowest and highest rate in a year [-]. */
    static final double LOWEST_RATE = -0.5;
    static final double HIGHEST_RATE = 1;
    /** Longest time [yr]. */
    static final double LONGEST_YEARS = 1000;

    private DiscountFactors() {
    }

    /**
     * Single present value, SPV = (1 + d)^-t: today's worth of 1 that is paid after a time.
     *
     * @param rate  in a year, -0.5 to 1 [-]
     * @param years 0 to 1000, whole or part [yr]
     */
    public static double singlePresentValue(double rate, double years) {
        rate(rate);
        Checks.within("time (years)", years, 0, LONGEST_YEARS);
        return Math.exp(-years * Math.log1p(rate));
    }

    /**
     * Uniform present value, UPV = (1 - (1 + d)^-n) / d, and n where d is 0: today's worth of 1 at the end of each
     * year.
     *
     * @param rate  in a year, -0.5 to 1 [-]
     * @param years whole, 0 to 1000 [yr]
     */
    public static double uniformPresentValue(double rate, int years) {
        rate(rate);
        Checks.within("time (years)", years, 0, LONGEST_YEARS);
        // expm1 and log1p keep every digit where the rate is next to nothing
        return rate == 0 || years == 0 ? years : -Math.expm1(-years * Math.log1p(rate)) / rate;
    }

    /**
     * Capital recovery factor, A/P = 1 / UPV: the equal payment at the end of each year that pays 1 back.
     *
     * @param rate  in a year, -0.5 to 1 [-]
     * @param years whole, 1 to 1000 [yr]
     */
    public static double capitalRecovery(double rate, int years) {
        Checks.within("time (years)", years, 1, LONGEST_YEARS);
        return 1 / uniformPresentValue(rate, years);
    }

    /**
     * Sinking fund factor, A/F = A/P (1 + d)^-n: the equal payment at the end of each year that has grown to 1.
     *
     * @param rate  in a year, -0.5 to 1 [-]
     * @param years whole, 1 to 1000 [yr]
     */
    public static double sinkingFund(double rate, int years) {
        return capitalRecovery(rate, years) * singlePresentValue(rate, years);
    }

    private static void rate(double rate) {
        Checks.within("rate (rate)", rate, LOWEST_RATE, HIGHEST_RATE);
    }
}
