package org.roofspring.report.internal.build;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

import org.roofspring.calc.Finding;
import org.roofspring.calc.FindingValue;
import org.roofspring.quantity.Quantity;
import org.roofspring.report.Block;
import org.roofspring.report.Block.Cell;
import org.roofspring.report.Block.Column;
import org.roofspring.site.snapshot.SiteSnapshot;

/**
 * Everything that one calculation has found, whatever calculation it is: judgements, values, charts and tables, first
 * of
 * the whole site and then element by element. Elements of one kind with the same figures stand beside each other.
 */
final class AnswerSections {
    private static final int LONG_TEXT = 48;
    private static final int SIDE_BY_SIDE = 5;
    private static final double LEAST_FILL = 0.6;

    private final Answers answers;
    private final Words words;
    private final SiteSnapshot snapshot;
    private final Tables tables;
    private final Figures figures;

    AnswerSections(Answers answers, Words words, SiteSnapshot snapshot) {
        this.answers = answers;
        this.words = words;
        this.snapshot = snapshot;
        this.tables = new Tables(words);
        this.figures = new Figures(answers, words);
    }

    /** All findings that no other section has taken. */
    List<Block> all() {
        List<Block> blocks = new ArrayList<>(about(null));
        blocks.addAll(sideBySide());
        for (String elementId : answers.elements()) {
            List<Block> about = about(elementId);
            if (!about.isEmpty()) {
                blocks.add(new Block.Heading(3, words.name(elementId), ""));
                blocks.addAll(about);
            }
        }
        return blocks;
    }

    private List<Block> about(String elementId) {
        List<Block> blocks = new ArrayList<>();
        answers.left(elementId, FindingValue.Verdict.class).forEach(finding -> blocks.add(statement(finding)));
        List<Block.Entry> entries = new ArrayList<>();
        List<Block> longer = new ArrayList<>();
        for (Class<? extends FindingValue> kind : List.of(FindingValue.Number.class, FindingValue.Flag.class,
                FindingValue.Text.class)) {
            for (Finding finding : answers.left(elementId, kind)) {
                String text = words.of(finding.value());
                if (text.length() > LONG_TEXT) {
                    longer.add(new Block.Statement(answers.key(finding), Block.Tone.INFO, finding.title(), text,
                            List.of(), answers.link(finding)));
                } else {
                    entries.add(new Block.Entry(finding.title(), cell(finding)));
                }
            }
        }
        if (!entries.isEmpty()) {
            blocks.add(new Block.KeyValues(entries));
        }
        blocks.addAll(longer);
        blocks.addAll(figures.of(elementId));
        for (Finding finding : answers.left(elementId, FindingValue.Table.class)) {
            blocks.addAll(table(finding));
        }
        return blocks;
    }

    private Block.Statement statement(Finding finding) {
        FindingValue.Verdict verdict = (FindingValue.Verdict) finding.value();
        return new Block.Statement(answers.key(finding), Words.tone(verdict.level()), finding.title(), verdict.text(),
                verdict.reasons(), answers.link(finding));
    }

    private Cell cell(Finding finding) {
        return new Cell(words.of(finding.value()), answers.key(finding), answers.link(finding));
    }

    /** A table of a calculation; columns that only name elements for a program to follow are left out. */
    private List<Block> table(Finding finding) {
        FindingValue.Table table = (FindingValue.Table) finding.value();
        List<Integer> kept = IntStream.range(0, table.columns().size()).filter(c -> !identifiers(table,
                c)).boxed().toList();
        List<List<Object>> rows = new ArrayList<>();
        List<List<Object>> told = worthTelling(finding, table);
        int leftOut = table.rows().size() - told.size();
        for (List<Object> row : told) {
            List<Object> cells = new ArrayList<>();
            kept.forEach(c -> cells.add(row.get(c)));
            rows.add(cells);
        }
        String note = leftOut == 0 ? "" : leftOut + " months without a shortage are left out.";
        return tables.of(answers.key(finding), finding.title(), kept.stream().map(table.columns()::get).toList(),
                rows, note, answers.link(finding));
    }

    /** Decades of months without a shortage say nothing that the map beside them does not. */
    private static List<List<Object>> worthTelling(Finding finding, FindingValue.Table table) {
        int days = table.columns().indexOf("Days short");
        return !finding.id().equals("shortageByMonth") || days < 0 ? table.rows() : table.rows().stream()
                .filter(row -> !(row.get(days) instanceof Quantity count && count.value() == 0)).toList();
    }

    private boolean identifiers(FindingValue.Table table, int column) {
        String title = table.columns().get(column);
        boolean told = title.equals("Element") || title.equals("Step");
        return told && table.columns().size() > 1 && table.rows().stream().map(row -> row.get(column))
                .allMatch(cell -> cell == null || cell instanceof String id && (id.isEmpty()
                        || snapshot.find(id).isPresent()));
    }

    /**
     * Tables with a column for each element, where several elements of one class have nearly the same single values.
     */
    private List<Block> sideBySide() {
        Map<String, List<String>> byClass = new LinkedHashMap<>();
        for (String elementId : answers.elements()) {
            snapshot.find(elementId).ifPresent(element -> byClass.computeIfAbsent(element.eClass().getName(),
                    k -> new ArrayList<>()).add(elementId));
        }
        List<Block> blocks = new ArrayList<>();
        byClass.values().stream().filter(elements -> elements.size() > 1).forEach(elements ->
                blocks.addAll(sideBySide(elements)));
        return blocks;
    }

    private List<Block> sideBySide(List<String> elements) {
        Map<List<String>, Map<String, Finding>> rows = new LinkedHashMap<>();
        int filled = 0;
        for (Class<? extends FindingValue> kind : List.of(FindingValue.Number.class, FindingValue.Flag.class,
                FindingValue.Text.class)) {
            for (Finding finding : answers.all(kind)) {
                if (elements.contains(finding.elementId()) && words.of(finding.value()).length() <= LONG_TEXT) {
                    rows.computeIfAbsent(List.of(finding.id(), finding.title()),
                            k -> new LinkedHashMap<>()).put(finding.elementId(), finding);
                    filled++;
                }
            }
        }
        if (rows.size() < 2 || filled < LEAST_FILL * rows.size() * elements.size()) {
            return List.of();
        }
        List<Block> blocks = new ArrayList<>();
        int atOnce = Tables.evenly(elements.size(), SIDE_BY_SIDE);
        for (int from = 0; from < elements.size(); from += atOnce) {
            List<String> part = elements.subList(from, Math.min(elements.size(), from + atOnce));
            List<Column> columns = new ArrayList<>(List.of(new Column("", false)));
            part.forEach(elementId -> columns.add(new Column(words.name(elementId), true)));
            List<List<Cell>> cells = new ArrayList<>();
            rows.forEach((title, byElement) -> {
                List<Cell> row = new ArrayList<>(List.of(new Cell(title.get(1))));
                part.forEach(elementId -> row.add(byElement.containsKey(elementId) ? cell(byElement.get(elementId))
                        : new Cell("")));
                if (row.stream().skip(1).anyMatch(cell -> !cell.text().isEmpty())) {
                    cells.add(row);
                }
            });
            blocks.add(new Block.Table("", "", columns, cells, Integer.MAX_VALUE, "", ""));
        }
        rows.values().forEach(byElement -> byElement.values().forEach(answers::take));
        return blocks;
    }
}
