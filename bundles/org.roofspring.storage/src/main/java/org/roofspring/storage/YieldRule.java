package org.roofspring.storage;

/**
 * When in the day's sequence the demand is drawn, against the day's inflow and spill.
 *
 * <p>With Q inflow, D demand, S capacity and V volume at the start of the day, all in m&sup3;:
 * <pre>
 * Y  = min(D, V + theta Q)
 * V' = min(V + Q - theta Y, S) - (1 - theta) Y
 * </pre>
 * theta = 0 is yield after spillage (YAS): the day's demand is met from yesterday's water, cautious. theta = 1 is
 * yield before spillage (YBS): it may use the day's rain, hopeful. Printed for 0 &lt; theta &lt; 1 the rule lets the
 * late part (1 - theta) Y exceed what a small tank holds after spilling, and the volume becomes negative; here the
 * late part is at most what the tank holds.
 *
 * <p>Sources: Jenkins, D., Pearson, F., Moore, E., Sun, J. K. and Valentine, R. (1978), <i>Feasibility of rainwater
 * collection systems in California</i>; Fewkes, A. and Butler, D. (2000), <i>Simulating the performance of rainwater
 * collection and reuse systems using behavioural models</i>, Building Services Engineering Research and Technology;
 * the weighting after Latham, from memory.
 *
 * @param thetaRatio the weighting theta [-], 0 to 1
 */
public record YieldRule(double thetaRatio) {

    /** Yield after spillage, theta = 0. */
    public static final YieldRule YAS = new YieldRule(0);

    /** Yield before spillage, theta = 1. */
    public static final YieldRule YBS = new YieldRule(1);

    /** Checks the weighting. */
    public YieldRule {
        if (!(thetaRatio >= 0 && thetaRatio <= 1)) {
            throw new IllegalArgumentException("thetaRatio is " + thetaRatio + "; accepted is 0 to 1");
        }
        thetaRatio += 0.0; // -0 becomes 0, so that equal rules are equal records
    }
}
