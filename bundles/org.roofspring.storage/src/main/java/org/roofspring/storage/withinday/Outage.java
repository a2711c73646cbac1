package org.roofspring.storage.withinday;

/**
 * A time without power or pump.
 *
 * @param startS beginning [s from midnight of the first day], 0 or more
 * @param durationS length [s], 0 or more
 */
public record Outage(double startS, double durationS) {

    /** Checks the numbers. */
    public Outage {
        if (!(startS >= 0 && startS < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("startS is " + startS + " s; accepted is 0 or more");
        }
        if (!(durationS >= 0 && durationS < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("durationS is " + durationS + " s; accepted is 0 or more");
        }
    }

    double endS() {
        return startS + durationS;
    }

    boolean covers(double timeS) {
        return timeS >= startS && timeS < endS();
    }
}
