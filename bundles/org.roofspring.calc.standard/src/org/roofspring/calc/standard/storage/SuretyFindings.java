package org.roofspring.calc.standard.storage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

import org.roofspring.calc.CalculationContext;
import org.roofspring.calc.Caution;
import org.roofspring.calc.Caution.Severity;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.Source;
import org.roofspring.calc.Working.Input;
import org.roofspring.calc.Working.Step;
import org.roofspring.calc.standard.answer.AnswerBuilder;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Unit;
import org.roofspring.quantity.Units;
import org.roofspring.storage.BalanceResult;
import org.roofspring.storage.ShortageSpell;
import org.roofspring.storage.outlook.HydroYears;
import org.roofspring.storage.outlook.Interval;
import org.roofspring.storage.outlook.ReliabilityInterval;
import org.roofspring.storage.outlook.ReliabilityInterval.Bootstrap;

/** How sure the reliability of the site as built is, and its longest and deepest shortage. */
final class SuretyFindings {
    private static final int RESAMPLES = 5000;
    private static final int USUAL_YEARS = 30;
    static final Source EXACT = Source.fromMemory("Clopper and Pearson, The use of confidence or fiducial limits "
            + "illustrated in the case of the binomial, Biometrika 26, 1934");
    private static final Source BOOTSTRAP = Source.fromMemory("Kuensch, The jackknife and the bootstrap for general "
            + "stationary observations, The Annals of Statistics 17, 1989; blocks in a circle, Politis and Romano, "
            + "1992");
    private static final Source COUNT = Source.definition("counted over the record");

    private final WaterNeed need;
    private final BalanceResult whole;
    private final SiteTarget target;
    private final AnswerBuilder answer;

    SuretyFindings(WaterNeed need, BalanceResult whole, SiteTarget target, AnswerBuilder answer) {
        this.need = need;
        this.whole = whole;
        this.target = target;
        this.answer = answer;
    }

    void add(CalculationContext context) {
        shortages();
        HydroYears years = HydroYears.of(need.firstDay(), whole,
                HydroYears.startMonth(need.firstDay(), need.inflowM3()));
        Optional<ReliabilityInterval> interval = ReliabilityInterval.of(years, target.confidence(),
                new Bootstrap(RESAMPLES, 1, context.randomSeed()), context.cancelled());
        if (interval.isEmpty()) {
            answer.caution(new Caution("storage.record-short", Severity.WARNING, null,
                    "The record holds no whole hydrological year with a demand, so nothing can be said of how sure the "
                            + "reliability is.", List.of(), "", COUNT));
            return;
        }
        years(interval.get(), years);
        ends(interval.get());
        caution(interval.get());
    }

    private void shortages() {
        List<List<Object>> rows = new ArrayList<>();
        whole.longestShortage().ifPresent(spell -> rows.add(row("Longest", spell)));
        whole.deepestShortage().ifPresent(spell -> rows.add(row("Deepest", spell)));
        answer.add("shortages", "Longest and deepest shortage", new FindingValue.Table(
                List.of("Shortage", "First short day", "Last short day", "Days short", "Not supplied"), rows));
        double deepestM3 = whole.deepestShortage().map(ShortageSpell::missingM3).orElse(0.0);
        number("deepestShortage", "Deepest shortage", deepestM3, Units.M3, "V", "most demand missed in one shortage",
                "largest sum of D - Y over days short in a row", COUNT);
    }

    private List<Object> row(String which, ShortageSpell spell) {
        return Arrays.asList(which, need.firstDay().plusDays(spell.firstDay()).toString(),
                need.firstDay().plusDays(spell.lastDay()).toString(), Quantity.of(spell.days(), Units.D),
                Quantity.of(spell.missingM3(), Units.M3));
    }

    private void years(ReliabilityInterval interval, HydroYears years) {
        String begin = "whole years from the first of " + years.startMonth().getDisplayName(
                java.time.format.TextStyle.FULL, java.util.Locale.ENGLISH)
                + ", when the wettest six months are over; days left out: " + years.daysLeftOut();
        number("hydrologicalYears", "Hydrological years in the record", interval.years(), Units.ONE, "n", begin,
                "count of years with a demand", COUNT);
        number("failedYears", "Hydrological years with a shortage", interval.failedYears(), Units.ONE, "k",
                "years with a day on which some use was not met in full, rationing included", "count", COUNT);
    }

    private void ends(ReliabilityInterval interval) {
        Input[] inputs = {new Input("k", "years with a shortage", Quantity.of(interval.failedYears())),
            new Input("n", "years", Quantity.of(interval.years())), target.confidenceInput()};
        both("failedShare", "Chance of a year with a shortage", interval.failure(),
                "Beta^-1((1 - c)/2; k, n - k + 1)", "Beta^-1((1 + c)/2; k + 1, n - k)", EXACT, inputs);
        number("failedShareLimit", "Chance of a year with a shortage, at most",
                interval.failureUpperLimit(), Units.PERCENT, "p", "upper limit at one side",
                "Beta^-1(c; k + 1, n - k)", EXACT,
                inputs);
        String drawn = " of " + RESAMPLES + " records drawn from its hydrological years with replacement";
        both("timeReliability", "Share of days met in full", interval.timeReliability(),
                "share (1 - c)/2" + drawn, "share (1 + c)/2" + drawn, BOOTSTRAP, target.confidenceInput());
        both("volumetricReliability", "Share of demand supplied", interval.volumetricReliability(),
                "share (1 - c)/2" + drawn, "share (1 + c)/2" + drawn, BOOTSTRAP, target.confidenceInput());
    }

    private void both(String id, String title, Interval interval, String low, String high, Source source,
            Input... inputs) {
        number(id + "Low", title + ", lower end", interval.low(), Units.PERCENT, "low", "lower end of the interval",
                low,
                source, inputs);
        number(id + "High", title + ", upper end", interval.high(), Units.PERCENT, "high", "upper end of the interval",
                high,
                source, inputs);
    }

    private void number(String id, String title, double value, Unit unit, String symbol, String meaning, String formula,
            Source source, Input... inputs) {
        Quantity quantity = unit == Units.PERCENT ? Quantity.ofSi(value, unit) : Quantity.of(value, unit);
        answer.number(id, title, quantity, Step.of(symbol, meaning, formula, quantity, source, inputs));
    }

    private void caution(ReliabilityInterval interval) {
        boolean isShort = interval.years() < USUAL_YEARS;
        answer.caution(new Caution("storage.record-short", isShort ? Severity.WARNING : Severity.INFO, null,
                "Whole hydrological years in the record: {0}, with a shortage: {1}. With confidence {2} the chance "
                + "of such a "
                        + "year is at most {3}"
                        + (interval.failedYears() == 0 ? ", though none failed" : "")
                        + ". A drought worse than any on record, and a change of climate, are not in it.",
                List.of(Quantity.of(interval.years()), Quantity.of(interval.failedYears()),
                        Quantity.ofSi(target.confidence(), Units.PERCENT),
                        Quantity.ofSi(interval.failureUpperLimit(), Units.PERCENT)),
                "", Source.commonPractice("30 years are usual for a climate normal")));
    }
}
