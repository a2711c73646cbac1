package org.roofspring.ui.session;

import java.util.Objects;
import java.util.Optional;

import org.roofspring.calc.Finding;
import org.roofspring.calc.Working;
import org.roofspring.calc.engine.SiteResults;

/**
 * Names a finding, whichever run it came from.
 *
 * @param elementId the element it is about, or null for the site
 */
public record FindingKey(String calculationId, String findingId, String elementId) {
    public FindingKey {
        Objects.requireNonNull(calculationId);
        Objects.requireNonNull(findingId);
    }

    public FindingKey(String calculationId, Finding finding) {
        this(calculationId, finding.id(), finding.elementId());
    }

    /** The finding as it is shown now, if there is one. */
    public Optional<Finding> in(SiteResults results) {
        return results.finding(calculationId, findingId, elementId);
    }

    /** The workings behind it, if there are any. */
    public Optional<Working> working(SiteResults results) {
        return results.completed(calculationId).flatMap(outcome -> outcome.workings().stream()
                .filter(working -> working.findingId().equals(findingId) && Objects.equals(working.elementId(), elementId))
                .findFirst());
    }
}
