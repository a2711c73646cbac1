package org.roofspring.economy.readings;

import java.util.List;

import org.roofspring.economy.readings.GapAnswer.Range;

/**
 * How likely each size of a cause is, all days of beginning and all sizes up to the greatest being equally likely
 * beforehand. The likelihood of size x of a pattern is exp(b x - a x^2 / 2), a being the sum of its squares and b its
 * product with the readings; sizes are taken on a fine, even grid.
 */
final class SizeWeights {
    private static final int SIZES = 800;
    private static final double TAIL = 0.025;

    private final double step;
    private final double[] weights = new double[SIZES];
    private final double logScale;
    private final int sinceDay;

    /**
     * @param patterns of one cause
     * @param readings whitened
     * @param spread   variance of the readings over what the doubts say, 1 or more
     * @param greatest size thought of
     */
    SizeWeights(List<Pattern> patterns, double[] readings, double spread, double greatest) {
        step = greatest / SIZES;
        double[] logPeaks = new double[patterns.size()];
        double top = 0;
        for (int i = 0; i < logPeaks.length; i++) {
            double product = Whitening.dot(patterns.get(i).white(), readings) / spread;
            double squares = patterns.get(i).squares() / spread;
            double best = Math.clamp(product / squares, 0, greatest);
            logPeaks[i] = product * best - squares * best * best / 2;
            top = Math.max(top, logPeaks[i]);
        }
        double heaviest = -1;
        int since = 0;
        for (int i = 0; i < logPeaks.length; i++) {
            double product = Whitening.dot(patterns.get(i).white(), readings) / spread;
            double squares = patterns.get(i).squares() / spread;
            double sum = 0;
            for (int k = 0; k < SIZES; k++) {
                double size = (k + 0.5) * step;
                double weight = Math.exp(product * size - squares * size * size / 2 - top);
                weights[k] += weight;
                sum += weight;
            }
            if (sum > heaviest) {
                heaviest = sum;
                since = patterns.get(i).sinceDay();
            }
        }
        sinceDay = since;
        logScale = top - Math.log(SIZES) - Math.log(patterns.size());
    }

    /** Logarithm of the mean likelihood over that of no cause at all. */
    double logEvidence() {
        double sum = 0;
        for (double weight : weights) {
            sum += weight;
        }
        return logScale + Math.log(Math.max(sum, Double.MIN_NORMAL));
    }

    /** The day of beginning with most weight. */
    int sinceDay() {
        return sinceDay;
    }

    /** Median, and the bounds that leave 2.5 % outside at either end. */
    Range range() {
        return new Range(quantile(TAIL), quantile(0.5), quantile(1 - TAIL));
    }

    private double quantile(double share) {
        double all = 0;
        for (double weight : weights) {
            all += weight;
        }
        double sum = 0;
        for (int k = 0; k < SIZES; k++) {
            if (sum + weights[k] >= share * all) {
                return (k + (share * all - sum) / weights[k]) * step;
            }
            sum += weights[k];
        }
        return SIZES * step;
    }
}
