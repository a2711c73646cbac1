package org.roofspring.rain;

/**
 * Weather of one calendar month: a first-order Markov chain of wet and dry days, and gamma amounts on wet days.
 *
 * @param p01    chance of a wet day after a dry one, 0 to 1
 * @param p11    chance of a wet day after a wet one, 0 to 1
 * @param amount depth of a wet day
 */
public record MonthWeather(double p01, double p11, GammaFit amount) {
    public MonthWeather {
        if (!(p01 >= 0 && p01 <= 1)) {
            throw new IllegalArgumentException("p01 is " + p01 + "; 0 to 1 is accepted");
        }
        if (!(p11 >= 0 && p11 <= 1)) {
            throw new IllegalArgumentException("p11 is " + p11 + "; 0 to 1 is accepted");
        }
    }

    /** Share of wet days in the long run, P01 / (1 - P11 + P01); 1 where the chain never leaves the wet state. */
    public double wetRatio() {
        return p11 == 1 ? 1 : p01 / (1 - p11 + p01);
    }

    /** Mean rain of a day in the long run [mm]. */
    public double meanDailyMm() {
        return wetRatio() * amount.meanMm();
    }
}
