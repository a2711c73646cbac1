package org.roofspring.calc.standard.storage;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;

import org.roofspring.calc.FindingValue;
import org.roofspring.calc.Source;
import org.roofspring.calc.Working.Input;
import org.roofspring.calc.Working.Step;
import org.roofspring.calc.standard.answer.AnswerBuilder;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.storage.ReliabilityCurve;
import org.roofspring.storage.SimpleRules;
import org.roofspring.storage.SweepSettings;
import org.roofspring.storage.YieldRule;

/** What the simple rules give, beside the simulation: how far each would reach here, and why it differs. */
final class RuleFindings {
    private static final Source FIVE = Source.fromMemory("BS 8515, Rainwater harvesting systems, intermediate "
            + "approach");
    private static final Source SIX = Source.published(
            "DIN 1989-1, Regenwassernutzungsanlagen, simplified method, as quoted by a trade guide; verify against "
            + "the standard");
    private static final Source DEMAND_SIDE = Source.commonPractice("water for the longest time without inflow");

    private record Rule(String id, String title, double volumeM3, String why, Step step) {
    }

    private final WaterNeed need;
    private final List<Rule> rules = new ArrayList<>();

    RuleFindings(WaterNeed need) {
        this.need = need;
        double yieldM3 = need.yearlyInflowM3();
        double demandM3 = need.yearlyDemandM3();
        Input yield = SizingFindings.volume("Ya", "inflow in a mean year", yieldM3);
        Input demand = SizingFindings.volume("Da", "demand in a mean year", demandM3);
        String season = "It takes rain as spread over the year";
        double fiveM3 = SimpleRules.fivePercentM3(yieldM3, demandM3 / 365);
        rules.add(new Rule("ruleFivePercent", "5 % rule", fiveM3,
                season + "; about 18 days of the lesser of yield and demand bridge no dry season.",
                Step.of("V", "5 % of the lesser of a year's yield and demand", "0.05 min(Ya, Da)",
                        Quantity.of(fiveM3, Units.M3), FIVE, yield, demand)));
        double sixM3 = SimpleRules.sixPercentM3(yieldM3, demandM3);
        rules.add(new Rule("ruleSixPercent", "6 % rule", sixM3,
                season + "; about three weeks of the lesser of yield and demand bridge no dry season.",
                Step.of("V", "6 % of the lesser of a year's yield and demand", "0.06 min(Ya, Da)",
                        Quantity.of(sixM3, Units.M3), SIX, yield, demand)));
        demandSide();
    }

    /** Demand of the longest stretch without inflow, whenever it was. */
    private void demandSide() {
        int longest = 0;
        int first = 0;
        int dry = 0;
        for (int day = 0; day < need.days(); day++) {
            dry = need.inflowM3()[day] > 0 ? 0 : dry + 1;
            if (dry > longest) {
                longest = dry;
                first = day - dry + 1;
            }
        }
        double volumeM3 = SimpleRules.demandSideM3(java.util.Arrays.copyOfRange(need.demandM3(), first, first
                + longest));
        String stretch = longest == 0 ? "none" : need.firstDay().plusDays(first) + " to "
                + need.firstDay().plusDays(first + longest - 1L);
        rules.add(new Rule("ruleDemandSide", "Demand of the longest time without inflow", volumeM3,
                "It takes the tank as full when that time begins, and any drizzle as its end; poor weeks before and "
                + "after "
                        + "are not in it.",
                Step.of("V", "demand of the days without inflow, " + stretch, "sum of the demand of n days",
                        Quantity.of(volumeM3, Units.M3), DEMAND_SIDE,
                        new Input("n", "longest time without inflow", Quantity.of(longest, Units.D)))));
    }

    /** @param requiredM3 by the simulation; 0 where there is none */
    void add(AnswerBuilder answer, double requiredM3, BooleanSupplier cancelled) {
        ReliabilityCurve reached = ReliabilityCurve.of(need.inflowM3(), need.demandM3(),
                rules.stream().mapToDouble(Rule::volumeM3).toArray(), SweepSettings.warm(YieldRule.YAS), cancelled);
        List<List<Object>> rows = new ArrayList<>();
        for (int i = 0; i < rules.size(); i++) {
            Rule rule = rules.get(i);
            answer.number(rule.id(), rule.title(), Quantity.of(rule.volumeM3(), Units.M3), rule.step());
            List<Object> row = new ArrayList<>();
            row.add(rule.title());
            row.add(Quantity.of(rule.volumeM3(), Units.M3));
            row.add(requiredM3 > 0 ? Quantity.ofSi(rule.volumeM3() / requiredM3, Units.PERCENT) : null);
            row.add(reached.demandDays() > 0 ? Quantity.ofSi(reached.timeReliability(i).orElseThrow(), Units.PERCENT)
                    : null);
            row.add(rule.why());
            rows.add(row);
        }
        answer.add("rules", "Simple rules beside the simulation", new FindingValue.Table(
                List.of("Rule", "Usable volume", "Of the required volume", "Days it would meet here",
                "Why it differs"), rows));
    }
}
