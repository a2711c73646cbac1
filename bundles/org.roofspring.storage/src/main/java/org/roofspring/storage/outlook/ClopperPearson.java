package org.roofspring.storage.outlook;

import org.hipparchus.distribution.continuous.BetaDistribution;

/**
 * Exact interval for a chance of which some trials failed. With k failures in n trials the upper end is the largest
 * chance p at which k failures or fewer still happen with probability &alpha;/2, and so on; by the beta distribution
 * <pre>
 * low = Beta^-1(alpha/2; k, n-k+1),  high = Beta^-1(1 - alpha/2; k+1, n-k)
 * </pre>
 * It is never surer than it says, and usually a little wider than it need be. No failure in n trials is not a chance
 * of nothing: the upper end is then 1 - (&alpha;/2)^(1/n).
 *
 * <p>Source: Clopper, C. J. and Pearson, E. S. (1934), <i>The use of confidence or fiducial limits illustrated in the
 * case of the binomial</i>, Biometrika 26 (from memory).
 */
public final class ClopperPearson {

    private static final int MOST_TRIALS = 100_000;
    private static final double ACCURACY = 1e-13;

    private ClopperPearson() {
    }

    /**
     * Both ends, each with half of what confidence leaves.
     *
     * @param failures trials that failed, 0 to the trials
     * @param trials independent trials, 1 to 100,000
     * @param confidenceRatio [-], above 0 to below 1
     */
    public static Interval of(int failures, int trials, double confidenceRatio) {
        Interval.checkConfidence(confidenceRatio);
        double tail = (1 - confidenceRatio) / 2;
        return new Interval(low(failures, trials, tail), high(failures, trials, tail), confidenceRatio);
    }

    /** The chance that is not exceeded with the given confidence, all that confidence leaves put at this end. */
    public static double upperLimit(int failures, int trials, double confidenceRatio) {
        Interval.checkConfidence(confidenceRatio);
        return high(failures, trials, 1 - confidenceRatio);
    }

    private static double low(int failures, int trials, double tail) {
        check(failures, trials);
        if (failures == 0) {
            return 0;
        }
        return failures == trials ? Math.pow(tail, 1.0 / trials)
                : new BetaDistribution(failures, trials - failures + 1.0, ACCURACY).inverseCumulativeProbability(tail);
    }

    /** The mirror image of the lower end for the trials that did not fail. */
    private static double high(int failures, int trials, double tail) {
        check(failures, trials);
        return 1 - low(trials - failures, trials, tail);
    }

    private static void check(int failures, int trials) {
        if (trials < 1 || trials > MOST_TRIALS) {
            throw new IllegalArgumentException("trials is " + trials + "; accepted is 1 to " + MOST_TRIALS);
        }
        if (failures < 0 || failures > trials) {
            throw new IllegalArgumentException(
                    "failures is " + failures + "; accepted is 0 to the trials, " + trials);
        }
    }
}
