package org.roofspring.report;

import java.util.Objects;

import org.roofspring.calc.Finding;
import org.roofspring.calc.engine.SiteResults;
import org.roofspring.report.internal.build.ReportBuilder;
import org.roofspring.site.snapshot.SiteSnapshot;

/**
 * The design report of a site. Every finding of every calculation is in it under its id, so that a calculation that is
 * added later appears without a change here; what this program's own calculations are known to give is shown with more
 * care.
 */
public final class DesignReport {
    private DesignReport() {
    }

    /**
     * Builds the report.
     *
     * @param snapshot the site
     * @param results  what was computed from that very snapshot
     */
    public static ReportDocument build(SiteSnapshot snapshot, SiteResults results, ReportSettings settings) {
        return new ReportBuilder(Objects.requireNonNull(snapshot), Objects.requireNonNull(results), settings).build();
    }

    /** The id of a finding inside a report: its calculation, a slash, its own id and, about an element, an at sign. */
    public static String idOf(String calculationId, Finding finding) {
        return ReportBuilder.idOf(calculationId, finding);
    }
}
