package org.roofspring.storage.outlook;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;

/**
 * How sure a reliability is that was counted over a record of some years, in two ways that look at different things.
 *
 * <p>The chance that a year fails at all, as an exact (Clopper-Pearson) interval on the years that did. And the two
 * reliabilities, by a bootstrap: a record of as many years is drawn again and again from the hydrological years of the
 * run, with replacement, in blocks of neighbouring years; the interval holds the middle of what comes out. Each year
 * keeps the shortage it had, so water carried over from one year to the next is as it was in the run; where dry years
 * come in pairs, blocks of two or three years keep the pairs.
 *
 * <p>Neither knows of droughts worse than any on record, nor of a change of climate. Where no year failed the
 * bootstrap has nothing to draw and its interval shrinks to 1: trust the exact one.
 *
 * <p>Source of the blocks: K&uuml;nsch, H. R. (1989), <i>The jackknife and the bootstrap for general stationary
 * observations</i>, The Annals of Statistics 17; here taken in a circle, after Politis and Romano (1992); from memory.
 *
 * @param years hydrological years counted
 * @param failedYears of them, with a day that went short
 * @param failure chance that a year fails [-]
 * @param failureUpperLimit the chance that is not exceeded, with the same confidence put at this end alone [-]
 * @param timeReliability share of days met [-]
 * @param volumetricReliability share of demand supplied [-]
 */
public record ReliabilityInterval(int years, int failedYears, Interval failure, double failureUpperLimit,
        Interval timeReliability, Interval volumetricReliability) {

    private static final int FEWEST_RESAMPLES = 100;
    private static final int MOST_RESAMPLES = 1_000_000;
    private static final int DRAWS_BETWEEN_POLLS = 1024;

    /**
     * How the bootstrap draws.
     *
     * @param resamples records drawn, 100 to 1,000,000
     * @param blockYears neighbouring years drawn together [years], 1 or more; longer than the record is the record
     * @param seed of the random numbers: the same seed gives the same interval
     */
    public record Bootstrap(int resamples, int blockYears, long seed) {

        /** Checks the numbers. */
        public Bootstrap {
            if (resamples < FEWEST_RESAMPLES || resamples > MOST_RESAMPLES) {
                throw new IllegalArgumentException("resamples is " + resamples + "; accepted is " + FEWEST_RESAMPLES
                        + " to " + MOST_RESAMPLES);
            }
            if (blockYears < 1) {
                throw new IllegalArgumentException("blockYears is " + blockYears + "; accepted is 1 or more");
            }
        }
    }

    /**
     * Both intervals; empty when the run has no whole hydrological year with a demand.
     *
     * @param run cut into years
     * @param confidenceRatio [-], above 0 to below 1
     * @param bootstrap how it draws
     * @param cancelled polled while drawing
     * @throws CancellationException when cancelled
     */
    public static Optional<ReliabilityInterval> of(HydroYears run, double confidenceRatio, Bootstrap bootstrap,
            BooleanSupplier cancelled) {
        Interval.checkConfidence(confidenceRatio);
        List<HydroYear> years = run.years();
        if (years.isEmpty()) {
            return Optional.empty();
        }
        double[][] drawn = draw(years, bootstrap, cancelled);
        int failed = run.failed();
        return Optional.of(new ReliabilityInterval(years.size(), failed,
                ClopperPearson.of(failed, years.size(), confidenceRatio),
                ClopperPearson.upperLimit(failed, years.size(), confidenceRatio),
                middle(drawn[0], confidenceRatio), middle(drawn[1], confidenceRatio)));
    }

    /** Reliabilities of each drawn record, sorted: by days, by volume. */
    private static double[][] draw(List<HydroYear> years, Bootstrap bootstrap, BooleanSupplier cancelled) {
        int count = years.size();
        int block = Math.min(bootstrap.blockYears(), count);
        Random random = new Random(bootstrap.seed());
        double[][] drawn = new double[2][bootstrap.resamples()];
        for (int i = 0; i < bootstrap.resamples(); i++) {
            if (i % DRAWS_BETWEEN_POLLS == 0 && cancelled.getAsBoolean()) {
                throw new CancellationException("the bootstrap was cancelled");
            }
            long demandDays = 0;
            long shortDays = 0;
            double demandM3 = 0;
            double missingM3 = 0;
            int from = 0;
            for (int year = 0; year < count; year++) {
                from = year % block == 0 ? random.nextInt(count) : from + 1;
                HydroYear taken = years.get(from % count);
                demandDays += taken.demandDays();
                shortDays += taken.shortDays();
                demandM3 += taken.demandM3();
                missingM3 += taken.missingM3();
            }
            drawn[0][i] = 1 - (double) shortDays / demandDays;
            drawn[1][i] = 1 - missingM3 / demandM3;
        }
        Arrays.sort(drawn[0]);
        Arrays.sort(drawn[1]);
        return drawn;
    }

    /** The middle of the sorted draws; each end is one of them. */
    private static Interval middle(double[] sorted, double confidenceRatio) {
        double tail = (1 - confidenceRatio) / 2;
        int low = Math.min(sorted.length - 1, (int) Math.floor(tail * sorted.length));
        return new Interval(sorted[low], sorted[sorted.length - 1 - low], confidenceRatio);
    }
}
