package org.roofspring.report;

import java.time.LocalDate;
import java.util.Objects;

import org.roofspring.calc.Finding;
import org.roofspring.calc.engine.SiteResults;
import org.roofspring.quantity.UnitSystem;
import org.roofspring.report.internal.build.ReportBuilder;
import org.roofspring.site.SiteFactory;
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

    /**
     * Writes the report of an empty site to nowhere. Nothing is changed by it, but the first real report after it is
     * written in half the time; worth doing beside something that has to be waited for.
     */
    public static void warmUp() {
        SiteSnapshot empty = SiteSnapshot.of(SiteFactory.eINSTANCE.createSite(), 0, null);
        ReportSettings settings = new ReportSettings(LocalDate.EPOCH, UnitSystem.METRIC, "");
        ReportDocument report = build(empty, SiteResults.none(), settings);
        HtmlReport.write(report);
        PdfReport.write(report);
    }

    /** The id of a finding inside a report: its calculation, a slash, its own id and, about an element, an at sign. */
    public static String idOf(String calculationId, Finding finding) {
        return ReportBuilder.idOf(calculationId, finding);
    }
}
