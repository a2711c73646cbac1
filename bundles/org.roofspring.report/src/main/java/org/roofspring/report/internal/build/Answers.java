package org.roofspring.report.internal.build;

import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

import org.roofspring.calc.Finding;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.Outcome;
import org.roofspring.report.Block.Cell;

/** The findings of one calculation, and which of them the report has shown already. */
final class Answers {
    private final String calculationId;
    private final Outcome.Completed outcome;
    private final Set<String> shown = new HashSet<>();
    private final Set<String> explained = new HashSet<>();

    Answers(String calculationId, Outcome.Completed outcome) {
        this.calculationId = calculationId;
        this.outcome = outcome;
        outcome.workings().forEach(working -> explained.add(Keys.explained(calculationId, working)));
    }

    String key(Finding finding) {
        return Keys.finding(calculationId, finding);
    }

    /** The id of the working behind a finding; empty where there is none. */
    String link(Finding finding) {
        return explained.contains(key(finding)) ? Keys.working(key(finding)) : "";
    }

    /** A finding that is shown by a drawing. */
    Cell shown(Finding finding) {
        return new Cell(finding.title(), key(finding), link(finding));
    }

    /** A finding that a drawing is made from but that has its place elsewhere. */
    Cell elsewhere(Finding finding) {
        return new Cell(finding.title(), "", link(finding));
    }

    /** A finding, whether shown already or not; it stays as it is. */
    Optional<Finding> peek(String findingId, String elementId) {
        return outcome.finding(findingId, elementId);
    }

    /** A finding that the caller shows. */
    Optional<Finding> take(String findingId, String elementId, Class<? extends FindingValue> kind) {
        return peek(findingId, elementId).filter(finding -> kind.isInstance(finding.value())).filter(this::take);
    }

    /** Marks a finding as shown; false if it was already. */
    boolean take(Finding finding) {
        return shown.add(key(finding));
    }

    /** All findings of a kind that are not shown yet. */
    List<Finding> all(Class<? extends FindingValue> kind) {
        return outcome.findings().stream().filter(finding -> kind.isInstance(finding.value()))
                .filter(finding -> !shown.contains(key(finding))).toList();
    }

    /** Those of them about one element, or about the site where {@code elementId} is null; they count as shown. */
    List<Finding> left(String elementId, Class<? extends FindingValue> kind) {
        List<Finding> left = all(kind).stream().filter(finding -> Objects.equals(finding.elementId(),
                elementId)).toList();
        left.forEach(this::take);
        return left;
    }

    /** Elements that something is left to be shown of, in the order of the findings. */
    Set<String> elements() {
        Set<String> elements = new LinkedHashSet<>();
        outcome.findings().stream().filter(finding -> finding.elementId() != null && !shown.contains(key(finding)))
                .forEach(finding -> elements.add(finding.elementId()));
        return elements;
    }
}
