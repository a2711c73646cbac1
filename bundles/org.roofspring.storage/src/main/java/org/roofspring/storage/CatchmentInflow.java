package org.roofspring.storage;

/**
 * What a roof sends to the tank: inflow = area x runoff x max(0, depth - loss) for each day.
 *
 * <p>The area is the plan (horizontal) area: yield does not depend on slope or wind. The loss is the depth that each
 * wet day leaves on the roof and in the first-flush diverter. A runoff coefficient that was measured over seasons has
 * the initial loss in it already; using both is a matter for a caution, not for this class.
 *
 * @param areaM2 plan area [m&sup2;], 0 or more
 * @param runoffRatio share of the remaining depth that reaches the tank [-], 0 to 1
 * @param lossMm depth lost on each wet day [mm], 0 or more
 */
public record CatchmentInflow(double areaM2, double runoffRatio, double lossMm) {

    /** Checks the numbers. */
    public CatchmentInflow {
        if (!(areaM2 >= 0 && areaM2 < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("areaM2 is " + areaM2 + " m2; accepted is 0 or more");
        }
        if (!(runoffRatio >= 0 && runoffRatio <= 1)) {
            throw new IllegalArgumentException("runoffRatio is " + runoffRatio + "; accepted is 0 to 1");
        }
        if (!(lossMm >= 0 && lossMm < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("lossMm is " + lossMm + " mm; accepted is 0 or more");
        }
    }

    /**
     * Inflow of each day.
     *
     * @param depthMm rain of each day [mm], 0 or more, no gaps
     * @return inflow [m&sup3;] of each day
     * @throws IllegalArgumentException when a depth is negative or not a number
     */
    public double[] inflowM3(double[] depthMm) {
        checkDepths(depthMm);
        double[] inflow = new double[depthMm.length];
        for (int day = 0; day < inflow.length; day++) {
            inflow[day] = inflowM3(depthMm[day]);
        }
        return inflow;
    }

    /**
     * Inflow of one day; not checked, for use in long loops over depths that were.
     *
     * @param depthMm rain of the day [mm], 0 or more
     * @return inflow [m&sup3;]
     */
    public double inflowM3(double depthMm) {
        return m3PerMm() * Math.max(0, depthMm - lossMm);
    }

    /** Inflow for each mm that is left after the loss [m&sup3;/mm]: one litre is one mm on one m&sup2;. */
    public double m3PerMm() {
        return areaM2 * runoffRatio / 1000;
    }

    /**
     * Refuses a series of depths that holds one below 0 or not a number, naming the day.
     *
     * @param depthMm rain of each day [mm]
     */
    public static void checkDepths(double[] depthMm) {
        for (int day = 0; day < depthMm.length; day++) {
            double depth = depthMm[day];
            if (!(depth >= 0 && depth < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException(
                        "depthMm on day " + day + " is " + depth + " mm; accepted is 0 or more");
            }
        }
    }
}
