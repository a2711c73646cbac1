package org.roofspring.report;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;

/**
 * The tables that a report makes itself (inputs, quantities, remarks, sources) as comma-separated values, every row, as
 * they are shown. Tables of findings are not among them: those are best taken from the results, at full precision.
 */
public final class CsvReport {
    private static final String OWN = "table/";

    private CsvReport() {
    }

    /** Texts of files by a name for each, such as {@code bill-of-quantities}. */
    public static Map<String, String> write(ReportDocument report) {
        Map<String, String> files = new LinkedHashMap<>();
        for (Block block : report.blocks()) {
            if (block instanceof Block.Table table && table.id().startsWith(OWN)) {
                files.put(table.id().substring(OWN.length()).replaceAll("[^A-Za-z0-9.-]", "-"), text(table));
            }
        }
        return files;
    }

    private static String text(Block.Table table) {
        StringWriter text = new StringWriter();
        try (CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.LF).build(text)) {
            csv.writeRecord(table.columns().stream().map(Block.Column::title).toList());
            for (List<Block.Cell> row : table.rows()) {
                csv.writeRecord(row.stream().map(cell -> plain(cell.text())).toList());
            }
        } catch (IOException e) {
            // nothing but memory is written to
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    /** Numbers as programs read them: no space between thousands, a hyphen for minus. */
    private static String plain(String text) {
        return text.replaceAll("(?<=\\d)\u202f(?=\\d)", "").replace('\u00a0', ' ').replace('\u202f',
                ' ').replace('\u2212', '-');
    }
}
