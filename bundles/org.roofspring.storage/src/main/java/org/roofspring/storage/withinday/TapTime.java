package org.roofspring.storage.withinday;

import java.util.Optional;

/**
 * How long taps run with the pump off.
 *
 * @param durationS until the last drop is drawn [s]
 * @param fromS moment of the day from which this is so [s from midnight]
 */
public record TapTime(double durationS, double fromS) {

    /** What is left of a volume after it is drawn, by rounding, as a share of it. */
    private static final double ROUNDING = 1e-12;

    /**
     * From a moment of the day; empty when nothing is ever drawn.
     *
     * @param draw what the taps ask for
     * @param usableM3 volume above the outlet [m&sup3;], 0 or more
     * @param fromS moment [s from midnight]
     */
    public static Optional<TapTime> from(DayPattern draw, double usableM3, double fromS) {
        check(usableM3);
        if (!(fromS >= 0 && fromS < DayPattern.DAY_S)) {
            throw new IllegalArgumentException("fromS is " + fromS + " s; accepted is 0 to below 86400 s");
        }
        return draw.volumeM3PerDay() == 0 ? Optional.empty()
                : Optional.of(new TapTime(forwardS(draw, usableM3, fromS), fromS));
    }

    /**
     * From the worst moment of the day, the first of equals; empty when nothing is ever drawn. The time left changes
     * in straight lines with the moment, so it is shortest where the draw changes at its beginning or at its end.
     *
     * @param draw what the taps ask for
     * @param usableM3 volume above the outlet [m&sup3;], 0 or more
     */
    public static Optional<TapTime> shortest(DayPattern draw, double usableM3) {
        check(usableM3);
        if (draw.volumeM3PerDay() == 0) {
            return Optional.empty();
        }
        TapTime shortest = null;
        for (int step = 0; step < draw.steps(); step++) {
            double momentS = draw.stepBeginS(step);
            double backS = backwardS(draw, usableM3, step);
            TapTime ending = new TapTime(backS, floorMod(momentS - backS));
            TapTime beginning = new TapTime(forwardS(draw, usableM3, momentS), momentS);
            shortest = shorter(shorter(shortest, beginning), ending);
        }
        return Optional.of(shortest);
    }

    private static TapTime shorter(TapTime before, TapTime time) {
        return before == null || time.durationS < before.durationS
                || time.durationS == before.durationS && time.fromS < before.fromS ? time : before;
    }

    private static void check(double usableM3) {
        if (!(usableM3 >= 0 && usableM3 <= 2_000_000)) {
            throw new IllegalArgumentException("usableM3 is " + usableM3 + " m3; accepted is 0 to 2000000 m3");
        }
    }

    /** Time from a moment until a volume has been drawn. */
    private static double forwardS(DayPattern draw, double volumeM3, double fromS) {
        double wholeDays = wholeDays(draw, volumeM3);
        double left = volumeM3 - wholeDays * draw.volumeM3PerDay();
        double timeS = fromS;
        while (left > ROUNDING * volumeM3) {
            double endS = draw.nextChangeS(timeS);
            double takenS = taken(left, draw.flowM3PerS(timeS), endS - timeS);
            left -= draw.flowM3PerS(timeS) * takenS;
            timeS = takenS < endS - timeS ? timeS + takenS : endS;
        }
        return wholeDays * DayPattern.DAY_S + timeS - fromS;
    }

    /** Time before a step of the day in which a volume is drawn. */
    private static double backwardS(DayPattern draw, double volumeM3, int untilStep) {
        double wholeDays = wholeDays(draw, volumeM3);
        double left = volumeM3 - wholeDays * draw.volumeM3PerDay();
        double backS = 0;
        int step = untilStep;
        while (left > ROUNDING * volumeM3) {
            step = (step == 0 ? draw.steps() : step) - 1;
            double takenS = taken(left, draw.stepFlowM3PerS(step), draw.stepLengthS(step));
            left -= draw.stepFlowM3PerS(step) * takenS;
            backS += takenS;
        }
        return wholeDays * DayPattern.DAY_S + backS;
    }

    /** How much of a stretch of even flow it takes to draw what is left. */
    private static double taken(double left, double flowM3PerS, double lengthS) {
        return flowM3PerS * lengthS > left ? left / flowM3PerS : lengthS;
    }

    /** Whole days that leave something over, so that the last drop falls within a day. */
    private static double wholeDays(DayPattern draw, double volumeM3) {
        return Math.max(0, Math.ceil(volumeM3 / draw.volumeM3PerDay()) - 1);
    }

    private static double floorMod(double timeS) {
        return timeS - Math.floor(timeS / DayPattern.DAY_S) * DayPattern.DAY_S;
    }
}
