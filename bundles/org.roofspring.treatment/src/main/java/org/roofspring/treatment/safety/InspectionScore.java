package org.roofspring.treatment.safety;

import java.util.Arrays;
import java.util.List;
import java.util.Map;

import org.roofspring.treatment.Source;
import org.roofspring.treatment.internal.Checks;

/**
 * The sanitary inspection, scored: a point for each fault. Questions without an answer make the score a range, and the
 * level is that of its worse end.
 *
 * @param faults     answered yes
 * @param unanswered left open
 */
public record InspectionScore(List<InspectionQuestion> faults, List<InspectionQuestion> unanswered) {
    public static final Source SOURCE = Source.fromMemory("WHO 1997, Guidelines for Drinking-water Quality, vol. 3, "
            + "annex 2: sanitary inspection forms for rainwater (0 to 2 low, 3 to 5 intermediate, 6 to 8 high, 9 and "
            + "more very high)");

    /** How urgent it is to act. */
    public enum Level {
        LOW("low"), INTERMEDIATE("intermediate"), HIGH("high"), VERY_HIGH("very high");

        private final String label;

        Level(String label) {
            this.label = label;
        }

        public String label() {
            return label;
        }
    }

    public InspectionScore {
        faults = Checks.list("faults", faults);
        unanswered = Checks.list("unanswered", unanswered);
    }

    /** @param faultByQuestion true for a fault; a question that is absent counts as unanswered */
    public static InspectionScore of(Map<InspectionQuestion, Boolean> faultByQuestion) {
        Map<InspectionQuestion, Boolean> answers = Checks.map("answers", faultByQuestion);
        List<InspectionQuestion> all = Arrays.asList(InspectionQuestion.values());
        return new InspectionScore(all.stream().filter(question -> answers.getOrDefault(question, false)).toList(),
                all.stream().filter(question -> !answers.containsKey(question)).toList());
    }

    /** Faults found. */
    public int lowest() {
        return faults.size();
    }

    /** Faults if every open question hides one. */
    public int highest() {
        return faults.size() + unanswered.size();
    }

    public Level level() {
        int score = highest();
        if (score <= 2) {
            return Level.LOW;
        }
        if (score <= 5) {
            return Level.INTERMEDIATE;
        }
        return score <= 8 ? Level.HIGH : Level.VERY_HIGH;
    }
}
