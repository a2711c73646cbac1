package org.roofspring.report;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/**
 * A report before it is written in any format.
 *
 * @param title    what it is about
 * @param subtitle where, for whom
 * @param date     day of the report, the only thing in it that does not follow from site and results
 * @param blocks   in reading order
 */
public record ReportDocument(String title, String subtitle, LocalDate date, List<Block> blocks) {
    public ReportDocument {
        Objects.requireNonNull(title);
        Objects.requireNonNull(subtitle);
        Objects.requireNonNull(date);
        blocks = List.copyOf(blocks);
        Set<String> seen = new HashSet<>();
        ids(blocks).stream().filter(id -> !seen.add(id)).findFirst().ifPresent(id -> {
            throw new IllegalArgumentException("the id " + id + " stands twice in the report");
        });
    }

    /** Every id in the report, in reading order. */
    public List<String> ids() {
        return ids(blocks);
    }

    private static List<String> ids(List<Block> blocks) {
        return blocks.stream().<String>mapMulti((block, sink) -> {
            switch (block) {
                case Block.Heading heading -> sink.accept(heading.id());
                case Block.KeyValues values -> values.entries().forEach(entry -> sink.accept(entry.value().id()));
                case Block.Table table -> {
                    sink.accept(table.id());
                    table.rows().forEach(row -> row.forEach(cell -> sink.accept(cell.id())));
                }
                case Block.Figure figure -> figure.findings().forEach(finding -> sink.accept(finding.id()));
                case Block.Statement statement -> sink.accept(statement.id());
                case Block.Workings workings -> sink.accept(workings.id());
                case Block.Card card -> ids(card.blocks()).forEach(sink);
                case Block.Paragraph paragraph -> { }
                case Block.CautionBox caution -> { }
                case Block.PageBreak pageBreak -> { }
                case Block.SignatureSpace space -> { }
            }
        }).filter(id -> !id.isEmpty()).toList();
    }
}
