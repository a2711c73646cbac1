package org.roofspring.calc.standard.answer;

import java.util.List;
import java.util.function.Function;

import org.roofspring.calc.Caution;
import org.roofspring.calc.Caution.Severity;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.Source;
import org.roofspring.calc.Working.Input;
import org.roofspring.calc.Working.Step;
import org.roofspring.drainage.NoAnswerException;
import org.roofspring.drainage.intensity.AnnualMaxima;
import org.roofspring.drainage.intensity.DepthInterval;
import org.roofspring.drainage.intensity.DesignIntensity;
import org.roofspring.drainage.intensity.DurationRatios;
import org.roofspring.drainage.intensity.ExtremeLaw;
import org.roofspring.drainage.intensity.GevLaw;
import org.roofspring.drainage.intensity.GumbelLaw;
import org.roofspring.drainage.intensity.IntensityRelation;
import org.roofspring.drainage.intensity.LMoments;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.rain.DayDepth;
import org.roofspring.rain.RainStatistics;

/** The intensity of a design storm, in words. */
public final class IntensityAnswer {
    private static final Source EXTREMES = Source.fromMemory(
            "Hosking and Wallis, Regional Frequency Analysis, 1997; Chow, Maidment and Mays, Applied Hydrology, 1988");
    private static final Source RELATION = Source.definition("relation as given");
    private static final double LEVEL = 0.9;
    private static final long SEED = 1;

    /** A law of yearly maxima. */
    public enum Law {
        GUMBEL("Gumbel", GumbelLaw::of), GEV("generalised extreme value", GevLaw::of);

        private final String title;
        private final Function<LMoments, ExtremeLaw> fit;

        Law(String title, Function<LMoments, ExtremeLaw> fit) {
            this.title = title;
            this.fit = fit;
        }
    }

    /**
     * A storm that is asked for.
     *
     * @param returnPeriodYears it is reached or passed once in so many years on average
     * @param durationS         of the burst
     * @param law               of the yearly maxima
     * @param dayFactor         from a day read at a fixed hour to any 24 hours
     * @param ratios            from 24 hours to shorter times
     */
    public record Storm(double returnPeriodYears, double durationS, Law law, double dayFactor, DurationRatios ratios) {
    }

    private IntensityAnswer() {
    }

    /**
     * From the wettest day of each complete calendar year of a record.
     *
     * @param elementId of the rain source, or null
     * @param rain      statistics of the record
     * @param storm     asked for
     */
    public static Outcome fromRecord(String elementId, RainStatistics rain, Storm storm) {
        try {
            AnnualMaxima maxima = AnnualMaxima
                    .of(rain.annualMaxima().stream().mapToDouble(DayDepth::depthMm).toArray());
            return completed(elementId, maxima, rain.yearlyTotals().size() - maxima.years(), storm);
        } catch (NoAnswerException e) {
            return new Outcome.NotComputable(new Outcome.Problem(elementId, null,
                    "There is no design intensity: " + e.getMessage() + "."));
        }
    }

    private static Outcome.Completed completed(String elementId, AnnualMaxima maxima, int yearsLeftOut, Storm storm) {
        LMoments moments = LMoments.of(maxima);
        ExtremeLaw law = storm.law().fit.apply(moments);
        DesignIntensity design = design(law, storm);
        Quantity intensity = Quantity.of(design.intensityMmPerH(), Units.MM_PER_H);
        Quantity day = millimetres(design.fixedDayMm());
        Quantity sliding = millimetres(design.slidingDayMm());
        Quantity burst = millimetres(design.depthMm());
        Input duration = new Input("t", "duration", Quantity.ofSi(storm.durationS(), Units.MIN));
        AnswerBuilder answer = new AnswerBuilder(elementId)
                .number("intensity", "Design intensity", intensity,
                        Step.of("i", "intensity of the burst", "Pt / t", intensity, Source.definition("mean intensity"),
                                new Input("Pt", "depth of the burst", burst), duration))
                .number("depth", "Depth of the burst", burst,
                        Step.of("P24", "wettest 24 hours, however they fall", "P f", sliding,
                                KernelTerms.source(DesignIntensity.DAY_FACTOR_SOURCE),
                                new Input("P", "wettest day", day),
                                new Input("f", "factor from a fixed day", Quantity.of(storm.dayFactor()))),
                        Step.of("Pt", "depth of the burst", "P24 r", burst, KernelTerms.source(storm.ratios().source()),
                                new Input("P24", "wettest 24 hours", sliding),
                                new Input("r", "share that falls in the burst", Quantity.of(design.depthRatio())),
                                duration))
                .number("dayDepth", "Wettest day of that return period", day, lawSteps(law, moments, storm, day));
        interval(answer, law, maxima, storm, design);
        otherLaw(answer, moments, storm);
        answer.number("years", "Years of the record used", maxima.years(), Units.ONE,
                Step.of("n", "complete calendar years", "counted", Quantity.of(maxima.years()),
                        Source.definition("counted over the record")));
        if (yearsLeftOut > 0) {
            answer.caution(new Caution("intensity.years-left-out", Severity.INFO, elementId,
                    "Calendar years left out because they are not complete: {0}.",
                    List.of(Quantity.of(yearsLeftOut)), "",
                    Source.definition("a missing day may have been the wettest")));
        }
        cautions(answer, elementId, maxima, storm);
        return answer.build();
    }

    private static DesignIntensity design(ExtremeLaw law, Storm storm) {
        return DesignIntensity.of(law, storm.returnPeriodYears(), storm.durationS(), storm.dayFactor(), storm.ratios());
    }

    private static Step[] lawSteps(ExtremeLaw law, LMoments moments, Storm storm, Quantity day) {
        Quantity variate = Quantity.of(ExtremeLaw.reducedVariate(storm.returnPeriodYears()));
        Input y = new Input("y", "reduced variate", variate);
        Input mean = new Input("l1", "mean of the yearly maxima", millimetres(moments.l1Mm()));
        Input spread = new Input("l2", "second L-moment, half the mean difference of two of them",
                millimetres(moments.l2Mm()));
        Step variateStep = Step.of("y", "reduced variate", "-ln(-ln(1 - 1/T))", variate, EXTREMES,
                new Input("T", "return period, years", Quantity.of(storm.returnPeriodYears())));
        return switch (law) {
            case GumbelLaw gumbel -> new Step[] {
                Step.of("b", "scale of the Gumbel law", "l2 / ln 2", millimetres(gumbel.scaleMm()), EXTREMES, spread),
                Step.of("u", "mode of the Gumbel law", "l1 - 0.5772 b", millimetres(gumbel.locationMm()), EXTREMES,
                        mean, new Input("b", "scale", millimetres(gumbel.scaleMm()))),
                variateStep,
                Step.of("P", "wettest day of that return period", "u + b y", day, EXTREMES,
                        new Input("u", "mode", millimetres(gumbel.locationMm())),
                        new Input("b", "scale", millimetres(gumbel.scaleMm())), y)};
            case GevLaw gev -> new Step[] {
                new Step("k", "shape that gives the L-skewness, solved for; then scale b and location u from l1 and l2",
                        "2 (1 - 3^-k) / (1 - 2^-k) - 3 = t3", List.of(mean, spread,
                                new Input("t3", "L-skewness", Quantity.of(moments.t3()))), "", Quantity.of(gev.shape()),
                        EXTREMES),
                variateStep,
                Step.of("P", "wettest day of that return period", "u + b (1 - exp(-k y)) / k", day, EXTREMES,
                        new Input("u", "location", millimetres(gev.locationMm())),
                        new Input("b", "scale", millimetres(gev.scaleMm())),
                        new Input("k", "shape", Quantity.of(gev.shape())), y)};
        };
    }

    private static void interval(AnswerBuilder answer, ExtremeLaw law, AnnualMaxima maxima, Storm storm,
            DesignIntensity design) {
        DepthInterval interval = DepthInterval.of(law, maxima.years(), storm.returnPeriodYears(), LEVEL,
                DepthInterval.DEFAULT_RECORDS, SEED, () -> false);
        double perMm = storm.dayFactor() * design.depthRatio() * 3600 / storm.durationS();
        bound(answer, "intensityLow", "Lower end of the 90 % interval", interval.lowMm() * perMm, maxima);
        bound(answer, "intensityHigh", "Upper end of the 90 % interval", interval.highMm() * perMm, maxima);
    }

    private static void bound(AnswerBuilder answer, String id, String title, double intensityMmPerH,
            AnnualMaxima maxima) {
        Quantity value = Quantity.of(intensityMmPerH, Units.MM_PER_H);
        answer.number(id, title, value, Step.of("i", "spread over " + DepthInterval.DEFAULT_RECORDS
                + " records of the same length drawn from the law, each fitted anew; "
                + "not the doubt about law and ratios",
                "5 % of the records lie beyond", value, Source.definition("parametric bootstrap"),
                new Input("n", "years", Quantity.of(maxima.years()))));
    }

    private static void otherLaw(AnswerBuilder answer, LMoments moments, Storm storm) {
        Law other = storm.law() == Law.GUMBEL ? Law.GEV : Law.GUMBEL;
        ExtremeLaw law = other.fit.apply(moments);
        Quantity value = Quantity.of(design(law, storm).intensityMmPerH(), Units.MM_PER_H);
        Quantity day = millimetres(law.depthMm(storm.returnPeriodYears()));
        answer.number("intensityOtherLaw", "By the " + other.title + " law", value,
                Step.of("i", "the same steps from its wettest day", "P f r / t", value, EXTREMES,
                        new Input("P", "wettest day by that law", day)));
    }

    private static void cautions(AnswerBuilder answer, String elementId, AnnualMaxima maxima, Storm storm) {
        if (storm.returnPeriodYears() > maxima.years()) {
            answer.caution(new Caution("intensity.extrapolated", Severity.WARNING, elementId,
                    "A storm of once in {0} years is drawn from a record of {1}; take the upper end where a spill does "
                            + "damage.",
                    List.of(Quantity.of(storm.returnPeriodYears()), Quantity.of(maxima.years())), "",
                    Source.definition("beyond the record")));
        }
        answer.caution(new Caution("intensity.ratios", Severity.WARNING, elementId,
                "A daily record does not show bursts: the share that falls in a few minutes comes from a rule of "
                        + "another region. Use the local intensity-duration curve, or the building code's figure, "
                        + "where there is one.", List.of(), "Ask the weather service or the building authority.",
                KernelTerms.source(storm.ratios().source())));
    }

    /**
     * From an intensity-duration relation that is given.
     *
     * @param elementId of the rain source, or null
     * @param relation  in mm/h and minutes
     * @param durationS of the burst
     */
    public static Outcome.Completed fromRelation(String elementId, IntensityRelation relation, double durationS) {
        Quantity intensity = Quantity.of(relation.intensityMmPerH(durationS), Units.MM_PER_H);
        Quantity depth = millimetres(relation.depthMm(durationS));
        Input duration = new Input("t", "duration", Quantity.ofSi(durationS, Units.MIN));
        return new AnswerBuilder(elementId)
                .number("intensity", "Design intensity", intensity, relationStep(relation, intensity, duration))
                .number("depth", "Depth of the burst", depth, Step.of("Pt", "depth of the burst", "i t", depth,
                        Source.definition("mean intensity"), new Input("i", "intensity", intensity), duration))
                .caution(new Caution("intensity.relation", Severity.INFO, elementId,
                        "A relation holds for the place, the return period and the durations it was drawn from.",
                        List.of(), "", RELATION))
                .build();
    }

    private static Step relationStep(IntensityRelation relation, Quantity intensity, Input duration) {
        return switch (relation) {
            case IntensityRelation.Talbot talbot -> Step.of("i", "Talbot's form, mm/h with t in min", "a / (t + b)",
                    intensity, RELATION, duration, coefficient("a", talbot.a()), coefficient("b", talbot.b()));
            case IntensityRelation.Sherman sherman -> Step.of("i", "Sherman's form, mm/h with t in min",
                    "a / (t + b)^n", intensity, RELATION, duration, coefficient("a", sherman.a()), coefficient("b", sherman.b()),
                    coefficient("n", sherman.n()));
            case IntensityRelation.Wenzel wenzel -> Step.of("i", "Wenzel's form, mm/h with t in min", "a / (t^n + b)",
                    intensity, RELATION, duration, coefficient("a", wenzel.a()), coefficient("b", wenzel.b()),
                    coefficient("n", wenzel.n()));
        };
    }

    private static Input coefficient(String symbol, double value) {
        return new Input(symbol, "coefficient " + symbol, Quantity.of(value));
    }

    private static Quantity millimetres(double depthMm) {
        return Quantity.of(depthMm, Units.MM);
    }
}
