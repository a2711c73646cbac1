package org.roofspring.economy.readings;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

import org.roofspring.economy.internal.Checks;

/** Use up to the morning of each day, by the meter where there is one and else as planned, and how sure it is. */
final class UseCourse {
    private final double[] planM3;
    private final double[] squaresM6;
    private final List<MeterReading> meters;
    private final Doubt doubt;
    private final double[] usedM3;

    UseCourse(double[] plannedM3, List<MeterReading> meters, Doubt doubt) {
        this.meters = meters;
        this.doubt = doubt;
        int days = plannedM3.length;
        planM3 = new double[days + 1];
        squaresM6 = new double[days + 1];
        for (int day = 0; day < days; day++) {
            planM3[day + 1] = planM3[day] + plannedM3[day];
            squaresM6[day + 1] = squaresM6[day] + plannedM3[day] * plannedM3[day];
        }
        usedM3 = new double[days + 1];
        for (int day = 0; day <= days; day++) {
            usedM3[day] = used(day);
        }
    }

    boolean metered() {
        return meters.size() >= 2;
    }

    private double used(int day) {
        if (!metered()) {
            return planM3[day];
        }
        MeterReading first = meters.getFirst();
        MeterReading last = meters.getLast();
        if (day <= first.day()) {
            return first.totalM3() - ratio() * (planM3[first.day()] - planM3[day]);
        }
        if (day >= last.day()) {
            return last.totalM3() + ratio() * (planM3[day] - planM3[last.day()]);
        }
        int bridge = bridge(day);
        MeterReading from = meters.get(bridge);
        MeterReading to = meters.get(bridge + 1);
        double plan = planM3[to.day()] - planM3[from.day()];
        double share = plan > 0 ? (planM3[day] - planM3[from.day()]) / plan
                : (day - from.day()) / (double) (to.day() - from.day());
        return from.totalM3() + share * (to.totalM3() - from.totalM3());
    }

    /** Index of the meter reading at or before a day between the first and the last. */
    private int bridge(int day) {
        int index = 0;
        while (index + 2 < meters.size() && meters.get(index + 1).day() <= day) {
            index++;
        }
        return index;
    }

    /** Metered over planned use; 1 where nothing was planned or read. */
    private double ratio() {
        return meteredRatio().orElse(1);
    }

    OptionalDouble meteredRatio() {
        if (!metered()) {
            return OptionalDouble.empty();
        }
        double plan = planM3[meters.getLast().day()] - planM3[meters.getFirst().day()];
        return plan > 1e-9 ? OptionalDouble.of((meters.getLast().totalM3() - meters.getFirst().totalM3()) / plan)
                : OptionalDouble.empty();
    }

    /** Standard deviation of that ratio, were the plan kept [-]. */
    double ratioDeviation() {
        int from = meters.getFirst().day();
        int to = meters.getLast().day();
        double daily = doubt.useDayRatio() * Math.sqrt(squaresM6[to] - squaresM6[from]) / (planM3[to] - planM3[from]);
        return Math.hypot(Math.hypot(daily, doubt.useRatio()), doubt.meterRatio());
    }

    /** Used between two mornings [m3]. */
    double between(int fromDay, int toDay) {
        return usedM3[toDay] - usedM3[fromDay];
    }

    /** Planned between two mornings [m3]. */
    double plannedBetween(int fromDay, int toDay) {
        return planM3[toDay] - planM3[fromDay];
    }

    /** First day over which the use up to a morning is spread by the plan: that of the meter reading before it. */
    int spreadFrom(int day) {
        if (!metered()) {
            return day;
        }
        int first = meters.getFirst().day();
        int last = meters.getLast().day();
        // beyond the readings the plan is scaled by the use of all days that were metered
        return day < first ? day : day > last ? first : day == last ? last : meters.get(bridge(day)).day();
    }

    /** Last day, likewise: the day before the meter reading at or after a morning. */
    int spreadTo(int day) {
        if (!metered() || day > meters.getLast().day()) {
            return day - 1;
        }
        if (day < meters.getFirst().day()) {
            return meters.getLast().day() - 1;
        }
        int bridge = bridge(day);
        return day == meters.get(bridge).day() ? day - 1 : meters.get(bridge + 1).day() - 1;
    }

    /** Covariance of the errors of two stretches [m6]. */
    double covariance(int from, int to, int otherFrom, int otherTo) {
        return covariance(to, otherTo) - covariance(to, otherFrom) - covariance(from, otherTo)
                + covariance(from, otherFrom);
    }

    private double covariance(int a, int b) {
        double daily = doubt.useDayRatio() * doubt.useDayRatio();
        double all = doubt.useRatio() * doubt.useRatio();
        int early = Math.min(a, b);
        int late = Math.max(a, b);
        if (!metered()) {
            return daily * squaresM6[early] + all * planM3[a] * planM3[b];
        }
        double meter = doubt.meterRatio() * doubt.meterRatio() * usedM3[a] * usedM3[b];
        int first = meters.getFirst().day();
        int last = meters.getLast().day();
        if (early >= last) {
            return meter + daily * (squaresM6[early] - squaresM6[last])
                    + all * (planM3[a] - planM3[last]) * (planM3[b] - planM3[last]);
        }
        if (late <= first) {
            return meter + daily * (squaresM6[first] - squaresM6[late])
                    + all * (planM3[first] - planM3[a]) * (planM3[first] - planM3[b]);
        }
        if (early < first || late > last) {
            return meter;
        }
        int bridge = bridge(early);
        double begin = squaresM6[meters.get(bridge).day()];
        double end = squaresM6[meters.get(bridge + 1).day()];
        boolean together = late <= meters.get(bridge + 1).day() && end > begin;
        // between two readings of the meter only the course is unknown, not the sum: a bridge, tied at both ends
        return meter + (together ? daily * (squaresM6[early] - begin) * (end - squaresM6[late]) / (end - begin) : 0);
    }

    /** The readings in order, each within the series and none falling. */
    static List<MeterReading> checked(List<MeterReading> readings, int days) {
        List<MeterReading> sorted = Checks.list("meter readings", readings).stream()
                .sorted(Comparator.comparingInt(MeterReading::day)).toList();
        for (int i = 0; i < sorted.size(); i++) {
            Checks.within("day of a meter reading (day)", sorted.get(i).day(), 0, days);
            Checks.within("meter reading (totalM3)", sorted.get(i).totalM3(), 0, 1e9);
            if (i > 0 && (sorted.get(i).day() == sorted.get(i - 1).day()
                    || sorted.get(i).totalM3() < sorted.get(i - 1).totalM3())) {
                throw new IllegalArgumentException("meter readings must be of different days and must not fall, as on"
                        + " day " + sorted.get(i).day());
            }
        }
        return sorted;
    }
}
