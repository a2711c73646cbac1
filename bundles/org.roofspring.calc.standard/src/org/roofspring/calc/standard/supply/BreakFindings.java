package org.roofspring.calc.standard.supply;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;

import org.roofspring.calc.Caution;
import org.roofspring.calc.Caution.Severity;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.Source;
import org.roofspring.calc.Working.Input;
import org.roofspring.calc.Working.Step;
import org.roofspring.calc.standard.answer.AnswerBuilder;
import org.roofspring.hydraulics.gravity.SchoolBreak;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.Purpose;
import org.roofspring.site.Site;
import org.roofspring.site.Tap;
import org.roofspring.site.Use;
import org.roofspring.site.UsePeak;

/** Breaks in which many people come to the taps at once: how many are served, how long they queue, taps needed. */
public final class BreakFindings {
    private static final Set<Purpose> AT_TAPS = Set.of(Purpose.UNSTATED, Purpose.DRINKING, Purpose.WASHING);
    private static final double FEWEST_PEOPLE = 10;
    /** Lost between one person and the next [s]; common practice, no source. */
    private static final double CHANGE_OVER_S = 5;
    /** Share of the break over which people come; common practice, no source. */
    private static final double ARRIVAL_SHARE = 0.5;
    private static final Source QUEUE = Source.commonPractice(
            "people come evenly over the first half of the break and 5 s pass between one and the next;"
                    + " first come, first served");

    private BreakFindings() {
    }

    /**
     * The breaks of every use that has peaks and draws at taps of known flow.
     *
     * @param flowOfOneM3PerS flow of one outlet of each tap in a peak
     */
    public static Outcome.Completed of(Site site, Map<Tap, Double> flowOfOneM3PerS) {
        AnswerBuilder all = new AnswerBuilder(null);
        List<List<Object>> rows = new ArrayList<>();
        for (Use use : site.getUses()) {
            List<Tap> taps = use.getTaps().stream().filter(flowOfOneM3PerS::containsKey).toList();
            boolean people = use.getCount() != null && use.getCount().si() >= FEWEST_PEOPLE && AT_TAPS.contains(use.getPurpose());
            if (use.isInUse() && people && use.getAmountEach() != null && !taps.isEmpty()) {
                all.include(use(use, taps, flowOfOneM3PerS, rows));
            }
        }
        if (!rows.isEmpty()) {
            all.add("breaks", "Breaks", new FindingValue.Table(List.of("Use", "Break", "People", "Taps", "Served",
                    "Longest queue", "Longest wait", "Taps needed"), rows));
        }
        return all.build();
    }

    private static Outcome.Completed use(Use use, List<Tap> taps, Map<Tap, Double> flows, List<List<Object>> rows) {
        AnswerBuilder answer = new AnswerBuilder(use.getId());
        int count = taps.stream().mapToInt(tap -> Math.max(1, tap.getCount())).sum();
        double meanM3PerS = taps.stream().mapToDouble(tap -> flows.get(tap) * Math.max(1, tap.getCount())).sum() / count;
        Course hardest = null;
        for (UsePeak peak : use.getPeaks()) {
            if (peak.getFrom() == null || peak.getTo() == null || peak.getShare() == null || peak.getShare().si() <= 0) {
                continue;
            }
            try {
                Course course = Course.of(use, peak, count, meanM3PerS);
                rows.add(course.row());
                hardest = hardest == null || course.taps > hardest.taps ? course : hardest;
            } catch (IllegalArgumentException e) {
                answer.caution(new Caution("break.unknown", Severity.WARNING, use.getId(), "The break of {0} from {1} cannot be"
                        + " worked out: {2}.", List.of(String.valueOf(use.getName()), peak.getFrom().toString(),
                                e.getMessage()), "", Source.definition("how the model was read")));
            }
        }
        if (hardest != null) {
            hardest.say(answer);
        }
        return answer.build();
    }

    /** How one break goes. */
    private record Course(Use use, UsePeak peak, int count, SchoolBreak school, SchoolBreak.Course course, int taps) {
        static Course of(Use use, UsePeak peak, int count, double tapM3PerS) {
            double seconds = peak.getTo().toSecondOfDay() - peak.getFrom().toSecondOfDay();
            double breakS = seconds > 0 ? seconds : seconds + 86_400;
            double volumeM3 = use.getAmountEach().in(Units.M3_PER_D) * peak.getShare().si();
            SchoolBreak school = new SchoolBreak((int) Math.min(Integer.MAX_VALUE, Math.round(use.getCount().si())), breakS,
                    breakS * ARRIVAL_SHARE, volumeM3, tapM3PerS, CHANGE_OVER_S);
            OptionalInt needed = school.tapsNeeded();
            return new Course(use, peak, count, school, school.course(count), needed.orElse(Integer.MAX_VALUE));
        }

        private String when() {
            return peak.getFrom() + " to " + peak.getTo();
        }

        List<Object> row() {
            return java.util.Arrays.asList(use.getName(), when(), Quantity.of(school.pupils()), Quantity.of(count),
                    Quantity.of(course.served()), Quantity.of(course.longestQueue()),
                    Quantity.ofSi(course.longestWaitS(), Units.MIN),
                    taps == Integer.MAX_VALUE ? "none would do" : Quantity.of(taps));
        }

        void say(AnswerBuilder answer) {
            Input service = new Input("ts", "time that one person holds a tap",
                    Quantity.of(school.serviceS(), Units.S));
            Input people = new Input("n", "people", Quantity.of(school.pupils()));
            Input length = new Input("tb", "length of the break", Quantity.ofSi(school.breakS(), Units.MIN));
            Input there = new Input("N", "taps there are", Quantity.of(count));
            Step hold = Step.of("ts", "time that one person holds a tap", "v / q + 5 s", service.value(), QUEUE,
                    new Input("v", "water that each takes in this break", Quantity.ofSi(school.volumeM3(), Units.L)),
                    new Input("q", "flow of one tap in the peak, with aged pipe and fouled filters",
                            Quantity.ofSi(school.tapFlowM3PerS(), Units.L_PER_MIN)));
            number(answer, "breakServed", "Served in the hardest break, " + when(), Quantity.of(course.served()), hold,
                    "people who have their water before the break ends, followed one by one", people, length, there, service);
            number(answer, "breakQueue", "Longest queue in that break", Quantity.of(course.longestQueue()), hold,
                    "most people who wait at once", people, length, there, service);
            number(answer, "breakWait", "Longest wait in that break", Quantity.ofSi(course.longestWaitS(), Units.MIN), hold,
                    "longest time from coming to a tap", people, length, there, service);
            if (taps < Integer.MAX_VALUE) {
                number(answer, "breakTaps", "Taps needed to serve all in that break", Quantity.of(taps), hold,
                        "fewest taps with which all are served", people, length, service);
            }
            if (course.served() < school.pupils()) {
                answer.caution(new Caution("break.short", Severity.WARNING, use.getId(), "In the break from {0} only {1} of {2}"
                        + " are served at {3} taps ({4}); {5}.", List.of(when(), Quantity.of(course.served()),
                                Quantity.of(school.pupils()), Quantity.of(count), String.valueOf(use.getName()),
                                taps == Integer.MAX_VALUE ? "no number of taps would do, since one person takes longer than is"
                                        + " left" : taps + " taps would serve all"), "", QUEUE));
            }
        }

        private static void number(AnswerBuilder answer, String id, String title, Quantity value, Step hold, String meaning,
                Input... inputs) {
            answer.number(id, title, value, hold, Step.of("r", meaning, "queue over the break", value, QUEUE, inputs));
        }
    }
}
