package org.roofspring.calc.standard.drainage;

import java.util.List;

import org.roofspring.calc.FindingValue;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.standard.answer.IntensityAnswer;
import org.roofspring.calc.standard.water.Given;
import org.roofspring.drainage.NoAnswerException;
import org.roofspring.drainage.Source;
import org.roofspring.drainage.intensity.DesignIntensity;
import org.roofspring.drainage.intensity.DurationRatios;
import org.roofspring.quantity.Units;
import org.roofspring.rain.RainRecord;
import org.roofspring.rain.RainStatistics;
import org.roofspring.site.RainSource;
import org.roofspring.site.SitePackage;

/**
 * The storm that gutters are sized for: from the intensities that were entered, or else from the site's daily record.
 *
 * @param intensityMmPerH of the burst
 * @param durationS       of the burst
 * @param ratios          how a day's rain gathers in shorter times
 * @param answer          findings and workings behind the intensity
 */
public record DesignStorm(double intensityMmPerH, double durationS, DurationRatios ratios,
        Outcome.Completed answer) {
    private static final double DEFAULT_RETURN_PERIOD_YEARS = 5;

    /**
     * @param rain  of the site
     * @param daily its record, without gaps
     * @throws NoAnswerException        when record or entered intensities do not reach so far
     * @throws IllegalArgumentException when what was entered cannot be; both say why in one sentence
     */
    public static DesignStorm of(RainSource rain, FindingValue.Daily daily) {
        double years = Given.value(rain, SitePackage.Literals.RAIN_SOURCE__RETURN_PERIOD)
                .map(period -> period.in(Units.YR)).orElse(DEFAULT_RETURN_PERIOD_YEARS);
        double durationS = Given.si(rain, SitePackage.Literals.RAIN_SOURCE__PEAK_DURATION,
                DesignIntensity.DEFAULT_DURATION_S);
        DurationRatios ratios = ratios(rain, durationS);
        Outcome.Completed answer = rain.getIntensities().isEmpty() ? fromRecord(rain, daily, years, durationS, ratios)
                : EnteredIntensities.answer(rain, years, durationS);
        double intensity = ((FindingValue.Number) answer.finding("intensity", rain.getId()).orElseThrow().value())
                .quantity().in(Units.MM_PER_H);
        return new DesignStorm(intensity, durationS, ratios, answer);
    }

    /**
     * Depth of a storm of the same return period and another duration [mm].
     *
     * @param otherS between the durations of {@link #ratios}
     */
    public double depthMm(double otherS) {
        return intensityMmPerH * durationS / 3600 * ratios.ratio(otherS) / ratios.ratio(durationS);
    }

    /** The share that was entered for the burst, or else the rule that is stated beside every figure. */
    private static DurationRatios ratios(RainSource rain, double durationS) {
        if (rain.getDayToShortRatio() == null) {
            return DurationRatios.thirdPower();
        }
        double ratio = rain.getDayToShortRatio().si();
        double even = durationS / DurationRatios.DAY_S;
        if (!(ratio > even && ratio < 1)) {
            throw new IllegalArgumentException("the share of a day's rain that falls in " + minutes(durationS)
                    + " min is " + ratio + "; it lies above " + even + ", that of even rain, and below 1");
        }
        return new DurationRatios(List.of(new DurationRatios.Point(durationS, ratio),
                new DurationRatios.Point(DurationRatios.DAY_S, 1)), Source.read("entered by you"));
    }

    private static Outcome.Completed fromRecord(RainSource rain, FindingValue.Daily daily, double years,
            double durationS, DurationRatios ratios) {
        double shortest = ratios.points().getFirst().durationS();
        if (durationS < shortest || durationS > DurationRatios.DAY_S) {
            throw new NoAnswerException("the rule that leads from a day's rain to short bursts begins at "
                    + minutes(shortest) + " min and the burst asked for lasts " + minutes(durationS)
                    + " min; enter an intensity, or the share of the day's rain that falls in the burst");
        }
        RainStatistics statistics = RainStatistics.of(RainRecord.of(daily.firstDay(), daily.values()));
        return switch (IntensityAnswer.fromRecord(rain.getId(), statistics, new IntensityAnswer.Storm(years, durationS,
                IntensityAnswer.Law.GUMBEL, Given.si(rain, SitePackage.Literals.RAIN_SOURCE__DAY_FACTOR,
                        DesignIntensity.DEFAULT_DAY_FACTOR), ratios))) {
            case Outcome.Completed completed -> completed;
            case Outcome.NotComputable none -> throw new NoAnswerException(none.problems().getFirst().text());
        };
    }

    private static String minutes(double durationS) {
        return Double.toString(durationS / 60).replaceFirst("\\.0$", "");
    }
}
