package org.roofspring.storage.withinday;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;

/**
 * A flow that changes in steps through the day and is the same every day: a draw, or what a pump gives when it runs.
 */
public final class DayPattern {

    /** Length of a day [s]. */
    public static final double DAY_S = 86_400;

    private static final double MAX_FLOW_M3_PER_S = 1000;

    private final double[] beginS;
    private final double[] flowM3PerS;

    private DayPattern(double[] beginS, double[] flowM3PerS) {
        this.beginS = beginS;
        this.flowM3PerS = flowM3PerS;
    }

    /**
     * A part of the day with an even flow.
     *
     * @param fromS beginning [s from midnight], 0 to 86,400
     * @param toS end [s from midnight], 0 to 86,400; not after the beginning, it is on the next day
     * @param flowM3PerS [m&sup3;/s], 0 to 1000
     */
    public record Stretch(double fromS, double toS, double flowM3PerS) {

        /** Checks the numbers. */
        public Stretch {
            checkTime(fromS, "fromS");
            checkTime(toS, "toS");
            if (!(flowM3PerS >= 0 && flowM3PerS <= MAX_FLOW_M3_PER_S)) {
                throw new IllegalArgumentException(
                        "flowM3PerS is " + flowM3PerS + " m3/s; accepted is 0 to " + MAX_FLOW_M3_PER_S);
            }
        }

        /**
         * A volume spread evenly over a part of the day.
         *
         * @param volumeM3 [m&sup3;], 0 or more
         */
        public static Stretch ofVolume(double fromS, double toS, double volumeM3) {
            checkTime(fromS, "fromS");
            checkTime(toS, "toS");
            return new Stretch(fromS, toS, volumeM3 / length(fromS, toS));
        }

        private static double length(double fromS, double toS) {
            return toS > fromS ? toS - fromS : toS + DAY_S - fromS;
        }

        private static void checkTime(double timeS, String name) {
            if (!(timeS >= 0 && timeS <= DAY_S)) {
                throw new IllegalArgumentException(name + " is " + timeS + " s; accepted is 0 to 86400 s");
            }
        }

        private boolean holds(double timeS) {
            return toS > fromS ? timeS >= fromS && timeS < toS : timeS >= fromS || timeS < toS;
        }
    }

    /** The same flow all day [m&sup3;/s]. */
    public static DayPattern constant(double flowM3PerS) {
        return of(List.of(new Stretch(0, DAY_S, flowM3PerS)));
    }

    /** The sum of the stretches; nothing flows outside them. */
    public static DayPattern of(List<Stretch> stretches) {
        TreeSet<Double> moments = new TreeSet<>(List.of(0.0));
        for (Stretch stretch : stretches) {
            moments.add(stretch.fromS() % DAY_S);
            moments.add(stretch.toS() % DAY_S);
        }
        List<Double> begins = new ArrayList<>();
        List<Double> flows = new ArrayList<>();
        for (double moment : moments) {
            double flow = stretches.stream().filter(stretch -> stretch.holds(moment))
                    .mapToDouble(Stretch::flowM3PerS).sum();
            if (flows.isEmpty() || flows.getLast() != flow) {
                begins.add(moment);
                flows.add(flow);
            }
        }
        return new DayPattern(begins.stream().mapToDouble(Double::doubleValue).toArray(),
                flows.stream().mapToDouble(Double::doubleValue).toArray());
    }

    /** Flow at a moment [m&sup3;/s]; days repeat. */
    public double flowM3PerS(double timeS) {
        return flowM3PerS[step(timeS - midnight(timeS))];
    }

    /** Volume of a day [m&sup3;]. */
    public double volumeM3PerDay() {
        double sum = 0;
        for (int step = 0; step < beginS.length; step++) {
            sum += flowM3PerS[step] * stepLengthS(step);
        }
        return sum;
    }

    /** Largest flow of the day [m&sup3;/s]. */
    public double largestFlowM3PerS() {
        return Arrays.stream(flowM3PerS).max().orElseThrow();
    }

    /** The next moment after this one at which the flow may change; midnight counts [s]. */
    double nextChangeS(double timeS) {
        double midnight = midnight(timeS);
        return midnight + end(step(timeS - midnight));
    }

    /** Steps of the day, the first at midnight. */
    int steps() {
        return beginS.length;
    }

    double stepBeginS(int step) {
        return beginS[step];
    }

    double stepLengthS(int step) {
        return end(step) - beginS[step];
    }

    double stepFlowM3PerS(int step) {
        return flowM3PerS[step];
    }

    private static double midnight(double timeS) {
        return Math.floor(timeS / DAY_S) * DAY_S;
    }

    private double end(int step) {
        return step + 1 < beginS.length ? beginS[step + 1] : DAY_S;
    }

    private int step(double timeOfDayS) {
        int step = beginS.length - 1;
        while (step > 0 && beginS[step] > timeOfDayS) {
            step--;
        }
        return step;
    }

    /** Equal when the flow is the same all day. */
    @Override
    public boolean equals(Object other) {
        return other instanceof DayPattern that && Arrays.equals(beginS, that.beginS)
                && Arrays.equals(flowM3PerS, that.flowM3PerS);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(beginS) + Arrays.hashCode(flowM3PerS);
    }

    @Override
    public String toString() {
        return "flow in " + beginS.length + " steps, " + volumeM3PerDay() + " m3 a day";
    }
}
