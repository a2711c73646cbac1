package org.roofspring.calc.standard.storage;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.roofspring.calc.CalculationContext;
import org.roofspring.calc.Caution;
import org.roofspring.calc.Caution.Severity;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.FindingValue.Verdict;
import org.roofspring.calc.FindingValue.Verdict.Level;
import org.roofspring.calc.Inputs;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.Source;
import org.roofspring.calc.Working.Input;
import org.roofspring.calc.Working.Step;
import org.roofspring.calc.standard.answer.AnswerBuilder;
import org.roofspring.calc.standard.water.SiteStorage;
import org.roofspring.calc.standard.water.UseDemand;
import org.roofspring.calc.standard.water.WholeSystem;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.RationingRule;
import org.roofspring.site.Site;
import org.roofspring.site.SitePackage;
import org.roofspring.site.Tank;
import org.roofspring.site.TopUp;
import org.roofspring.storage.YieldRule;
import org.roofspring.storage.outlook.Chance;
import org.roofspring.storage.outlook.DaysLeft;
import org.roofspring.storage.outlook.FutureDemand;
import org.roofspring.storage.outlook.Outlook;
import org.roofspring.storage.outlook.OutlookQuestion;
import org.roofspring.storage.outlook.PastWeather;
import org.roofspring.storage.outlook.RationAnswer;
import org.roofspring.storage.outlook.RationSearch;
import org.roofspring.storage.outlook.YearRun;
import org.roofspring.storage.system.StorageSystem;

/** Every year of the record run forward from the dipstick: days left, chance, fan, ration; the tables to paint. */
public final class OutlookStudy {
    private static final int HORIZON_DAYS = 365;
    private static final int SHORTEST_RECORD_DAYS = 365;
    private static final int FEW_YEARS = 20;
    private static final int DAYS_BETWEEN_ROWS = 14;
    private static final int[] RATION_DAYS = {30, 60, 90, 120, 180, 270, HORIZON_DAYS};
    static final Source EVERY_YEAR = Source.definition("the weather of every year of the record, run forward from "
            + "today");

    private final Site site;
    private final WholeSystem system;
    private final WaterToday today;
    private final SiteTarget target;
    private final OutlookQuestion question;
    private final Outlook outlook;
    private final AnswerBuilder answer = new AnswerBuilder(null);

    private OutlookStudy(Site site, WholeSystem system, LocalDate firstDay, BooleanSupplier cancelled) {
        this.site = site;
        this.system = system;
        today = WaterToday.of(system.chain());
        target = new SiteTarget(site);
        FutureDemand demand = (date, days) -> system.uses().stream().map(use -> UseDemand.seriesM3(use, date, days))
                .toList();
        question = new OutlookQuestion(withoutRules(system.system(YieldRule.YAS, today.stageVolumeM3())),
                new PastWeather(firstDay, system.series().inflowM3(), system.series().evaporationMm()), demand,
                Set.of(),
                today.date(), today.stageVolumeM3(), HORIZON_DAYS);
        outlook = Outlook.of(question, cancelled);
    }

    /** Why there is no outlook; empty when there is one. */
    public static List<String> missing(Site site) {
        return WaterToday.missing(site);
    }

    /** The outlook of a site with a reading. */
    public static Outcome of(Site site, Inputs inputs, CalculationContext context) {
        FindingValue.Daily rain = SiteStorage.rain(inputs);
        if (rain.days() < SHORTEST_RECORD_DAYS) {
            return new Outcome.NotComputable(new Outcome.Problem(null, null, "The rain record holds " + rain.days()
                    + " days; the outlook needs a year or more."));
        }
        OutlookStudy study = new OutlookStudy(site, SiteStorage.system(site, inputs), rain.firstDay(),
                context.cancelled());
        study.waterNow();
        study.daysLeft();
        study.chance();
        study.fan();
        study.rations(context.cancelled());
        new TankTables(study.question, study.today, 1 - study.target.confidence()).add(study.answer,
                context.cancelled());
        study.cautions();
        return study.answer.build();
    }

    /** What happens if nobody saves and nobody brings water; what saving does is then asked for. */
    private static StorageSystem withoutRules(StorageSystem system) {
        return new StorageSystem(system.stages(), system.transfers(), system.uses().stream()
                .map(use -> new org.roofspring.storage.system.Use(use.name(), use.stage(), use.priority(),
                use.outletM3(),
                        use.pumped(), List.of()))
                .toList(), Optional.empty(), system.rule());
    }

    private void waterNow() {
        answer.text("today", "Look ahead from", today.date() + ", for " + HORIZON_DAYS + " days");
        double storedM3 = Arrays.stream(today.stageVolumeM3()).sum();
        List<Step> steps = new ArrayList<>();
        for (Tank tank : today.readings()) {
            Quantity volume = Quantity.of(WaterToday.volumeM3(tank), Units.M3);
            steps.add(Step.of("V", "water in " + tank.getName() + ", by its curve of heights and volumes", "V(h)",
                    volume,
                    Source.definition("straight lines between the points of the curve; an upright tank where there "
                    + "is none"),
                    new Input("h", "reading of " + tank.getCurrentDate(), tank.getCurrentHeight(), tank.getId(),
                            SitePackage.Literals.TANK__CURRENT_HEIGHT.getName())));
        }
        Quantity stored = Quantity.of(storedM3, Units.M3);
        steps.add(Step.of("V", "in all tanks, dead volume included" + (today.assumed().isEmpty() ? ""
                : "; without a reading and taken as filled: " + String.join(", ", today.assumed())), "sum", stored,
                Source.definition("sum over the tanks in use")));
        answer.number("volumeToday", "Water in the tanks", stored, steps.toArray(Step[]::new));
    }

    private void daysLeft() {
        days("daysLeftCautious", "Days left, cautious (1 year in 10)", 0.1);
        days("daysLeftMiddle", "Days left, middle (half the years)", 0.5);
        days("daysLeftHopeful", "Days left, hopeful (9 years in 10)", 0.9);
        answer.add("years", "Year by year", new FindingValue.Table(
                List.of("Weather from", "Days left", "Went short", "Goes on in the first year"),
                outlook.runs().stream().map(OutlookStudy::row).toList()),
                Step.of("n", "days before the first day on which a use goes short, in each year; where the record "
                        + "ends before the look ahead does, it goes on in its first year", "count", null, EVERY_YEAR));
    }

    private static List<Object> row(YearRun run) {
        return List.of(run.start().toString(), Quantity.of(run.daysLeft(), Units.D), run.dry(), run.joined());
    }

    private void days(String id, String title, double share) {
        DaysLeft left = outlook.daysLeft(share);
        Quantity days = Quantity.of(left.days(), Units.D);
        answer.number(id, title + (left.orMore() ? ", or more" : ""), days,
                Step.of("n", "days before the first day on which a use goes short, in each year; sorted, the one "
                + "that the "
                        + "share p of the years does not exceed", "n(ceil(p N))", days, EVERY_YEAR,
                        new Input("p", "share of the years", Quantity.ofSi(share, Units.PERCENT)),
                        new Input("N", "years", Quantity.of(outlook.runs().size()))));
    }

    private void chance() {
        Chance chance = outlook.chanceDry();
        Quantity share = Quantity.ofSi(chance.ratio(), Units.PERCENT);
        Input[] counts = {new Input("k", "years that go short", Quantity.of(chance.dry())),
            new Input("N", "years", Quantity.of(chance.years()))};
        answer.number("chanceDry", "Chance of going short within a year", share,
                Step.of("p", "share of the years", "k / N", share, EVERY_YEAR, counts));
        Quantity upper = Quantity.ofSi(chance.interval(target.confidence()).high(), Units.PERCENT);
        answer.number("chanceDryHigh", "Upper end of that chance", upper,
                Step.of("p", "upper end of the interval", "Beta^-1((1 + c)/2; k + 1, N - k)", upper,
                SuretyFindings.EXACT,
                        counts[0], counts[1], target.confidenceInput()));
        double[] series = new double[HORIZON_DAYS];
        for (int day = 0; day < series.length; day++) {
            series[day] = outlook.chanceDryWithin(day + 1).ratio() * 100;
        }
        answer.add("chanceByDate", "Chance of having gone short by each date",
                new FindingValue.Daily(today.date(), series, Units.PERCENT),
                Step.of("p", "share of the years that have gone short on or before the day", "k(n) / N", null,
                        EVERY_YEAR, counts[1]));
    }

    private void fan() {
        double[] low = outlook.fanM3(0.1);
        double[] middle = outlook.fanM3(0.5);
        double[] high = outlook.fanM3(0.9);
        answer.add("fanLow", "Usable water, one year in ten has no more", daily(low), fanStep(0.1));
        answer.add("fanMiddle", "Usable water, half of the years have no more", daily(middle), fanStep(0.5));
        answer.add("fanHigh", "Usable water, nine years in ten have no more", daily(high), fanStep(0.9));
        List<List<Object>> rows = new ArrayList<>();
        for (int day = DAYS_BETWEEN_ROWS - 1; day < HORIZON_DAYS; day += DAYS_BETWEEN_ROWS) {
            rows.add(List.of(today.date().plusDays(day).toString(), Quantity.of(low[day], Units.M3),
                    Quantity.of(middle[day], Units.M3), Quantity.of(high[day], Units.M3),
                    Quantity.ofSi(outlook.chanceDryWithin(day + 1).ratio(), Units.PERCENT)));
        }
        answer.add("fan", "Usable water ahead, as each day ends", new FindingValue.Table(
                List.of("Day", "One year in ten has no more", "Half of the years", "Nine in ten",
                "Chance of having gone short"),
                rows), fanStep(0.1), fanStep(0.5), fanStep(0.9));
    }

    private Step fanStep(double share) {
        return Step.of("V", "usable water as a day ends, in each year; sorted, the one that the share p of the years "
                + "does not exceed; day by day, so not the course of any one year", "V(ceil(p N))", null, EVERY_YEAR,
                new Input("p", "share of the years", Quantity.ofSi(share, Units.PERCENT)),
                new Input("N", "years", Quantity.of(outlook.runs().size())));
    }

    private FindingValue.Daily daily(double[] volumesM3) {
        return new FindingValue.Daily(today.date(), volumesM3, Units.M3);
    }

    private void rations(BooleanSupplier cancelled) {
        double limit = 1 - target.confidence();
        int first = system.uses().stream().mapToInt(org.roofspring.site.Use::getPriority).min().orElseThrow();
        Set<Integer> others = IntStream.range(0, system.uses().size())
                .filter(use -> system.uses().get(use).getPriority() > first).boxed().collect(Collectors.toSet());
        List<List<Object>> rows = new ArrayList<>();
        RationAnswer year = null;
        for (int days : RATION_DAYS) {
            year = RationSearch.mildest(question.within(days), Set.of(), limit, cancelled);
            Object kept = others.isEmpty() ? null
                    : cell(RationSearch.mildest(question.within(days), others, limit, cancelled));
            rows.add(Arrays.asList(today.date().plusDays(days - 1L).toString(), cell(year), kept));
        }
        answer.add("rations", "Rations that keep the chance of going short low",
                new FindingValue.Table(
                List.of("Until", "All uses alike", "First priority whole, the others"), rows));
        if (year instanceof RationAnswer.Enough enough) {
            Quantity share = Quantity.ofSi(enough.ration().allowedRatio(), Units.PERCENT);
            answer.number("ration", "Share of full use that keeps to the limit", share,
                    Step.of("r", "largest whole percentage of all uses with which no more than the share 1 - c of "
                    + "the years go "
                            + "short", "largest r with p(r) <= 1 - c", share, EVERY_YEAR, target.confidenceInput(),
                            new Input("p", "share of the years that then go short",
                                    Quantity.ofSi(enough.chance().ratio(), Units.PERCENT))));
        }
        answer.add("rationVerdict", "Whether the water lasts a year", verdict(year, limit));
    }

    private static Object cell(RationAnswer ration) {
        return ration instanceof RationAnswer.Enough enough
                ? Quantity.ofSi(enough.ration().allowedRatio(), Units.PERCENT) : "none is enough";
    }

    private static Verdict verdict(RationAnswer ration, double limit) {
        String within = "the chance of going short within a year is " + percent(limit) + " or less";
        return switch (ration) {
            case RationAnswer.NotEnough none -> new Verdict(Level.BAD,
                    "No ration keeps the chance of going short within a year to " + percent(limit) + ".",
                    List.of("Even with no use at all " + none.chance().dry() + " of " + none.chance().years()
                            + " years go short."));
            case RationAnswer.Enough enough when enough.ration().allowedRatio() >= 1 ->
                new Verdict(Level.GOOD, "With full use " + within + ".", List.of());
            case RationAnswer.Enough enough -> new Verdict(Level.CONDITIONAL,
                    "With " + percent(enough.ration().allowedRatio()) + " of the usual use " + within + ".", List.of());
        };
    }

    static String percent(double ratio) {
        double percent = Math.round(ratio * 1000) / 10.0;
        return (percent == Math.rint(percent) ? String.valueOf((long) percent) : String.valueOf(percent)) + " %";
    }

    private void cautions() {
        answer.caution(new Caution("outlook.no-forecast", Severity.INFO, null,
                "The outlook takes each year of the record as equally likely. It is no forecast, and a change of "
                + "climate is not in it.",
                List.of(), "", EVERY_YEAR));
        if (outlook.runs().size() < FEW_YEARS) {
            answer.caution(new Caution("outlook.few-years", Severity.WARNING, null,
                    "Years that were run forward: {0}. A share of so few says little of one year in ten.",
                    List.of(Quantity.of(outlook.runs().size())), "", Source.commonPractice("at least twenty years "
                    + "for a share of one in ten")));
        }
        if (!today.assumed().isEmpty()) {
            answer.caution(new Caution("outlook.assumed-level", Severity.WARNING, null,
                    "Without a reading, and taken as filled: {0}.", List.of(String.join(", ", today.assumed())), "",
                    Source.definition("how the model was read")));
        }
        boolean rules = site.getRationing().stream().anyMatch(RationingRule::isInUse);
        boolean topUps = site.getTopUps().stream().anyMatch(TopUp::isInUse);
        if (rules || topUps) {
            answer.caution(new Caution("outlook.rules-set-aside", Severity.INFO, null,
                    "Rationing rules and water bought in are set aside: the outlook says what happens without them, "
                    + "and which "
                            + "ration is enough.", List.of(), "", Source.definition("how the model was read")));
        }
    }
}
