package org.roofspring.report.internal.build;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.roofspring.calc.Finding;
import org.roofspring.calc.FindingValue;
import org.roofspring.report.Block;

/** Tables that hang beside the tank, each on a page of its own; their sources stand below as notes. */
final class Cards {
    private static final String SOURCE = "Source";
    private static final String NOTE = "Note";

    private final Words words;

    Cards(Words words) {
        this.words = words;
    }

    /**
     * The cards among the findings of one calculation; a finding whose id ends in Card is one, and the dipstick
     * table.
     */
    List<Block> of(Answers answers, String place) {
        List<Block> cards = new ArrayList<>();
        for (Finding finding : answers.all(FindingValue.Table.class)) {
            if (finding.id().endsWith("Card") || finding.id().equals("dipstick")) {
                answers.take(finding);
                cards.add(card(answers, finding, place));
            }
        }
        return cards;
    }

    private Block.Card card(Answers answers, Finding finding, String place) {
        FindingValue.Table table = (FindingValue.Table) finding.value();
        int source = table.columns().indexOf(SOURCE);
        Map<String, String> notes = new LinkedHashMap<>();
        List<String> columns = new ArrayList<>(table.columns());
        List<List<Object>> rows = new ArrayList<>();
        for (List<Object> row : table.rows()) {
            List<Object> cells = new ArrayList<>(row);
            if (source >= 0) {
                cells.set(source, row.get(source) == null ? "" : notes.computeIfAbsent(words.of(row.get(source)),
                        text -> Integer.toString(notes.size() + 1)));
            }
            rows.add(cells);
        }
        if (source >= 0) {
            columns.set(source, NOTE);
        }
        String link = answers.link(finding);
        String caption = link.isEmpty() ? "" : "How this was worked out";
        List<Block> blocks = new ArrayList<>(
                new Tables(words).of(answers.key(finding), caption, columns, rows, "", link));
        notes.forEach((text, number) -> blocks.add(new Block.Paragraph(number + "  " + text, true)));
        blocks.add(new Block.Paragraph(place
                + ". Follow the local authority where it says otherwise; test the water.", true));
        return new Block.Card(finding.title(), blocks);
    }
}
