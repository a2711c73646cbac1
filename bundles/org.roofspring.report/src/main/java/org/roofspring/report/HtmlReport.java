package org.roofspring.report;

import org.roofspring.report.internal.html.HtmlWriter;

/** A report as one HTML file: style and drawings inside, nothing fetched, readable on a phone and on paper. */
public final class HtmlReport {
    private HtmlReport() {
    }

    /** The whole file; the same report always gives the same characters. */
    public static String write(ReportDocument report) {
        return new HtmlWriter(report).write();
    }
}
