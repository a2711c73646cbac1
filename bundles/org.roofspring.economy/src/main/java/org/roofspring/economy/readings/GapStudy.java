package org.roofspring.economy.readings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

import org.roofspring.economy.internal.Checks;
import org.roofspring.economy.readings.GapAnswer.Interval;
import org.roofspring.economy.readings.GapAnswer.Judged;
import org.roofspring.economy.readings.GapAnswer.Range;
import org.roofspring.economy.readings.GapAnswer.TooFew;

/**
 * A water balance over the stretches between readings of a tank. In each stretch the change of volume is held against
 * inflow less use; what is missing is explained by generalised least squares, with a covariance made of the doubts:
 * errors of the dipstick (two neighbouring stretches share one, with opposite sign), of single storms, of the runoff
 * coefficient as a whole, of daily use between readings of the meter. Stretches in which the tank may have spilled
 * or run
 * dry do not count.
 *
 * <p>Patterns of leak, theft, blockage and use, begun on every third day, are held against what is missing. It is an
 * alarm when the clearest of them stands out further than the clearest does in {@value #ALARM_SHARE} of cases made
 * of the
 * doubts alone, which are drawn for these very reading days. The likeliest cause is the one with the greatest mean
 * likelihood over its days and sizes; the interval of the loss is that of a leak, over all days on which it may
 * have begun.
 */
public final class GapStudy {
    /** Share of sound cases that raise an alarm, if the doubts are right [-]. */
    public static final double ALARM_SHARE = 0.02;
    /** Stretches that it takes. */
    public static final int FEWEST = 4;
    private static final int DRAWS = 1000;
    private static final int DAYS_BETWEEN_BEGINNINGS = 3;
    /** A loss that began later than so long before the last day judged is not looked for [d]. */
    public static final int SHORTEST_DAYS = 21;
    /** Margin to full and empty within which a stretch does not count, in standard deviations. */
    private static final double MARGIN = 2.5;
    private static final double OVERUSE = 2;

    private final WaterCourse course;
    private final List<LevelReading> levels;
    private final UseCourse use;
    private final Doubt doubt;
    private final double[] inflowM3;
    private final double[] lossM3;
    private final List<Interval> intervals = new ArrayList<>();
    private final List<Interval> counting;

    private GapStudy(WaterCourse course, List<LevelReading> levels, List<MeterReading> meters, Doubt doubt) {
        this.course = Checks.present("course", course);
        this.doubt = Checks.present("doubt", doubt);
        this.levels = checked(levels, course);
        use = new UseCourse(course.plannedM3(), UseCourse.checked(meters, course.days()), doubt);
        inflowM3 = cumulated(course.inflowM3());
        lossM3 = cumulated(course.knownLossM3());
        boolean[] spilled = new boolean[course.days() + 1];
        boolean[] dry = new boolean[course.days() + 1];
        for (int i = 1; i < this.levels.size(); i++) {
            mark(this.levels.get(i - 1), this.levels.get(i), spilled, dry);
        }
        for (int i = 1; i < this.levels.size(); i++) {
            intervals.add(interval(this.levels.get(i - 1), this.levels.get(i), spilled, dry));
        }
        counting = intervals.stream().filter(Interval::counts).toList();
    }

    /**
     * Judges readings.
     *
     * @param course what was reckoned with
     * @param levels readings of the tank, in any order, of different days
     * @param meters readings of the meter; fewer than two count as none
     * @param doubt  how far things may be off
     * @param seed   of the random numbers that the threshold is drawn with
     */
    public static GapAnswer of(WaterCourse course, List<LevelReading> levels, List<MeterReading> meters, Doubt doubt,
            long seed, BooleanSupplier cancelled) {
        GapStudy study = new GapStudy(course, levels, meters, doubt);
        return study.counting.size() < FEWEST ? new TooFew(List.copyOf(study.intervals), study.counting.size(), FEWEST)
                : study.judge(seed, cancelled);
    }

    /**
     * Water in the tank on the morning of each day from a volume on, as reckoned [m3]: rain first, then spill, then
     * use.
     *
     * @param startDay    index of the day on which the volume holds
     * @param startVolumeM3 0 or more [m3]
     * @return one value for each morning from the start day to the morning after the last day
     */
    public static double[] expectedM3(WaterCourse course, List<MeterReading> meters, int startDay,
            double startVolumeM3) {
        Checks.within("start day (startDay)", startDay, 0, course.days());
        Checks.within("volume at the start (startVolumeM3)", startVolumeM3, 0, 1e6);
        UseCourse use = new UseCourse(course.plannedM3(), UseCourse.checked(meters, course.days()),
                Doubt.usual(1));
        double[] volumes = new double[course.days() - startDay + 1];
        volumes[0] = Math.min(startVolumeM3, course.capacityM3());
        for (int i = 1; i < volumes.length; i++) {
            int day = startDay + i - 1;
            double filled = Math.min(course.capacityM3(), volumes[i - 1] + course.inflowM3()[day]);
            volumes[i] = Math.max(0, filled - use.between(day, day + 1) - course.knownLossM3()[day]);
        }
        return volumes;
    }

    private static List<LevelReading> checked(List<LevelReading> levels, WaterCourse course) {
        List<LevelReading> sorted = Checks.list("level readings", levels).stream()
                .sorted(Comparator.comparingInt(LevelReading::day)).toList();
        for (int i = 0; i < sorted.size(); i++) {
            Checks.within("day of a level reading (day)", sorted.get(i).day(), 0, course.days());
            Checks.within("level reading (volumeM3)", sorted.get(i).volumeM3(), 0, 1e6);
            if (i > 0 && sorted.get(i).day() == sorted.get(i - 1).day()) {
                throw new IllegalArgumentException("level readings must be of different days, not two of day "
                        + sorted.get(i).day());
            }
        }
        return sorted;
    }

    private static double[] cumulated(double[] values) {
        double[] sums = new double[values.length + 1];
        for (int day = 0; day < values.length; day++) {
            sums[day + 1] = sums[day] + values[day];
        }
        return sums;
    }

    private Interval interval(LevelReading from, LevelReading to, boolean[] spilled, boolean[] dry) {
        double change = inflowM3[to.day()] - inflowM3[from.day()] - use.between(from.day(), to.day())
                - (lossM3[to.day()] - lossM3[from.day()]);
        // where use is spread over days, a dry day among them would put it on the wrong ones
        boolean counts = !any(spilled, from.day(), to.day() - 1)
                && !any(dry, use.spreadFrom(from.day()), use.spreadTo(to.day()));
        return new Interval(from.day(), to.day(), from.volumeM3() + change, to.volumeM3(), counts);
    }

    private static boolean any(boolean[] marks, int from, int to) {
        for (int day = from; day <= to; day++) {
            if (marks[day]) {
                return true;
            }
        }
        return false;
    }

    /** Marks the days on which the tank may have spilled or run dry; a reading at its edge marks all its stretch. */
    private void mark(LevelReading from, LevelReading to, boolean[] spilled, boolean[] dry) {
        double edge = MARGIN * doubt.dipstickM3();
        double volume = from.volumeM3();
        double stormM6 = 0;
        double allM3 = 0;
        boolean full = to.volumeM3() > course.capacityM3() - edge;
        boolean low = to.volumeM3() < edge || from.volumeM3() < edge;
        for (int day = from.day(); day < to.day(); day++) {
            double inflow = course.inflowM3()[day];
            volume += inflow;
            stormM6 += Math.pow(inflow * doubt.stormRatio(), 2);
            allM3 += inflow * doubt.runoffRatio();
            double margin = MARGIN * Math.sqrt(Math.pow(doubt.dipstickM3(), 2) + stormM6 + allM3 * allM3);
            spilled[day] |= full || volume > course.capacityM3() - margin;
            volume -= use.between(day, day + 1) + course.knownLossM3()[day];
            dry[day] |= low || volume < margin;
        }
    }

    private GapAnswer judge(long seed, BooleanSupplier cancelled) {
        Whitening whitening = new Whitening(covariance());
        double[] readings = whitening.of(counting.stream().mapToDouble(Interval::missingM3).toArray());
        List<Pattern> patterns = patterns(whitening);
        double signal = clearest(patterns, readings);
        double spread = Math.max(1, (Whitening.dot(readings, readings) - signal * signal)
                / Math.max(1, readings.length - 2));
        signal /= Math.sqrt(spread);
        double threshold = threshold(patterns, readings.length, seed, cancelled);
        boolean alarm = signal > threshold;

        Map<Cause, SizeWeights> weights = new EnumMap<>(Cause.class);
        patterns.stream().collect(Collectors.groupingBy(Pattern::cause)).forEach((cause, some) -> weights.put(cause,
                new SizeWeights(some, readings, spread, greatest(cause))));
        Map<Cause, Double> chances = chances(weights);
        Range leak = weights.get(Cause.LEAK).range();
        Range loss = alarm ? leak : new Range(0, leak.best(), leak.high());
        int until = counting.getLast().toDay();
        if (alarm) {
            Cause likeliest = chances.entrySet().stream().max(Map.Entry.comparingByValue()).orElseThrow().getKey();
            return new Judged(List.copyOf(intervals), loss, until, true, signal, threshold, Optional.of(likeliest),
                    chances, weights.get(likeliest).range(), weights.get(likeliest).sinceDay(), use.meteredRatio());
        }
        boolean overuse = use.meteredRatio().isPresent()
                && use.meteredRatio().getAsDouble() - 1 > OVERUSE * use.ratioDeviation();
        double more = overuse ? use.meteredRatio().getAsDouble() - 1 : 0;
        return new Judged(List.copyOf(intervals), loss, until, false, signal, threshold,
                overuse ? Optional.of(Cause.USE) : Optional.empty(), chances,
                overuse ? new Range(more, more, more) : loss, levels.getFirst().day(), use.meteredRatio());
    }

    private double[][] covariance() {
        int count = counting.size();
        double[][] covariance = new double[count][count];
        double dipstick = doubt.dipstickM3() * doubt.dipstickM3();
        double storm = doubt.stormRatio() * doubt.stormRatio();
        double runoff = doubt.runoffRatio() * doubt.runoffRatio();
        for (int i = 0; i < count; i++) {
            Interval a = counting.get(i);
            for (int k = 0; k <= i; k++) {
                Interval b = counting.get(k);
                double sum = runoff * inflow(a) * inflow(b)
                        + use.covariance(a.fromDay(), a.toDay(), b.fromDay(), b.toDay());
                if (i == k) {
                    sum += 2 * dipstick;
                    for (int day = a.fromDay(); day < a.toDay(); day++) {
                        sum += storm * course.inflowM3()[day] * course.inflowM3()[day];
                    }
                } else if (a.fromDay() == b.toDay()) {
                    sum -= dipstick;
                }
                covariance[i][k] = sum;
                covariance[k][i] = sum;
            }
        }
        return covariance;
    }

    private double inflow(Interval interval) {
        return inflowM3[interval.toDay()] - inflowM3[interval.fromDay()];
    }

    private List<Pattern> patterns(Whitening whitening) {
        List<Pattern> patterns = new ArrayList<>();
        int first = counting.getFirst().fromDay();
        int latest = Math.max(first, counting.getLast().toDay() - SHORTEST_DAYS);
        for (int since = first; since <= latest; since += DAYS_BETWEEN_BEGINNINGS) {
            int day = since;
            add(patterns, Cause.LEAK, since, whitening, stretch -> stretch.toDay() - begin(stretch, day));
            add(patterns, Cause.BLOCKAGE, since, whitening,
                    stretch -> inflowM3[stretch.toDay()] - inflowM3[begin(stretch, day)]);
            if (!use.metered()) {
                add(patterns, Cause.USE, since, whitening,
                        stretch -> use.plannedBetween(begin(stretch, day), stretch.toDay()));
            }
        }
        for (Interval taken : counting) {
            add(patterns, Cause.THEFT, taken.fromDay(), whitening, stretch -> stretch == taken ? 1 : 0);
        }
        return patterns;
    }

    private static int begin(Interval stretch, int since) {
        return Math.clamp(since, stretch.fromDay(), stretch.toDay());
    }

    private void add(List<Pattern> patterns, Cause cause, int since, Whitening whitening,
            ToDoubleFunction<Interval> missing) {
        double[] values = counting.stream().mapToDouble(missing).toArray();
        // no rain, or no use, since that day: nothing could show
        if (Arrays.stream(values).sum() > 1e-9) {
            patterns.add(new Pattern(cause, since, whitening.of(values)));
        }
    }

    private static double clearest(List<Pattern> patterns, double[] readings) {
        double clearest = 0;
        for (Pattern pattern : patterns) {
            clearest = Math.max(clearest, pattern.signal(readings));
        }
        return clearest;
    }

    /** What the clearest pattern reaches by chance, drawn with the doubts alone. */
    private static double threshold(List<Pattern> patterns, int count, long seed, BooleanSupplier cancelled) {
        SplittableRandom random = new SplittableRandom(seed);
        double[] clearest = new double[DRAWS];
        for (int draw = 0; draw < DRAWS; draw++) {
            if (draw % 50 == 0 && cancelled.getAsBoolean()) {
                throw new CancellationException();
            }
            double[] noise = new double[count];
            for (int i = 0; i < count; i++) {
                noise[i] = random.nextGaussian();
            }
            clearest[draw] = clearest(patterns, noise);
        }
        Arrays.sort(clearest);
        return clearest[(int) Math.ceil((1 - ALARM_SHARE) * DRAWS) - 1];
    }

    /** Greatest size thought of: twice the mean planned use, a full tank, all rain, twice the use. */
    private double greatest(Cause cause) {
        double meanM3 = use.plannedBetween(0, course.days()) / Math.max(1, course.days());
        return switch (cause) {
            case LEAK -> Math.max(2 * meanM3, course.capacityM3() / 100);
            case THEFT -> course.capacityM3();
            case BLOCKAGE, USE -> 1;
        };
    }

    private static Map<Cause, Double> chances(Map<Cause, SizeWeights> weights) {
        double top = weights.values().stream().mapToDouble(SizeWeights::logEvidence).max().orElseThrow();
        double sum = weights.values().stream().mapToDouble(weight -> Math.exp(weight.logEvidence() - top)).sum();
        Map<Cause, Double> chances = new EnumMap<>(Cause.class);
        weights.forEach((cause, weight) -> chances.put(cause, Math.exp(weight.logEvidence() - top) / sum));
        return chances;
    }
}
