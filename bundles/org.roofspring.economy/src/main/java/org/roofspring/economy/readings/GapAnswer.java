package org.roofspring.economy.readings;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** What readings say against the balance. */
public sealed interface GapAnswer {

    /** One stretch between two readings. */
    record Interval(int fromDay, int toDay, double expectedM3, double observedM3, boolean counts) {
        /** Water that is missing against the balance [m3]; negative where there is more. */
        public double missingM3() {
            return expectedM3 - observedM3;
        }
    }

    /**
     * Too few stretches say anything: without a spill, an empty tank or a gap.
     *
     * @param counting stretches that do
     * @param needed   that it takes
     */
    record TooFew(List<Interval> intervals, int counting, int needed) implements GapAnswer {
    }

    /**
     * Enough to judge by.
     *
     * @param intervals    between readings
     * @param loss         as a steady loss, whatever the cause, begun {@value GapStudy#SHORTEST_DAYS} days or more
     *                     before
     *                     the last day judged [m3/d]
     * @param untilDay     index of the last day judged: what began later, or while the tank spilled or was dry,
     *                     cannot be
     *                     seen
     * @param alarm        whether the gap is more than the doubts explain
     * @param signal       how far the clearest pattern stands out, in standard deviations
     * @param threshold    above which it is an alarm: sound readings pass it in the stated share of cases
     * @param cause        the likeliest, where there is an alarm or the meter shows more use than planned
     * @param chances      of each cause, given that there is one
     * @param size         of the likeliest cause: m3 a day of a leak, m3 of a theft, share of rain or of use
     * @param sinceDay     index of the day from which it is likeliest to have run; of a theft, the morning before it
     * @param meteredRatio metered over planned use; empty without a meter
     */
    record Judged(List<Interval> intervals, Range loss, int untilDay, boolean alarm, double signal,
            double threshold, Optional<Cause> cause, Map<Cause, Double> chances, Range size, int sinceDay,
            OptionalDouble meteredRatio)
            implements GapAnswer {
    }

    /** A value between two bounds that hold it in 95 of 100 cases. */
    record Range(double low, double best, double high) {
        public boolean contains(double value) {
            return value >= low && value <= high;
        }
    }
}
