package org.roofspring.treatment.safety;

import java.util.List;

import org.roofspring.treatment.Caution;
import org.roofspring.treatment.internal.Checks;

/**
 * What may be said of the water for a use, in plain words.
 *
 * @param outcome    suitable, suitable if, not suitable
 * @param use        the use
 * @param reasons    why not; empty unless not suitable
 * @param conditions what must be done or hold as well
 * @param basis      what the verdict rests on: credits, targets and their sources
 * @param cautions   about people, the order of steps, the chemistry
 */
public record Verdict(Outcome outcome, Use use, List<String> reasons, List<String> conditions, List<String> basis,
        List<Caution> cautions) {

    /** The three things a verdict can say. */
    public enum Outcome {
        SUITABLE("suitable"), SUITABLE_IF("suitable if"), NOT_SUITABLE("not suitable");

        private final String label;

        Outcome(String label) {
            this.label = label;
        }

        public String label() {
            return label;
        }
    }

    /** Stands under every verdict. */
    public static final String ADVICE = "Have the water tested at least once a year and after any change, and follow "
            + "your local health authority.";

    public Verdict {
        Checks.present("outcome", outcome);
        Checks.present("use", use);
        reasons = Checks.list("reasons", reasons);
        conditions = Checks.list("conditions", conditions);
        basis = Checks.list("basis", basis);
        cautions = Checks.list("cautions", cautions);
    }

    /** The verdict with its conditions and reasons and the advice, as running text. */
    public String text() {
        StringBuilder text = new StringBuilder();
        switch (outcome) {
            case SUITABLE -> text.append("Suitable for ").append(use.label())
                    .append(" on the stated assumptions, as long as every step works as listed.");
            case SUITABLE_IF -> text.append("Suitable for ").append(use.label()).append(" only if: ")
                    .append(String.join(" ", conditions));
            case NOT_SUITABLE -> text.append("Not suitable for ").append(use.label()).append(": ")
                    .append(String.join(" ", reasons));
        }
        return text.append(' ').append(ADVICE).toString();
    }
}
