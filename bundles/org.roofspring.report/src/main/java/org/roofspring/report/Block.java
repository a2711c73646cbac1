package org.roofspring.report;

import java.util.List;
import java.util.Objects;

import org.roofspring.drawing.Drawing;

/**
 * What a report is made of. Writers switch over these kinds; there are no others. An id is unique in the report, a
 * link is
 * the id of what it leads to; both are empty where there is none.
 */
public sealed interface Block {

    /** How grave something is; always shown in words as well as in colour. */
    enum Tone {
        GOOD("Good"), CONDITIONAL("With a condition"), BAD("Not good"), INFO("Note"), WARNING("Warning"),
                DANGER("Danger");

        private final String word;

        Tone(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /** A heading; level 1 for chapters, down to 4. Level 1 and 2 are in the contents. */
    record Heading(int level, String text, String id) implements Block {
        public Heading {
            if (level < 1 || level > 4) {
                throw new IllegalArgumentException("headings have levels 1 to 4, not " + level);
            }
            Objects.requireNonNull(text);
            Objects.requireNonNull(id);
        }
    }

    /** Running text; {@code small} for notes. */
    record Paragraph(String text, boolean small) implements Block {
        public Paragraph {
            Objects.requireNonNull(text);
        }

        public Paragraph(String text) {
            this(text, false);
        }
    }

    /** Names with their values. */
    record KeyValues(List<Entry> entries) implements Block {
        public KeyValues {
            entries = List.copyOf(entries);
        }
    }

    /** A name with its value; the value can lead to its working. */
    record Entry(String label, Cell value) {
        public Entry {
            Objects.requireNonNull(label);
            Objects.requireNonNull(value);
        }
    }

    /** A text that can be found by its id and can lead elsewhere. */
    record Cell(String text, String id, String link) {
        public Cell {
            Objects.requireNonNull(text);
            Objects.requireNonNull(id);
            Objects.requireNonNull(link);
        }

        public Cell(String text) {
            this(text, "", "");
        }
    }

    /** A column; numbers stand at the right. */
    record Column(String title, boolean number) {
        public Column {
            Objects.requireNonNull(title);
        }
    }

    /**
     * Rows and columns.
     *
     * @param id      of the whole table
     * @param caption what it holds
     * @param columns titles, at least one
     * @param rows    cells in the order of the columns
     * @param shown   how many rows people are shown; a file of values gets all
     * @param note    what else is to be known of it, or empty
     * @param link    of the caption
     */
    record Table(String id, String caption, List<Column> columns, List<List<Cell>> rows, int shown, String note,
            String link) implements Block {
        public Table {
            Objects.requireNonNull(id);
            Objects.requireNonNull(caption);
            Objects.requireNonNull(note);
            Objects.requireNonNull(link);
            columns = List.copyOf(columns);
            rows = rows.stream().map(List::copyOf).toList();
            if (shown < 0) {
                throw new IllegalArgumentException("a table cannot show " + shown + " rows");
            }
            int width = columns.size();
            if (width == 0 || rows.stream().anyMatch(row -> row.size() != width)) {
                throw new IllegalArgumentException("the table \"" + caption + "\" needs " + width
                        + " cells in each row");
            }
        }

        /** The rows that people are shown. */
        public List<List<Cell>> shownRows() {
            return rows.subList(0, Math.min(shown, rows.size()));
        }

        /** The note, with how many rows are left out. */
        public String shownNote() {
            int more = rows.size() - shownRows().size();
            String left = more == 0 ? "" : more + (more == 1 ? " more row is" : " more rows are")
                    + " in the file of this table.";
            return note.isEmpty() || left.isEmpty() ? note + left : note + " " + left;
        }
    }

    /**
     * A drawing with what it shows in words.
     *
     * @param findings what it is drawn from, each with its title, its id unless it has that elsewhere, and its working
     * @param drawing  the drawing
     * @param caption  what it shows
     */
    record Figure(List<Cell> findings, Drawing drawing, String caption) implements Block {
        public Figure {
            findings = List.copyOf(findings);
            Objects.requireNonNull(drawing);
            Objects.requireNonNull(caption);
        }

        /** Those findings that have a working. */
        public List<Cell> explained() {
            return findings.stream().filter(finding -> !finding.link().isEmpty()).toList();
        }
    }

    /** A judgement with its reasons. */
    record Statement(String id, Tone tone, String title, String text, List<String> reasons,
            String link) implements Block {
        public Statement {
            Objects.requireNonNull(id);
            Objects.requireNonNull(tone);
            Objects.requireNonNull(title);
            Objects.requireNonNull(text);
            reasons = List.copyOf(reasons);
            Objects.requireNonNull(link);
        }
    }

    /**
     * What the reader must know before acting.
     *
     * @param tone   how grave
     * @param about  what it is about; empty for the whole site or where the texts name it
     * @param texts  with whom to ask; several where the same holds of several elements
     * @param source why it is so
     * @param code   stable, for looking it up
     */
    record CautionBox(Tone tone, String about, List<String> texts, String source, String code) implements Block {
        public CautionBox {
            Objects.requireNonNull(tone);
            Objects.requireNonNull(about);
            texts = List.copyOf(texts);
            Objects.requireNonNull(source);
            Objects.requireNonNull(code);
        }
    }

    /** The steps behind a figure; {@code link} leads back to it. */
    record Workings(String id, String title, String link, List<Step> steps) implements Block {
        public Workings {
            Objects.requireNonNull(id);
            Objects.requireNonNull(title);
            Objects.requireNonNull(link);
            steps = List.copyOf(steps);
        }
    }

    /**
     * One step of a working.
     *
     * @param meaning     what it gives, in words
     * @param formula     with symbols
     * @param inputs      what the symbols stand for
     * @param substituted the formula with values
     * @param result      empty where the step is a rule in words
     * @param source      where the formula comes from
     */
    record Step(String meaning, String formula, String inputs, String substituted, String result, String source) {
        public Step {
            Objects.requireNonNull(meaning);
            Objects.requireNonNull(formula);
            Objects.requireNonNull(inputs);
            Objects.requireNonNull(substituted);
            Objects.requireNonNull(result);
            Objects.requireNonNull(source);
        }
    }

    /** A page of its own that can be cut out and hung up: printed on exactly one page. */
    record Card(String title, List<Block> blocks) implements Block {
        public Card {
            Objects.requireNonNull(title);
            blocks = List.copyOf(blocks);
            if (blocks.stream().anyMatch(block -> block instanceof Card || block instanceof PageBreak)) {
                throw new IllegalArgumentException("a card holds neither cards nor page breaks");
            }
        }
    }

    /** On paper what follows begins a new page. */
    record PageBreak() implements Block {
    }

    /** Lines to sign on, one for each role. */
    record SignatureSpace(List<String> roles) implements Block {
        public SignatureSpace {
            roles = List.copyOf(roles);
        }
    }
}
