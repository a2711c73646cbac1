package org.roofspring.treatment.train;

import org.roofspring.treatment.internal.Checks;

/**
 * What is left of a log reduction when the step is out at times: L' = -log10(f 10^-L + 1 - f), where f is the share of
 * time it works. Out for 5 % of the time caps any step at 1.3 log.
 */
public final class Availability {
    private Availability() {
    }

    /**
     * @param log         L, 0 to 20
     * @param outageRatio 1 - f, 0 to 1
     * @return L', 0 to L
     */
    public static double effectiveLog(double log, double outageRatio) {
        Checks.within("log reduction (log)", log, 0, 20, "");
        Checks.within("share of time out (outageRatio)", outageRatio, 0, 1, "");
        if (outageRatio == 0) {
            return log;
        }
        double passing = (1 - outageRatio) * Math.pow(10, -log) + outageRatio;
        return Math.max(0, Math.min(log, -Math.log10(passing)));
    }
}
