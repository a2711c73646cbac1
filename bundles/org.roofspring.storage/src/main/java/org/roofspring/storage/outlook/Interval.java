package org.roofspring.storage.outlook;

/**
 * An interval of confidence.
 *
 * @param low lower end
 * @param high upper end
 * @param confidenceRatio how sure it is meant to be [-], above 0 to below 1
 */
public record Interval(double low, double high, double confidenceRatio) {

    /** Checks the confidence. */
    static void checkConfidence(double confidenceRatio) {
        if (!(confidenceRatio > 0 && confidenceRatio < 1)) {
            throw new IllegalArgumentException(
                    "confidenceRatio is " + confidenceRatio + "; accepted is between 0 and 1");
        }
    }
}
