package org.roofspring.drainage.intensity;

import java.util.Arrays;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.random.RandomGenerator;
import java.util.SplittableRandom;
import org.roofspring.drainage.internal.Require;

/**
 * How far a depth of a given return period is known from so few years: the spread of the depth over records of the
 * same length drawn from the fitted law, each fitted anew (parametric bootstrap). It does not cover the doubt about
 * the law itself, nor a changing climate.
 *
 * @param lowMm           so many of the refitted depths lie below as above {@code highMm}
 * @param estimateMm      by the law itself
 * @param highMm          upper end
 * @param level           share of the refitted depths between the ends
 * @param standardErrorMm standard deviation of the refitted depths
 */
public record DepthInterval(double lowMm, double estimateMm, double highMm, double level, double standardErrorMm) {
    /** Records drawn unless told otherwise: the ends then settle within about a twentieth of their distance. */
    public static final int DEFAULT_RECORDS = 1000;

    /**
     * Draws records and refits.
     *
     * @param law               fitted to the record
     * @param years             of the record, from {@link AnnualMaxima#FEWEST_YEARS} to 1000
     * @param returnPeriodYears from 1.01 to 10000
     * @param level             such as 0.9, from 0.5 to 0.99
     * @param records           to draw, from 100 to 100000
     * @param seed              of the random numbers; the same seed gives the same interval
     * @param cancelled         polled for each record
     * @throws CancellationException when cancelled
     */
    public static DepthInterval of(ExtremeLaw law, int years, double returnPeriodYears, double level, int records,
            long seed, BooleanSupplier cancelled) {
        Require.given("law", law);
        Require.range("years", years, AnnualMaxima.FEWEST_YEARS, 1000, "a record from 5 to 1000 years");
        Require.range("level", level, 0.5, 0.99, "a level from 0.5 to 0.99");
        Require.range("records", records, 100, 100000, "a number of records from 100 to 100000");
        double variate = ExtremeLaw.reducedVariate(returnPeriodYears);
        RandomGenerator random = new SplittableRandom(seed);
        double[] depths = new double[records];
        double[] maxima = new double[years];
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < records; i++) {
            if (cancelled.getAsBoolean()) {
                throw new CancellationException();
            }
            for (int year = 0; year < years; year++) {
                maxima[year] = law.depthAtVariateMm(-Math.log(-Math.log(openUniform(random))));
            }
            Arrays.sort(maxima);
            depths[i] = law.refitted(LMoments.ofSorted(maxima)).depthAtVariateMm(variate);
            sum += depths[i];
            squares += depths[i] * depths[i];
        }
        Arrays.sort(depths);
        double mean = sum / records;
        double error = Math.sqrt(Math.max(0, squares / records - mean * mean));
        int cut = (int) Math.round((1 - level) / 2 * (records - 1));
        return new DepthInterval(Math.max(0, depths[cut]), law.depthMm(returnPeriodYears),
                Math.max(0, depths[records - 1 - cut]), level, error);
    }

    private static double openUniform(RandomGenerator random) {
        double u = random.nextDouble();
        return u > 0 ? u : Double.MIN_NORMAL;
    }
}
