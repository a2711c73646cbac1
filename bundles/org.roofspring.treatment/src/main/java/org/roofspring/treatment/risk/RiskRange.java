package org.roofspring.treatment.risk;

/**
 * Risk as a range over the draws.
 *
 * @param draws           number of draws
 * @param seed            of the draws; the same seed gives the same result
 * @param dailyInfection  probability for a person and day
 * @param yearlyInfection probability for a person and year
 * @param yearlyDaly      healthy years lost, for a person and year
 * @param meetsTarget     share of the draws whose burden is at or below the target
 */
public record RiskRange(int draws, long seed, Percentiles dailyInfection, Percentiles yearlyInfection,
        Percentiles yearlyDaly, double meetsTarget) {

    /** Mean, and the values not exceeded in 5, 50 and 95 % of the draws. */
    public record Percentiles(double mean, double p05, double p50, double p95) {
    }
}
