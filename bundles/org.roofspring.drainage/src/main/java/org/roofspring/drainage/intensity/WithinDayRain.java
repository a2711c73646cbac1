package org.roofspring.drainage.intensity;

import org.roofspring.drainage.internal.Require;

/** How a day's rain is spread within the day, as far as a gutter's loss needs it: how much falls too fast for it. */
public sealed interface WithinDayRain {

    /**
     * The part of a day's depth that falls in excess of an intensity [mm].
     *
     * @param dayMm           depth of the day, from 0 to 5000 mm
     * @param intensityMmPerH that is taken, from 0 to 1e6 mm/h
     */
    default double excessMm(double dayMm, double intensityMmPerH) {
        Require.range("dayMm", dayMm, 0, 5000, "a day's depth from 0 to 5000 mm");
        Require.range("intensityMmPerH", intensityMmPerH, 0, 1e6, "an intensity from 0 to 1000000 mm/h");
        if (dayMm == 0 || intensityMmPerH == 0) {
            return dayMm;
        }
        return switch (this) {
            case NestedBursts bursts -> bursts.excess(dayMm, intensityMmPerH);
            case ExponentialIntensities(double rainDurationS) ->
                dayMm * Math.exp(-intensityMmPerH * rainDurationS / 3600 / dayMm);
        };
    }

    /**
     * Every day is spread like the design storm: its wettest part of each length holds the share that the duration
     * ratios say; within the shortest of them the intensity is even. Ordinary days are milder than that, so the loss
     * is on the high side.
     *
     * @param ratios between durations
     */
    record NestedBursts(DurationRatios ratios) implements WithinDayRain {
        public NestedBursts {
            Require.given("ratios", ratios);
        }

        /**
         * The excess over an intensity c of rain ranked by intensity is the most, over all durations t, by which its
         * wettest part exceeds what is taken: {@code max (P r(t) - c t)}. On a stretch where r goes with {@code t^m}
         * the most is where {@code P m r(t) / t = c}, or at an end.
         */
        private double excess(double dayMm, double intensityMmPerH) {
            double perS = intensityMmPerH / 3600;
            DurationRatios.Point from = ratios.points().getFirst();
            double most = Math.max(0, dayMm * from.ratio() - perS * from.durationS());
            for (int i = 1; i < ratios.points().size(); i++) {
                DurationRatios.Point to = ratios.points().get(i);
                double power = ratios.exponent(i);
                double even = from.durationS()
                        * Math.pow(dayMm * power * from.ratio() / (perS * from.durationS()), 1 / (1 - power));
                double duration = Math.clamp(even, from.durationS(), to.durationS());
                double wettest = from.ratio() * Math.pow(duration / from.durationS(), power);
                most = Math.max(most, dayMm * wettest - perS * duration);
                from = to;
            }
            return most;
        }
    }

    /**
     * Rain falls during so many hours of a wet day, at intensities spread exponentially about their mean; then the
     * share above an intensity c is {@code exp(-c / mean)}.
     *
     * @param rainDurationS of rain on a wet day, from 300 to 86400 s
     */
    record ExponentialIntensities(double rainDurationS) implements WithinDayRain {
        public ExponentialIntensities {
            Require.range("rainDurationS", rainDurationS, 300, 86400, "a duration from 300 to 86400 s (5 min to 24 h)");
        }
    }
}
