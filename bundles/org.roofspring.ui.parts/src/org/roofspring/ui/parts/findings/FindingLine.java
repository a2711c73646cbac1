package org.roofspring.ui.parts.findings;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

import org.eclipse.jface.viewers.IElementComparer;
import org.roofspring.calc.Finding;
import org.roofspring.calc.ValueWords;
import org.roofspring.calc.engine.CalculationResult;
import org.roofspring.site.edit.Words;
import org.roofspring.ui.session.FindingKey;
import org.roofspring.ui.session.SiteSession;

/**
 * A line of the findings part: a calculation, an element it says something about, or a finding.
 *
 * @param key     what stays the same when values change
 * @param finding null where the line is a heading
 * @param state   in words
 * @param stale   whether it is out of date
 */
public record FindingLine(Object key, FindingKey finding, String title, String value, String state, boolean stale,
        List<FindingLine> children) {
    private static final String OUT_OF_DATE = "out of date";

    /** Lines are the same while their key is, so that the tree keeps its shape when values change. */
    static final class ByKey implements IElementComparer {
        @Override
        public boolean equals(Object one, Object other) {
            return one instanceof FindingLine line && other instanceof FindingLine otherLine ? line.key().equals(otherLine.key())
                    : Objects.equals(one, other);
        }

        @Override
        public int hashCode(Object element) {
            return element instanceof FindingLine line ? line.key().hashCode() : Objects.hashCode(element);
        }
    }

    /**
     * Calculations that build on others come first, since they hold the answers to the main questions; findings about
     * elements stand below the element's name.
     */
    static List<FindingLine> of(SiteSession session) {
        List<FindingLine> lines = new ArrayList<>();
        for (CalculationResult result : session.live().results().results()) {
            String id = result.descriptor().id();
            boolean stale = session.live().outOfDate(id);
            List<FindingLine> findings = result.completed().map(outcome -> findings(session, id, outcome.findings(), stale)).orElse(List.of());
            lines.add(new FindingLine(id, null, result.descriptor().title(), "", state(result, stale), stale, findings));
        }
        return lines.reversed();
    }

    private static List<FindingLine> findings(SiteSession session, String calculationId, List<Finding> findings, boolean stale) {
        List<FindingLine> lines = new ArrayList<>();
        Map<String, List<FindingLine>> byElement = new LinkedHashMap<>();
        for (Finding finding : findings) {
            FindingKey key = new FindingKey(calculationId, finding);
            FindingLine line = new FindingLine(key, key, finding.title(), ValueWords.of(finding.value(), session.format()),
                    stale ? OUT_OF_DATE : "", stale, List.of());
            if (session.element(finding.elementId()).isPresent()) {
                byElement.computeIfAbsent(finding.elementId(), none -> new ArrayList<>()).add(line);
            } else {
                lines.add(line);
            }
        }
        byElement.forEach((id, about) -> lines.add(new FindingLine(calculationId + "/" + id, null,
                session.element(id).map(Words::name).orElseThrow(), "", "", stale, List.copyOf(about))));
        return List.copyOf(lines);
    }

    private static String state(CalculationResult result, boolean stale) {
        if (stale) {
            return OUT_OF_DATE;
        }
        return switch (result.status()) {
            case COMPLETED -> "up to date";
            case NO_ANSWER -> "no answer";
            case NOT_APPLICABLE -> "does not apply";
            case FAULT -> "failed";
        };
    }
}
