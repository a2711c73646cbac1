package org.roofspring.calc;

import java.util.List;
import java.util.Optional;

/** What a calculation returns: an answer, or why there is none. */
public sealed interface Outcome {

    /** Cautions hold whether or not there is an answer. */
    List<Caution> cautions();

    /**
     * An answer.
     *
     * @param findings ids are unique for each element within the calculation
     * @param workings the ordered steps behind findings
     * @param cautions what the reader must know
     */
    record Completed(List<Finding> findings, List<Working> workings, List<Caution> cautions) implements Outcome {
        public Completed {
            findings = List.copyOf(findings);
            workings = List.copyOf(workings);
            cautions = List.copyOf(cautions);
        }

        /** The finding of the site as a whole with this id. */
        public Optional<Finding> finding(String id) {
            return finding(id, null);
        }

        /** The finding with this id about one element, or about the site where {@code elementId} is null. */
        public Optional<Finding> finding(String id, String elementId) {
            return findings.stream().filter(f -> f.id().equals(id) && java.util.Objects.equals(f.elementId(), elementId))
                    .findFirst();
        }
    }

    /**
     * No answer from sound input: no duty point, a record too short, a part of the design still missing.
     *
     * @param problems sentences to show, at least one
     */
    record NotComputable(List<Problem> problems, List<Caution> cautions) implements Outcome {
        public NotComputable {
            problems = List.copyOf(problems);
            cautions = List.copyOf(cautions);
            if (problems.isEmpty()) {
                throw new IllegalArgumentException("an outcome without an answer must say why");
            }
        }

        public NotComputable(Problem... problems) {
            this(List.of(problems), List.of());
        }
    }

    /**
     * Why there is no answer.
     *
     * @param elementId the element to look at, or null for the site
     * @param feature   the attribute to look at, or null
     * @param text      one sentence
     */
    record Problem(String elementId, String feature, String text) {
        public Problem(String text) {
            this(null, null, text);
        }
    }
}
