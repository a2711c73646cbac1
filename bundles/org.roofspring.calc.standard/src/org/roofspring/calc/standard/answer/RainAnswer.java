package org.roofspring.calc.standard.answer;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

import org.roofspring.calc.Caution;
import org.roofspring.calc.Caution.Severity;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.Source;
import org.roofspring.calc.Working.Input;
import org.roofspring.calc.Working.Step;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Unit;
import org.roofspring.quantity.Units;
import org.roofspring.rain.DayDepth;
import org.roofspring.rain.DrySpell;
import org.roofspring.rain.QualityReport;
import org.roofspring.rain.RainStatistics;
import org.roofspring.rain.SynthesisComparison;
import org.roofspring.rain.YearTotal;

/** A rain record in words: how long, how much, how dry, how far to trust it. */
public final class RainAnswer {
    private static final Source COUNT = Source.definition("counted over the record");
    private static final Source MARKOV = Source.fromMemory(
            "Richardson, Stochastic simulation of daily precipitation, temperature, and solar radiation, 1981");
    private static final int SHORT_RECORD_YEARS = 30;
    private static final int[] DRIEST_DAYS = {7, 14, 30, 60, 90, 120, 180, 270, 365, 730};

    private RainAnswer() {
    }

    /**
     * @param elementId of the rain source, or null
     * @param rain      statistics of the record as read
     * @param quality   what was found while reading
     */
    public static Outcome.Completed of(String elementId, RainStatistics rain, QualityReport quality) {
        AnswerBuilder answer = figures(elementId, rain);
        answer.add("quality", "Quality of the record", new FindingValue.Table(List.of("Finding"),
                quality.sentences().stream().map(sentence -> List.<Object>of(sentence)).toList()));
        cautions(answer, elementId, rain, quality);
        return answer.build();
    }

    /** The same for rain that was never read anywhere, so that there is no reading to judge. */
    public static Outcome.Completed ofInvented(String elementId, RainStatistics rain) {
        return figures(elementId, rain).build();
    }

    private static AnswerBuilder figures(String elementId, RainStatistics rain) {
        AnswerBuilder answer = new AnswerBuilder(elementId)
                .text("firstDay", "First day", rain.record().firstDay().toString())
                .text("lastDay", "Last day", rain.record().lastDay().toString());
        count(answer, "days", "Days in the record", rain.days(), Units.ONE, "days from the first to the last");
        count(answer, "missingDays", "Missing days", rain.missingDays(), Units.ONE, "days without a usable reading");
        annualMean(answer, rain);
        year(answer, "driestYear", "Driest year", rain.driestYear());
        year(answer, "wettestYear", "Wettest year", rain.wettestYear());
        rain.wettestDay().ifPresent(day -> depth(answer, "wettestDay", "Wettest day", day));
        answer.number("longestDrySpell", "Longest dry spell", rain.longestDrySpell().map(DrySpell::days).orElse(0), Units.D,
                Step.of("n", "most days in a row without rain", drySpellWords(rain), null, COUNT));
        count(answer, "wetDays", "Wet days", rain.wetDays(), Units.ONE, "days with more than " + rain.wetAboveMm() + " mm");
        share(answer, "p01", "Chance of a wet day after a dry one", "wet days that follow a dry day / days that follow a dry day", rain.p01());
        share(answer, "p11", "Chance of a wet day after a wet one", "wet days that follow a wet day / days that follow a wet day", rain.p11());
        answer.add("yearlyTotals", "Yearly totals", new FindingValue.Table(List.of("Year", "Rain", "Days read", "Complete"),
                rain.yearlyTotals().stream().map(RainAnswer::row).toList()));
        if (everyMonthRead(rain)) {
            answer.add("months", "Means of the months", months(rain));
        }
        if (rain.minimumOver(DRIEST_DAYS[0]).isPresent()) {
            answer.add("driestTimes", "Least rain of so many days in a row", driestTimes(rain));
        }
        return answer;
    }

    /** A record of part of a year has no means of the other months. */
    private static boolean everyMonthRead(RainStatistics rain) {
        return rain.monthlyTotals().stream().filter(month -> month.presentDays() > 0).map(month -> month.month().getMonth())
                .distinct().count() == Month.values().length;
    }

    private static FindingValue.Table months(RainStatistics rain) {
        double[] depthMm = rain.monthlyMeansMm();
        double[] wetDays = rain.meanWetDaysByMonth();
        List<List<Object>> rows = new ArrayList<>();
        for (Month month : Month.values()) {
            rows.add(List.of(month.getDisplayName(TextStyle.FULL, Locale.ENGLISH),
                    Quantity.of(depthMm[month.ordinal()], Units.MM), Quantity.of(wetDays[month.ordinal()], Units.D)));
        }
        return new FindingValue.Table(List.of("Month", "Rain", "Wet days"), rows);
    }

    private static FindingValue.Table driestTimes(RainStatistics rain) {
        List<List<Object>> rows = new ArrayList<>();
        for (int days : DRIEST_DAYS) {
            rain.minimumOver(days).ifPresent(least -> rows.add(List.of(Quantity.of(least.days(), Units.D),
                    Quantity.of(least.depthMm(), Units.MM), least.firstDay().toString())));
        }
        return new FindingValue.Table(List.of("Days", "Least rain", "From"), rows);
    }

    private static List<Object> row(YearTotal year) {
        return List.of(Integer.toString(year.year()), Quantity.of(year.totalMm(), Units.MM), Quantity.of(year.presentDays()), year.complete());
    }

    private static void count(AnswerBuilder answer, String id, String title, int value, Unit unit, String rule) {
        answer.number(id, title, value, unit, Step.of("n", title.toLowerCase(Locale.ROOT), rule, Quantity.of(value, unit), COUNT));
    }

    private static void annualMean(AnswerBuilder answer, RainStatistics rain) {
        OptionalDouble mean = rain.annualMeanMm();
        if (mean.isEmpty()) {
            return;
        }
        Quantity value = Quantity.of(mean.getAsDouble(), Units.MM);
        Step step = rain.annualMeanIsScaled()
                ? Step.of("R", "mean yearly rain", "P / n 365.2425", value, Source.definition("no calendar year is complete: scaled from the days read"),
                        new Input("P", "rain of the days read", Quantity.of(rain.totalMm(), Units.MM)), new Input("n", "days read", Quantity.of(rain.presentDays())))
                : Step.of("R", "mean yearly rain", "P / N", value, Source.definition("mean of the complete calendar years"),
                        new Input("P", "rain of the complete years", Quantity.of(mean.getAsDouble() * rain.completeYears().size(), Units.MM)),
                        new Input("N", "complete years", Quantity.of(rain.completeYears().size())));
        answer.number("annualMean", "Mean yearly rain", value, step);
    }

    private static void year(AnswerBuilder answer, String id, String title, Optional<YearTotal> year) {
        year.ifPresent(y -> answer.number(id, title + " (" + y.year() + ")", y.totalMm(), Units.MM,
                Step.of("P", "rain of " + y.year(), "sum of the daily depths of the calendar year, complete years only", Quantity.of(y.totalMm(), Units.MM), COUNT)));
    }

    private static void depth(AnswerBuilder answer, String id, String title, DayDepth day) {
        answer.number(id, title + " (" + day.date() + ")", day.depthMm(), Units.MM,
                Step.of("P", "largest daily depth", "read on " + day.date(), Quantity.of(day.depthMm(), Units.MM), COUNT));
    }

    private static void share(AnswerBuilder answer, String id, String title, String rule, OptionalDouble value) {
        value.ifPresent(v -> answer.number(id, title, v, Units.ONE, Step.of(id, title.toLowerCase(Locale.ROOT), rule, Quantity.of(v), MARKOV)));
    }

    private static String drySpellWords(RainStatistics rain) {
        return rain.longestDrySpell().map(spell -> "from " + spell.firstDay() + " to " + spell.lastDay()).orElse("every day had rain");
    }

    private static void cautions(AnswerBuilder answer, String elementId, RainStatistics rain, QualityReport quality) {
        int years = rain.completeYears().size();
        if (years < SHORT_RECORD_YEARS) {
            answer.caution(new Caution("rain.short-record", Severity.WARNING, elementId,
                    "Complete calendar years in the record: {0}. The driest stretch of a longer record may be worse than any in it.",
                    List.of(Quantity.of(years)), "", Source.commonPractice("30 years are usual for a climate normal")));
        }
        if (rain.missingDays() > 0) {
            answer.caution(new Caution("rain.missing-days", Severity.WARNING, elementId,
                    "Days missing: {0}. Figures are of the days read.", List.of(Quantity.of(rain.missingDays())), "",
                    Source.definition("counted over the record")));
        }
        quality.homogeneity().filter(QualityReport.Homogeneity::isSuspect).ifPresent(shift -> answer.caution(new Caution(
                "rain.shift", Severity.WARNING, elementId, "Yearly totals shift after {0}: the gauge may have been moved, or the record joined from two.",
                List.of(Integer.toString(shift.lastYearBefore())), "", Source.fromMemory("Pettitt, A non-parametric approach to the change-point problem, 1979"))));
    }

    /** Synthetic rain beside the record it was fitted to, and whether it can be trusted; it never takes its place. */
    public static void synthesis(AnswerBuilder answer, SynthesisComparison comparison) {
        answer.add("synthesis", "Synthetic rain against the record", new FindingValue.Table(List.of("Figure", "Unit",
                "Record", "Synthetic, middle", "Synthetic, 5 %", "Synthetic, 95 %", "Falls short"),
                comparison.rows().stream().map(row -> List.<Object>of(row.label(), row.unit(), Quantity.of(row.record()),
                        Quantity.of(row.synthetic()), Quantity.of(row.low()), Quantity.of(row.high()),
                        row.fallsShort())).toList()));
        answer.add("synthesisVerdict", "Whether synthetic rain can be trusted", new FindingValue.Verdict(
                comparison.fallsShort() ? FindingValue.Verdict.Level.BAD : FindingValue.Verdict.Level.CONDITIONAL,
                comparison.fallsShort() ? "too kind to tanks" : "only beside the record",
                List.of(comparison.verdict())));
    }
}
