package org.roofspring.calc.standard.drainage;

import java.util.Map;
import java.util.NavigableMap;
import java.util.TreeMap;

import org.roofspring.calc.Caution;
import org.roofspring.calc.Caution.Severity;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.Source;
import org.roofspring.calc.Working.Input;
import org.roofspring.calc.Working.Step;
import org.roofspring.calc.standard.answer.AnswerBuilder;
import org.roofspring.drainage.NoAnswerException;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.IntensityPoint;
import org.roofspring.site.RainSource;

/**
 * The design intensity read off the points that were entered: straight on log paper between durations, straight over
 * the logarithm of the return period between return periods, and never beyond what was entered.
 */
final class EnteredIntensities {
    private static final Source READ_OFF = Source.commonPractice(
            "intensity-duration curves are read straight on log paper between their points");
    /** Two durations or periods nearer than this are the same; they were typed in different units. */
    private static final double SAME = 1e-9;

    private EnteredIntensities() {
    }

    static Outcome.Completed answer(RainSource rain, double years, double durationS) {
        NavigableMap<Double, NavigableMap<Double, Double>> byPeriod = new TreeMap<>();
        for (IntensityPoint point : rain.getIntensities()) {
            if (point.getDuration() == null || point.getReturnPeriod() == null || point.getIntensity() == null) {
                throw new IllegalArgumentException(
                        "an entered intensity lacks its duration, its return period or the intensity itself");
            }
            byPeriod.computeIfAbsent(point.getReturnPeriod().in(Units.YR), period -> new TreeMap<>())
                    .put(point.getDuration().si(), point.getIntensity().in(Units.MM_PER_H));
        }
        NavigableMap<Double, Double> ofBurst = new TreeMap<>();
        byPeriod.forEach((period, points) -> {
            Double intensity = between(points, durationS, true);
            if (intensity != null) {
                ofBurst.put(period, intensity);
            }
        });
        Double intensity = between(ofBurst, years, false);
        if (intensity == null) {
            throw new NoAnswerException("the intensities that were entered do not reach a burst of "
                    + Quantity.ofSi(durationS, Units.MIN) + " once in " + Quantity.of(years, Units.YR)
                    + "; enter points on both sides of it, or clear them so that the record is used");
        }
        return stated(rain, years, durationS, intensity);
    }

    /** The value at x, between the points on both sides of it or at one of them; null beyond them. */
    private static Double between(NavigableMap<Double, Double> points, double x, boolean logarithmic) {
        Map.Entry<Double, Double> below = points.floorEntry(x * (1 + SAME));
        Map.Entry<Double, Double> above = points.ceilingEntry(x * (1 - SAME));
        if (below == null || above == null) {
            return null;
        }
        if (below.getKey().equals(above.getKey()) || above.getKey() <= below.getKey()) {
            return below.getValue();
        }
        double share = Math.log(x / below.getKey()) / Math.log(above.getKey() / below.getKey());
        boolean positive = below.getValue() > 0 && above.getValue() > 0;
        return logarithmic && positive ? below.getValue() * Math.pow(above.getValue() / below.getValue(), share)
                : below.getValue() + share * (above.getValue() - below.getValue());
    }

    private static Outcome.Completed stated(RainSource rain, double years, double durationS, double intensityMmPerH) {
        Quantity intensity = Quantity.of(intensityMmPerH, Units.MM_PER_H);
        Quantity depth = Quantity.of(intensityMmPerH * durationS / 3600, Units.MM);
        Input duration = new Input("t", "duration", Quantity.ofSi(durationS, Units.MIN), rain.getId(), "peakDuration");
        Input period = new Input("T", "return period", Quantity.of(years, Units.YR), rain.getId(), "returnPeriod");
        return new AnswerBuilder(rain.getId())
                .number("intensity", "Design intensity", intensity, Step.of("i",
                        "read off the intensities that were entered", "i(t, T)", intensity, READ_OFF, duration, period,
                        new Input("n", "points entered", Quantity.of(rain.getIntensities().size()), rain.getId(),
                                "intensities")))
                .number("depth", "Depth of the burst", depth, Step.of("Pt", "depth of the burst", "i t", depth,
                        Source.definition("mean intensity"), new Input("i", "intensity", intensity), duration))
                .caution(new Caution("intensity.entered", Severity.INFO, rain.getId(),
                        "The design intensity is what was entered, not drawn from the record; it holds for the place "
                                + "it was measured at.", java.util.List.of(), "",
                        new Source(Source.Standing.USER, "intensities of the rain source")))
                .build();
    }
}
