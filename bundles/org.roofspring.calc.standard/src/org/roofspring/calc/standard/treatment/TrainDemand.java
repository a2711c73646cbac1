package org.roofspring.calc.standard.treatment;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

import org.roofspring.calc.standard.water.UseDemand;
import org.roofspring.site.Tap;
import org.roofspring.site.TreatmentTrain;
import org.roofspring.site.Use;

/**
 * What is asked of a train.
 *
 * @param train        the train
 * @param uses         whose water all passes it
 * @param designM3PerS flow it is judged at [m3/s]; 0 for a train that works in batches
 * @param assumedFlow  whether that flow is neither given nor follows from taps
 * @param tapsM3PerS   flow of all its taps that run together [m3/s]; empty where no tap says
 * @param dailyM3      on a day with full use [m3]
 */
record TrainDemand(TreatmentTrain train, List<Use> uses, double designM3PerS, boolean assumedFlow,
        OptionalDouble tapsM3PerS, double dailyM3) {
    /** Flow of a plain tap where none is given [m3/s]: 10 L/min, common practice. */
    static final double ONE_TAP_M3_PER_S = 10 / 60_000.0;
    /** Longest time counted back [d]. */
    private static final long MAX_DAYS = 3660;

    static TrainDemand of(TreatmentTrain train, Map<Use, WaterWay> ways) {
        List<Use> uses = ways.entrySet().stream().filter(entry -> entry.getValue().trains().contains(train))
                .map(Map.Entry::getKey).toList();
        double daily = uses.stream().mapToDouble(UseDemand::fullM3PerDay).sum();
        OptionalDouble taps = tapsTogether(uses, ways);
        boolean assumed = !train.isBatch() && train.getDesignFlow() == null && taps.isEmpty();
        double design = train.isBatch() ? 0
                : Optional.ofNullable(train.getDesignFlow()).map(flow -> flow.si())
                        .orElse(taps.orElse(ONE_TAP_M3_PER_S));
        return new TrainDemand(train, uses, design, assumed, train.isBatch() ? OptionalDouble.empty() : taps, daily);
    }

    private static OptionalDouble tapsTogether(List<Use> uses, Map<Use, WaterWay> ways) {
        Set<Tap> taps = new LinkedHashSet<>();
        uses.forEach(use -> use.getTaps().stream().filter(tap -> tap.isInUse() && tap.getDesignFlow() != null)
                .filter(tap -> !ways.get(use).bypassing().contains(tap)).forEach(taps::add));
        return taps.isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(taps.stream()
                .mapToDouble(tap -> tap.getDesignFlow().si() * openTogether(tap)).sum());
    }

    private static int openTogether(Tap tap) {
        return tap.getOpenTogether() > 0 ? Math.min(tap.getOpenTogether(), tap.getCount()) : tap.getCount();
    }

    /** Water that passed since a day, by the calendars of the uses [m3]. */
    double passedM3(LocalDate since, LocalDate day) {
        int days = days(since, day);
        return uses.stream().mapToDouble(use -> Arrays.stream(UseDemand.seriesM3(use, day.minusDays(days), days)).sum())
                .sum();
    }

    /** Days since a day, not more than ten years. */
    static int days(LocalDate since, LocalDate day) {
        return (int) Math.clamp(ChronoUnit.DAYS.between(since, day), 0, MAX_DAYS);
    }
}
