package org.roofspring.storage.outlook;

/**
 * How many of the years run dry.
 *
 * @param dry years that do
 * @param years years that were run
 */
public record Chance(int dry, int years) {

    /** Share of the years [-]. */
    public double ratio() {
        return (double) dry / years;
    }

    /** Exact interval for the chance behind it, for years that are independent of each other. */
    public Interval interval(double confidenceRatio) {
        return ClopperPearson.of(dry, years, confidenceRatio);
    }
}
