package org.roofspring.calc.standard.drainage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.BooleanSupplier;

import org.roofspring.drainage.intensity.CollectionEfficiency;
import org.roofspring.drainage.intensity.WithinDayRain;
import org.roofspring.site.Downpipe;
import org.roofspring.site.Gutter;

/**
 * A gutter of the site with its outlets in the design storm, and what it loses over the years.
 *
 * @param gutter         in the site
 * @param water          that arrives
 * @param runs           one for each outlet
 * @param efficiency     share of the rain of the record that gets past gutter, outlets and downpipes
 * @param runoffM3PerYear of its roofs in a mean year, before any loss of a wet day
 * @param lostM3PerYear  of it, for want of capacity
 * @param gainM3PerYear  of it that a gutter {@link #STEP_M} wider would save; none where such a gutter is out of range
 */
record GutterCheck(Gutter gutter, Arriving water, List<OutletRun> runs, double efficiency, double runoffM3PerYear,
        double lostM3PerYear, OptionalDouble gainM3PerYear) {
    /** From one usual width of gutter to the next. */
    static final double STEP_M = 0.025;
    private static final double MOST_INTENSITY_MM_PER_H = 1e6;
    private static final double LEAST_AREA_M2 = 0.01;
    private static final double DAYS_PER_YEAR = 365.2425;

    /** The run that is nearest to its limit, or furthest beyond it. */
    OutletRun worst() {
        return runs.stream().max(Comparator.comparingDouble(OutletRun::utilisation)).orElseThrow();
    }

    /** Intensity that the worst run just takes [mm/h]. */
    double limitMmPerH() {
        return limit(worst(), water.times(share(gutter, worst())));
    }

    private static double share(Gutter gutter, OutletRun run) {
        return run.reach().wholeM() / gutter.getLength().si();
    }

    private static double limit(OutletRun run, Arriving water) {
        return water.peakM2() < LEAST_AREA_M2 ? MOST_INTENSITY_MM_PER_H : Math.min(MOST_INTENSITY_MM_PER_H,
                CollectionEfficiency.limitMmPerH(Math.min(100, run.capacityM3PerS()), Math.min(1e6, water.peakM2()),
                        1));
    }

    /** Checks gutters of one site against one storm and one record. Used by one thread. */
    static final class Checker {
        private final RoofWays ways;
        private final DesignStorm storm;
        private final double[] dailyMm;
        private final BooleanSupplier cancelled;
        private final OutletRun.Solver solver = new OutletRun.Solver();
        private final Map<Double, CollectionEfficiency> byLimit = new HashMap<>();

        Checker(RoofWays ways, DesignStorm storm, double[] dailyMm, BooleanSupplier cancelled) {
            this.ways = ways;
            this.storm = storm;
            this.dailyMm = dailyMm;
            this.cancelled = cancelled;
        }

        OutletRun.Solver solver() {
            return solver;
        }

        /** @throws IllegalArgumentException when it cannot be checked, in words that follow "name: " */
        GutterCheck check(Gutter gutter) {
            Arriving water = ways.at(gutter);
            List<OutletRun> runs = runs(gutter, 1);
            double lost = lostM3PerYear(gutter, runs);
            double yearMm = Arrays.stream(dailyMm).sum() / dailyMm.length * DAYS_PER_YEAR;
            return new GutterCheck(gutter, water, runs, efficiency(gutter, runs), yearMm / 1000 * water.yearM2(), lost,
                    gain(gutter, lost));
        }

        private OptionalDouble gain(Gutter gutter, double lostM3PerYear) {
            if (lostM3PerYear == 0) {
                return OptionalDouble.of(0);
            }
            try {
                List<OutletRun> wider = runs(gutter, 1 + STEP_M / gutter.getWidth().si());
                return OptionalDouble.of(Math.max(0, lostM3PerYear - lostM3PerYear(gutter, wider)));
            } catch (IllegalArgumentException e) {
                return OptionalDouble.empty(); // the kernel knows no gutter that large
            }
        }

        private List<OutletRun> runs(Gutter gutter, double factor) {
            List<OutletRun> runs = new ArrayList<>();
            for (Reach reach : ways.reaches(gutter)) {
                Arriving water = ways.at(reach.outlet());
                double all = reach.outlet().getTo() instanceof Downpipe pipe ? ways.at(pipe).peakM2() : 0;
                runs.add(OutletRun.of(gutter, reach, factor, water.flowM3PerS(storm.intensityMmPerH()),
                        all > 0 ? water.peakM2() / all : 1, solver));
            }
            return runs;
        }

        private double efficiency(Gutter gutter, List<OutletRun> runs) {
            double caught = 0;
            for (OutletRun run : runs) {
                caught += share(gutter, run) * caught(gutter, run).ratio();
            }
            return Math.min(1, caught);
        }

        private double lostM3PerYear(Gutter gutter, List<OutletRun> runs) {
            double lost = 0;
            for (OutletRun run : runs) {
                Arriving water = ways.at(gutter).times(share(gutter, run));
                lost += water.planM2() == 0 ? 0 : caught(gutter, run).lostM3PerYear(water.planM2(),
                        Math.min(1, water.yearM2() / water.planM2()));
            }
            return lost;
        }

        private CollectionEfficiency caught(Gutter gutter, OutletRun run) {
            double limit = limit(run, ways.at(gutter).times(share(gutter, run)));
            return byLimit.computeIfAbsent(limit, value -> CollectionEfficiency.of(dailyMm, value,
                    new WithinDayRain.NestedBursts(storm.ratios()), cancelled));
        }
    }
}
