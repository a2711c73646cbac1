package org.roofspring.ui.parts.findings;

import java.util.ArrayList;
import java.util.List;

import org.roofspring.calc.Finding;
import org.roofspring.calc.engine.CalculationResult;
import org.roofspring.site.edit.Words;
import org.roofspring.ui.session.FindingKey;
import org.roofspring.ui.session.SiteSession;
import org.roofspring.ui.look.FindingWords;

/**
 * A line of the findings part: a calculation with the lines of its findings, or a finding.
 *
 * @param key     what stays the same when values change
 * @param finding null for a calculation
 * @param state   in words
 * @param stale   whether it is out of date
 */
public record FindingLine(Object key, FindingKey finding, String title, String value, String state, boolean stale,
        List<FindingLine> children) {

    static List<FindingLine> of(SiteSession session) {
        List<FindingLine> lines = new ArrayList<>();
        for (CalculationResult result : session.live().results().results()) {
            String id = result.descriptor().id();
            boolean stale = session.live().outOfDate(id);
            List<FindingLine> findings = new ArrayList<>();
            result.completed().ifPresent(outcome -> outcome.findings()
                    .forEach(finding -> findings.add(line(session, id, finding, stale))));
            lines.add(new FindingLine(id, null, result.descriptor().title(), "", state(result, stale), stale, List.copyOf(findings)));
        }
        return lines;
    }

    private static FindingLine line(SiteSession session, String calculationId, Finding finding, boolean stale) {
        FindingKey key = new FindingKey(calculationId, finding);
        String about = session.element(finding.elementId()).map(element -> ", " + Words.name(element)).orElse("");
        return new FindingLine(key, key, finding.title() + about, FindingWords.of(finding.value(), session.format()),
                stale ? "out of date" : "", stale, List.of());
    }

    private static String state(CalculationResult result, boolean stale) {
        if (stale) {
            return "out of date";
        }
        return switch (result.status()) {
            case COMPLETED -> "up to date";
            case NO_ANSWER -> "no answer";
            case NOT_APPLICABLE -> "does not apply";
            case FAULT -> "failed";
        };
    }
}
