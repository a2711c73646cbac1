package org.roofspring.economy.lifecycle;

import org.roofspring.economy.internal.Checks;

/**
 * What is agreed on before costs are compared.
 *
 * @param basis        whether the discount rate holds inflation
 * @param discountRate in a year, 0 to 0.5 [-]
 * @param inflation    in a year, -0.1 to 0.5 [-]; counts on a nominal basis only
 * @param horizonYears years looked at, 1 to 200 [yr]
 */
public record Terms(Basis basis, double discountRate, double inflation, int horizonYears) {

    /** Whether inflation is in the discount rate. */
    public enum Basis {
        /** It is not: prices and rate are without inflation. */
        REAL,
        /** It is: prices rise with inflation, and the rate holds it. */
        NOMINAL
    }

    public Terms {
        Checks.present("basis", basis);
        Checks.within("discount rate (discountRate)", discountRate, 0, 0.5);
        Checks.within("inflation", inflation, -0.1, 0.5);
        Checks.within("horizon (horizonYears)", horizonYears, 1, 200);
    }

    /** Prices and rate without inflation. */
    public static Terms real(double discountRate, int horizonYears) {
        return new Terms(Basis.REAL, discountRate, 0, horizonYears);
    }

    /** Prices that rise with inflation, and a rate that holds it. */
    public static Terms nominal(double discountRate, double inflation, int horizonYears) {
        return new Terms(Basis.NOMINAL, discountRate, inflation, horizonYears);
    }

    /** The rate without inflation, (1 + d) / (1 + i) - 1 on a nominal basis [-]. */
    public double realRate() {
        return basis == Basis.REAL ? discountRate : (discountRate - inflation) / (1 + inflation);
    }

    /** Growth of the general price level up to a time [-]; 1 on a real basis. */
    public double priceLevel(double years) {
        return basis == Basis.REAL ? 1 : Math.pow(1 + inflation, years);
    }

    /** The same but for another rate. */
    public Terms withDiscountRate(double rate) {
        return new Terms(basis, rate, inflation, horizonYears);
    }
}
