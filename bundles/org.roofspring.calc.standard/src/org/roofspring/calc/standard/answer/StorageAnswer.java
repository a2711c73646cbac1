package org.roofspring.calc.standard.answer;

import java.util.List;

import org.roofspring.calc.Caution;
import org.roofspring.calc.Caution.Severity;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.Source;
import org.roofspring.calc.Working.Input;
import org.roofspring.calc.Working.Step;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.storage.BalanceResult;
import org.roofspring.storage.BalanceTotals;
import org.roofspring.storage.DayCounts;
import org.roofspring.storage.DaySpell;
import org.roofspring.storage.ShortageSpell;
import org.roofspring.storage.YieldRule;

/** The daily balance of a tank over a record, in words. */
public final class StorageAnswer {
    private static final Source COUNT = Source.definition("counted over the record");

    private StorageAnswer() {
    }

    /**
     * @param elementId  of the tank, or null for the site
     * @param rule       when in the day demand is drawn
     * @param capacityM3 of all tanks together
     * @param result     the run over the record
     * @param inflowSteps how the inflow comes about
     */
    public static AnswerBuilder of(String elementId, YieldRule yieldRule, double capacityM3, BalanceResult result,
            Step... inflowSteps) {
        BalanceTotals totals = result.totals();
        DayCounts counts = result.counts();
        Input inflow = volume("Q", "inflow", totals.inflowM3());
        Input supplied = volume("Y", "supplied", totals.suppliedM3());
        Input spilled = volume("W", "spilled", totals.spilledM3());
        Input demand = volume("D", "demand", totals.demandM3());
        Input evaporated = volume("E", "evaporated", totals.evaporatedM3());
        Input leaked = volume("L", "leaked", totals.leakedM3());
        Input toppedUp = volume("T", "brought in", totals.toppedUpM3());
        Input start = volume("V0", "volume at the start", totals.startVolumeM3());
        Input end = volume("V1", "volume at the end", totals.endVolumeM3());
        Input full = new Input("n", "days with demand met in full", Quantity.of(counts.fullDays()));
        Input asked = new Input("N", "days with demand", Quantity.of(counts.demandDays()));
        AnswerBuilder answer = new AnswerBuilder(elementId)
                .number("inflow", "Inflow", inflow.value(), inflowSteps)
                .number("demand", "Demand", demand.value(), rule("D", "demand over the record", "sum of each day's demand", demand.value()))
                .number("supplied", "Supplied", supplied.value(), dailyRule(yieldRule, capacityM3, start), rule("Y", "supplied over the record", "sum of each day's yield", supplied.value()))
                .number("spilled", "Spilled", spilled.value(), Step.of("W", "spilled over the record", "Q + T + V0 - Y - E - L - V1", spilled.value(),
                        Source.definition("conservation of mass, exact in whole microlitres"), inflow, toppedUp, start, supplied, evaporated, leaked, end))
                .number("endVolume", "Volume at the end", end.value(), Step.of("V1", "volume after the last day", "Q + T + V0 - Y - E - L - W", end.value(),
                        Source.definition("conservation of mass"), inflow, toppedUp, start, supplied, evaporated, leaked, spilled));
        loss(answer, "evaporated", "Evaporated", totals.evaporatedM3(), "sum of open surface x evaporation of each day");
        loss(answer, "leaked", "Leaked", totals.leakedM3(), "sum of each day's leakage");
        loss(answer, "toppedUp", "Brought in", totals.toppedUpM3(), "sum of the loads that came");
        result.volumetricReliability().ifPresent(share -> answer.share("volumetricReliability", "Share of demand supplied", share,
                Step.of("Rv", "volumetric reliability", "Y / D", Quantity.ofSi(share, Units.PERCENT), StorageTerms.MODEL, supplied, demand)));
        result.timeReliability().ifPresent(share -> answer.share("timeReliability", "Share of days met in full", share,
                Step.of("Rt", "time reliability; days without demand are not counted", "n / N", Quantity.ofSi(share, Units.PERCENT), StorageTerms.MODEL, full, asked)));
        days(answer, "fullDays", "Days met in full", counts.fullDays(), "days with demand, all of it supplied");
        days(answer, "demandDays", "Days with demand", counts.demandDays(), "days with a demand above zero");
        days(answer, "emptyDays", "Days ending empty", counts.emptyDays(), "days that end with nothing to draw");
        days(answer, "longestShortage", "Longest shortage", result.longestShortage().map(ShortageSpell::days).orElse(0),
                "most days in a row on which demand was not met in full");
        days(answer, "worstDrySpellSurvived", "Worst dry spell survived", result.worstDrySpellSurvived().map(DaySpell::days).orElse(0),
                "longest run of days without inflow through which every day's demand was met");
        cautions(answer, elementId, counts);
        return answer;
    }

    private static void loss(AnswerBuilder answer, String id, String title, double volumeM3, String rule) {
        if (volumeM3 > 0) {
            Quantity value = Quantity.of(volumeM3, Units.M3);
            answer.number(id, title, value, rule("V", title.toLowerCase(java.util.Locale.ROOT) + " over the record", rule, value));
        }
    }

    private static Step dailyRule(YieldRule rule, double capacityM3, Input start) {
        String name = "weighted rule";
        String formula = "Y = min(D, V + theta Q); V' = min(V + Q - theta Y, S) - (1 - theta) Y";
        if (rule.equals(YieldRule.YAS)) {
            name = "yield after spillage";
            formula = "Y = min(D, V); V' = min(V + Q - Y, S - Y)";
        } else if (rule.equals(YieldRule.YBS)) {
            name = "yield before spillage";
            formula = "Y = min(D, V + Q); V' = min(V + Q - Y, S)";
        }
        return new Step("Y", "each day's yield, " + name, formula, List.of(volume("S", "capacity", capacityM3), start), "", null, StorageTerms.MODEL);
    }

    private static void days(AnswerBuilder answer, String id, String title, int days, String rule) {
        answer.number(id, title, days, Units.D, rule("n", title.toLowerCase(java.util.Locale.ROOT), rule, Quantity.of(days, Units.D)));
    }

    private static Step rule(String symbol, String meaning, String rule, Quantity value) {
        return Step.of(symbol, meaning, rule, value, COUNT);
    }

    private static Input volume(String symbol, String meaning, double volumeM3) {
        return new Input(symbol, meaning, Quantity.of(volumeM3, Units.M3));
    }

    private static void cautions(AnswerBuilder answer, String elementId, DayCounts counts) {
        int shortDays = counts.demandDays() - counts.fullDays();
        if (shortDays > 0) {
            answer.caution(new Caution("storage.shortage", Severity.WARNING, elementId,
                    "Demand is not met in full on {0} of {1} days; plan what people drink on those days.",
                    List.of(Quantity.of(shortDays), Quantity.of(counts.demandDays())), "", COUNT));
        }
        answer.caution(new Caution("storage.record-only", Severity.INFO, elementId,
                "This is what would have happened over the record; a drier stretch than any in it is possible.", List.of(), "",
                Source.definition("a simulation over a record")));
    }
}
