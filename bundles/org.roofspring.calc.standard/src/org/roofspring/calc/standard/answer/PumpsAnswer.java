package org.roofspring.calc.standard.answer;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

import org.roofspring.calc.Caution;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.FindingValue.Verdict;
import org.roofspring.calc.FindingValue.Verdict.Level;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.Source;
import org.roofspring.calc.Working.Step;
import org.roofspring.calc.standard.pumping.CandidateReview;
import org.roofspring.hydraulics.pump.DutySolver;
import org.roofspring.hydraulics.pump.PumpSet;
import org.roofspring.hydraulics.pump.SystemCurve;
import org.roofspring.hydraulics.pump.SystemState;
import org.roofspring.hydraulics.pump.WorkingRange;
import org.roofspring.quantity.Quantity;

/** Many pumps on one system, side by side, in words. */
public final class PumpsAnswer {
    private static final List<String> COLUMNS = List.of("Pump", "Flow", "Head", "Efficiency", "Off best flow", "NPSH margin",
            "Power", "Energy", "Verdict", "Reasons");

    private PumpsAnswer() {
    }

    /**
     * @param pumps each in the arrangement it is to work in, at least one
     * @return a row for each, or, where none of them has a duty point, why
     */
    public static Outcome of(List<PumpSet> pumps, SystemCurve system) {
        List<List<Object>> rows = new ArrayList<>();
        int suited = 0;
        int working = 0;
        for (PumpSet set : pumps) {
            CandidateReview review = review(set, system);
            Verdict verdict = review.verdict();
            suited += verdict.level() == Level.BAD ? 0 : 1;
            working += review.design().isEmpty() ? 0 : 1;
            rows.add(Arrays.asList(set.curve().name(), review.flow().orElse(null), review.head().orElse(null),
                    review.efficiency().orElse(null), review.offBest().orElse(null), review.worstNpshMargin().orElse(null),
                    review.power().orElse(null), review.specificEnergy().orElse(null), verdict.text(),
                    String.join("; ", verdict.reasons())));
        }
        if (working == 0) {
            return none(pumps, system);
        }
        AnswerBuilder answer = new AnswerBuilder(null).add("candidates", "Pumps compared", new FindingValue.Table(COLUMNS, rows));
        count(answer, "compared", "Pumps compared, number", pumps.size(), "all that were given");
        count(answer, "suited", "Suited, with or without reserve", suited, "those with a verdict that is not against them");
        answer.caution(new Caution("pump.electricity", Caution.Severity.DANGER, null, DutyAnswer.ELECTRICITY, List.of(),
                DutyAnswer.ELECTRICIAN, DutyAnswer.ELECTRICITY_SOURCE));
        return answer.build();
    }

    /** Why the pump with the highest head has no duty point tells enough about the others. */
    private static Outcome none(List<PumpSet> pumps, SystemCurve system) {
        PumpSet highest = pumps.stream().max(Comparator.comparingDouble(set -> set.curve().highestHeadM())).orElseThrow();
        String who = pumps.size() == 1 ? highest.curve().name() + " has no duty point: "
                : "None of the " + pumps.size() + " pumps has a duty point; " + highest.curve().name() + ", the highest: ";
        return new Outcome.NotComputable(new Outcome.Problem(who + review(highest, system).designReason() + "."));
    }

    private static void count(AnswerBuilder answer, String id, String title, int count, String meaning) {
        Quantity value = Quantity.of(count);
        answer.number(id, title, value, Step.of("n", meaning, "count", value, Source.definition("number")));
    }

    private static CandidateReview review(PumpSet set, SystemCurve system) {
        // the answer is for one state, so its levels are told by the static head alone
        SystemState state = new SystemState(0, Math.max(-1000, Math.min(10_000, system.staticHeadM())),
                system.water().temperatureC(), system.airPressurePa(), false);
        WorkingRange range = new WorkingRange(List.of(new WorkingRange.StateDuty(state, DutySolver.solve(set, system))));
        return new CandidateReview(CandidateReview.Limits.UNKNOWN, range, CandidateReview.Service.UNKNOWN);
    }
}
