package org.roofspring.report.internal.build;

import org.roofspring.calc.Finding;
import org.roofspring.calc.Working;

/** Ids inside a report. A finding's id is its calculation, a slash, its own id and, about an element, an at sign. */
final class Keys {
    private Keys() {
    }

    static String finding(String calculationId, Finding finding) {
        return finding(calculationId, finding.id(), finding.elementId());
    }

    static String finding(String calculationId, String findingId, String elementId) {
        return calculationId + "/" + findingId + (elementId == null ? "" : "@" + elementId);
    }

    static String working(String findingKey) {
        return "working/" + findingKey;
    }

    static String explained(String calculationId, Working working) {
        return finding(calculationId, working.findingId(), working.elementId());
    }
}
