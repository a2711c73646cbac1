package org.roofspring.calc.standard;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.osgi.service.component.annotations.Component;
import org.roofspring.calc.Applicability;
import org.roofspring.calc.Calculation;
import org.roofspring.calc.CalculationContext;
import org.roofspring.calc.CalculationInfo;
import org.roofspring.calc.Caution;
import org.roofspring.calc.Caution.Severity;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.Inputs;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.Source;
import org.roofspring.calc.Working.Input;
import org.roofspring.calc.Working.Step;
import org.roofspring.calc.standard.answer.AnswerBuilder;
import org.roofspring.calc.standard.answer.StorageAnswer;
import org.roofspring.calc.standard.water.Given;
import org.roofspring.calc.standard.water.RoofInflow;
import org.roofspring.calc.standard.water.SiteStorage;
import org.roofspring.calc.standard.water.WholeSystem;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.Roof;
import org.roofspring.site.RunoffBasis;
import org.roofspring.site.Site;
import org.roofspring.site.SitePackage;
import org.roofspring.site.Tank;
import org.roofspring.site.TopUp;
import org.roofspring.site.snapshot.SiteSnapshot;
import org.roofspring.storage.BalanceResult;
import org.roofspring.storage.ShortageMap;
import org.roofspring.storage.YieldRule;
import org.roofspring.storage.system.SystemResult;
import org.roofspring.storage.system.UseResult;

/** Runs the whole site day by day over its rain record, by both yield rules. */
@Component
@CalculationInfo(id = "storage.balance", version = "4", title = "Storage balance", reads = { "Roof", "RoofDrain", "Gutter", "GutterOutlet", "Downpipe",
        "Screen", "FirstFlushDiverter", "Tank", "TankLink", "PipeRun.from", "PipeRun.to", "PipeRun.inUse", "Pump.inUse", "SupplyTime", "Tap.id", "Use",
        "UseCalendar", "UsePeriod", "Holiday", "RationingRule", "TopUp", "MonthlyNormal" }, requires = "rain.record", uses = { "pump.duty", "roof.drainage" })
public final class StorageBalanceCalculation implements Calculation {

    @Override
    public Applicability check(SiteSnapshot snapshot) {
        return SiteStorage.check(snapshot.site());
    }

    @Override
    public Outcome calculate(SiteSnapshot snapshot, Inputs inputs, CalculationContext context) {
        Site site = snapshot.site();
        FindingValue.Daily rain = SiteStorage.rain(inputs);
        WholeSystem system = SiteStorage.system(site, inputs);
        SystemResult yas = system.run(YieldRule.YAS, context.cancelled());
        SystemResult ybs = system.run(YieldRule.YBS, context.cancelled());
        BalanceResult whole = yas.whole();
        double capacityM3 = system.chain().stages().stream().flatMap(List::stream).mapToDouble(tank -> tank.getCapacity().si()).sum();
        AnswerBuilder answer = StorageAnswer.of(null, YieldRule.YAS, capacityM3, whole, inflowSteps(site, system.roofs(), rain, inputs));
        hopeful(answer, ybs.whole());
        synthetic(answer, site, inputs, context);
        uses(answer, system, yas);
        topUp(answer, site, yas);
        answer.add("volumeTrace", "Volume in all tanks", new FindingValue.Daily(rain.firstDay(), whole.endVolumesM3(), Units.M3));
        for (int stage = 0; stage < system.chain().stages().size() && system.chain().stages().size() > 1; stage++) {
            Tank tank = system.chain().stages().get(stage).get(0);
            answer.include(new Outcome.Completed(List.of(new org.roofspring.calc.Finding("stageTrace", "Volume in " + tank.getName(), tank.getId(),
                    new FindingValue.Daily(rain.firstDay(), yas.stageVolumesM3(stage), Units.M3))), List.of(), List.of()));
        }
        shortage(answer, whole, rain.firstDay());
        cautions(answer, site, system);
        return answer.build();
    }

    private static Step[] inflowSteps(Site site, RoofInflow roofs, FindingValue.Daily rain, Inputs inputs) {
        List<Step> steps = new ArrayList<>();
        Quantity rainTotal = Quantity.of(Arrays.stream(rain.values()).sum(), Units.MM);
        for (Roof roof : site.getRoofs()) {
            if (roof.isInUse() && roof.getPlanArea() != null) {
                steps.add(Step.of("A", "plan area of " + roof.getName() + " and its losses", "A C e sum(max(0, P - l))", null,
                        Source.definition("1 mm on 1 m2 is 1 L"),
                        Given.input("A", "plan area", roof, SitePackage.Literals.ROOF__PLAN_AREA, Quantity.of(0, Units.M2)),
                        Given.input("C", "runoff coefficient", roof, SitePackage.Literals.ROOF__RUNOFF_COEFFICIENT, Quantity.of(0.8)),
                        Given.input("l", "initial loss on each wet day", roof, SitePackage.Literals.ROOF__INITIAL_LOSS, Quantity.of(0, Units.MM)),
                        new Input("e", "share that gets past its gutters, entered or else from roof.drainage",
                                Quantity.ofSi(SiteStorage.efficiency(roof, inputs), Units.PERCENT), roof.getId(),
                                "collectionEfficiency"),
                        new Input("P", "rain over the record", rainTotal)));
            }
        }
        steps.add(Step.of("Q", "inflow to the tanks over the record", "R - F - G", Quantity.of(roofs.totalM3(), Units.M3), Source.definition("what is left"),
                new Input("R", "runoff of all roofs", Quantity.of(roofs.runoffM3(), Units.M3)),
                new Input("F", "thrown away by first-flush diverters", Quantity.of(roofs.divertedM3(), Units.M3)),
                new Input("G", "lost in gutters, screens and unconnected roofs", Quantity.of(roofs.lostM3(), Units.M3))));
        return steps.toArray(Step[]::new);
    }

    /** The hopeful rule beside the cautious one: the truth of a day lies between. */
    private static void hopeful(AnswerBuilder answer, BalanceResult ybs) {
        Source rule = Source.published("Fewkes and Butler, 2000: yield before spillage");
        Quantity supplied = Quantity.of(ybs.totals().suppliedM3(), Units.M3);
        answer.number("suppliedYbs", "Supplied, if rain comes before use", supplied,
                Step.of("Y", "supplied by the hopeful rule", "Y = min(D, V + Q); V' = min(V + Q - Y, S)", supplied, rule));
        ybs.timeReliability().ifPresent(share -> answer.share("timeReliabilityYbs", "Share of days met, if rain comes before use", share, Step.of("Rt", "time reliability by the hopeful rule", "full days / days with demand", Quantity.ofSi(share, Units.PERCENT), rule)));
    }

    /** Beside the record, never in its place: synthetic rain seldom has the long droughts that tanks are made for. */
    private static void synthetic(AnswerBuilder answer, Site site, Inputs inputs, CalculationContext context) {
        inputs.finding("rain.record", "synthetic").map(finding -> (FindingValue.Daily) finding.value())
                .ifPresent(rain -> SiteStorage.system(site, rain, inputs).run(YieldRule.YAS, context.cancelled()).whole()
                        .timeReliability().ifPresent(share -> answer.share("timeReliabilitySynthetic",
                                "Share of days met, by synthetic rain", share, Step.of("Rt",
                                        "time reliability under synthetic rain, which stands beside the record only",
                                        "full days / days with demand", Quantity.ofSi(share, Units.PERCENT),
                                        Source.fromMemory("Richardson, Stochastic simulation of daily precipitation, 1981"),
                                        new Input("N", "days of synthetic rain", Quantity.of(rain.days()))))));
    }

    private static void uses(AnswerBuilder answer, WholeSystem system, SystemResult result) {
        List<List<Object>> rows = new ArrayList<>();
        for (UseResult use : result.uses()) {
            rows.add(Arrays.asList(use.name(), Quantity.of(use.demandM3(), Units.M3), Quantity.of(use.suppliedM3(), Units.M3),
                    Quantity.of(use.demandDays(), Units.D), Quantity.of(use.fullDays(), Units.D),
                    use.timeReliability().isPresent() ? Quantity.ofSi(use.timeReliability().getAsDouble(), Units.PERCENT) : null));
        }
        answer.add("uses", "Use by use", new FindingValue.Table(List.of("Use", "Demand", "Supplied", "Days with demand", "Days met in full", "Share of days met"), rows));
    }

    private static void shortage(AnswerBuilder answer, BalanceResult whole, LocalDate firstDay) {
        List<List<Object>> rows = new ArrayList<>();
        for (ShortageMap.MonthCell cell : whole.shortageMap(firstDay).months()) {
            rows.add(Arrays.asList(cell.month().toString(), Quantity.of(cell.demandDays(), Units.D),
                    Quantity.of(cell.shortDays(), Units.D), Quantity.of(cell.demandM3(), Units.M3),
                    Quantity.of(cell.missingM3(), Units.M3), cell.demandM3() > 0
                            ? Quantity.ofSi(cell.missingM3() / cell.demandM3(), Units.PERCENT) : null));
        }
        Source counted = Source.definition("summed over the days of each calendar month that the record touches");
        answer.add("shortageByMonth", "Shortage by month", new FindingValue.Table(List.of("Month", "Days with demand",
                "Days short", "Demand", "Not supplied", "Share not supplied"), rows),
                Step.of("M", "not supplied in a month, of all uses; yield after spillage", "sum of (D - Y) over its days",
                        Quantity.of(whole.totals().demandM3() - whole.totals().suppliedM3(), Units.M3), counted),
                Step.of("s", "share not supplied; none where the month has no demand", "M / sum of D", null, counted));
    }

    /** Water bought in: how many loads, and what they cost. */
    private static void topUp(AnswerBuilder answer, Site site, SystemResult result) {
        List<TopUp> topUps = site.getTopUps().stream()
                .filter(topUp -> topUp.isInUse() && topUp.getLoad() != null && topUp.getLoad().si() > 0).toList();
        if (topUps.isEmpty()) {
            return;
        }
        TopUp topUp = topUps.getFirst();
        SystemResult.TopUpResult bought = result.topUp();
        Source counted = Source.definition("counted over the record: a load is ordered when the tank falls below the "
                + "mark and has room for it, and is paid for whole");
        Quantity loads = Quantity.of(bought.delivered());
        answer.number("topUpLoads", "Loads brought in over the record", loads, Step.of("n", "loads that came",
                "count; ordered were " + bought.ordered(), loads, counted));
        if (topUp.getPrice() == null) {
            answer.caution(new Caution("topup.no-price", Severity.INFO, topUp.getId(),
                    "{0} has no price, so the water it brings is counted but not priced.",
                    List.of(String.valueOf(topUp.getName())), "", Source.definition("how the model was read")));
        } else {
            double years = result.whole().counts().days() / (Units.YR.toSi(1) / Units.D.toSi(1));
            Quantity cost = Quantity.of(bought.cost(), Units.MONEY);
            Step total = Step.of("K", "price of the loads that came", "n k", cost, Source.definition("price of each load"),
                    new Input("n", "loads that came", loads),
                    Given.input("k", "price of a load", topUp, SitePackage.Literals.TOP_UP__PRICE, topUp.getPrice()));
            answer.number("topUpCost", "Cost of the loads over the record", cost, total);
            Quantity yearly = Quantity.of(bought.cost() / years, Units.MONEY);
            answer.number("topUpYearlyCost", "Cost of the loads in a mean year", yearly, total,
                    Step.of("Ka", "cost in a mean year", "K / a", yearly, Source.definition("mean"),
                            new Input("K", "cost over the record", cost), new Input("a", "years", Quantity.of(years))));
        }
        if (topUps.size() > 1 || topUp.getMostPerYear() > 0) {
            answer.caution(new Caution("topup.simplified", Severity.WARNING, topUp.getId(),
                    "Of the supplies from outside only {0} is counted, and without a limit to its loads in a year.",
                    List.of(String.valueOf(topUp.getName())), "", Source.definition("how the model was read")));
        }
    }

    private static void cautions(AnswerBuilder answer, Site site, WholeSystem system) {
        if (system.chain().lumped()) {
            answer.caution(new Caution("storage.lumped", Severity.INFO, null,
                    "The tanks form no single chain, so they are taken together as one store; join them by links, pipes and pumps to see each.", List.of(), "",
                    Source.definition("how the model was read")));
        }
        for (Roof roof : system.roofs().unconnected()) {
            answer.caution(new Caution("roof.unconnected", Severity.WARNING, roof.getId(), "The water of {0} reaches no tank; say where it drains to.",
                    List.of(String.valueOf(roof.getName())), "", Source.definition("how the model was read")));
        }
        for (Roof roof : site.getRoofs()) {
            boolean twice = roof.getRunoffBasis() == RunoffBasis.LONG_TERM && (Given.si(roof, SitePackage.Literals.ROOF__INITIAL_LOSS, 0) > 0
                    || Given.si(roof, SitePackage.Literals.ROOF__COLLECTION_EFFICIENCY, 1) < 1);
            if (roof.isInUse() && twice) {
                answer.caution(new Caution("roof.losses-twice", Severity.WARNING, roof.getId(),
                        "The runoff coefficient of {0} holds the losses of a whole year already; taking initial loss or collection efficiency off as well counts them twice.",
                        List.of(String.valueOf(roof.getName())), "", Source.commonPractice("long-term runoff coefficients include wetting and splash")));
            }
        }
    }
}
