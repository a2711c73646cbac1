package org.roofspring.report;

import java.io.IOException;
import java.io.UncheckedIOException;

import org.roofspring.report.internal.pdf.PdfWriter;

/** A report as PDF (A4), fonts embedded, every figure with its working one click away. */
public final class PdfReport {
    private PdfReport() {
    }

    /** The whole file; the same report always gives the same bytes. */
    public static byte[] write(ReportDocument report) {
        try {
            return new PdfWriter(report).write();
        } catch (IOException e) {
            // nothing but memory is written to
            throw new UncheckedIOException(e);
        }
    }
}
