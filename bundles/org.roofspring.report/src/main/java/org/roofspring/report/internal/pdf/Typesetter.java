package org.roofspring.report.internal.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

import org.roofspring.drawing.Colour;
import org.roofspring.drawing.Colours;
import org.roofspring.drawing.Typeface;
import org.roofspring.report.Block;

/** Turns blocks into strips of a given width. */
final class Typesetter {
    static final double BODY = 9;
    static final double SMALL = 7;
    static final double LEADING = 1.32;
    /** From the top of a line to its base, as a share of the size. */
    static final double RISE = 0.98;
    private static final double[] HEADINGS = { 17, 13, 10.5, 9.5 };
    private static final double BAR = 3;
    private static final double INDENT = 9;
    private static final Colour RULE = Colour.of(0xd5dbe0);
    private static final Colour LINK = Colour.of(0x174f85);

    private final double width;
    private final TableSetter tables;

    Typesetter(double width) {
        this.width = width;
        this.tables = new TableSetter(width);
    }

    static Colour linkColour(String link) {
        return link.isEmpty() ? Colours.INK : LINK;
    }

    /** Strips of a block; a card or page break has none and is the business of the pages. */
    List<Strip> strips(Block block) {
        return switch (block) {
            case Block.Heading heading -> heading(heading);
            case Block.Paragraph paragraph -> paragraph(paragraph);
            case Block.KeyValues values -> keyValues(values);
            case Block.Table table -> tables.strips(table);
            case Block.Figure figure -> figure(figure);
            case Block.Statement statement -> statement(statement);
            case Block.CautionBox caution -> caution(caution);
            case Block.Workings workings -> workings(workings);
            case Block.SignatureSpace space -> signatures(space);
            case Block.Card card -> List.of();
            case Block.PageBreak pageBreak -> List.of();
        };
    }

    private List<Strip> heading(Block.Heading heading) {
        double size = HEADINGS[heading.level() - 1];
        List<Strip> strips = new ArrayList<>();
        List<String> lines = TextLines.of(heading.text(), Typeface.BOLD, size, width);
        for (String line : lines) {
            double gap = strips.isEmpty() ? size * (heading.level() == 1 ? 1.5 : 1.1) : 0;
            strips.add(Strip.of(size * LEADING, gap, (canvas, x, top) ->
                    canvas.text(x, top - size * RISE, line, Typeface.BOLD, size, Colours.INK)).keptWithNext());
        }
        if (!heading.id().isEmpty()) {
            strips.set(0, strips.get(0).withIds(List.of(heading.id())));
        }
        if (heading.level() == 1) {
            strips.add(Strip.of(4, 0, (canvas, x, top) -> canvas.line(x, top - 1.5, x + width, top - 1.5,
                    Colours.WATER, 1.2)).keptWithNext());
        }
        return strips;
    }

    private List<Strip> paragraph(Block.Paragraph paragraph) {
        double size = paragraph.small() ? SMALL : BODY;
        Colour colour = paragraph.small() ? Colours.FAINT_INK : Colours.INK;
        return lines(paragraph.text(), Typeface.REGULAR, size, colour, 0, 4);
    }

    /** A strip for each line. */
    private List<Strip> lines(String text, Typeface face, double size, Colour colour, double indent, double gap) {
        List<Strip> strips = new ArrayList<>();
        for (String line : TextLines.of(text, face, size, width - indent)) {
            strips.add(Strip.of(size * LEADING, strips.isEmpty() ? gap : 0,
                    (canvas, x, top) -> canvas.text(x + indent, top - size * RISE, line, face, size, colour)));
        }
        return strips;
    }

    private List<Strip> keyValues(Block.KeyValues values) {
        List<Strip> strips = new ArrayList<>();
        List<Block.Entry> entries = values.entries();
        int columns = width > 400 ? 2 : 1;
        double space = 18;
        double column = (width - (columns - 1) * space) / columns;
        int rows = (entries.size() + columns - 1) / columns;
        for (int r = 0; r < rows; r++) {
            List<EntrySetter> row = new ArrayList<>();
            for (int c = 0; c < columns && r + c * rows < entries.size(); c++) {
                row.add(new EntrySetter(entries.get(r + c * rows), column));
            }
            double height = row.stream().mapToDouble(EntrySetter::height).max().orElse(0);
            List<String> ids = row.stream().map(entry -> entry.entry.value().id()).filter(id -> !id.isEmpty()).toList();
            strips.add(Strip.of(height, r == 0 ? 5 : 0, (canvas, x, top) -> {
                for (int c = 0; c < row.size(); c++) {
                    row.get(c).paint(canvas, x + c * (column + space), top, height);
                }
            }).withIds(ids));
        }
        return strips;
    }

    /** One name with its value. */
    private static final class EntrySetter {
        private static final double SIZE = 8;
        private final Block.Entry entry;
        private final double width;
        private final List<String> label;
        private final List<String> value;

        EntrySetter(Block.Entry entry, double width) {
            this.entry = entry;
            this.width = width;
            double valueWidth = Math.min(Typeface.REGULAR.width(TextLines.printable(entry.value().text(),
                    Typeface.REGULAR), SIZE) + 1, width * 0.55);
            this.value = TextLines.of(entry.value().text(), Typeface.REGULAR, SIZE, valueWidth);
            this.label = TextLines.of(entry.label(), Typeface.REGULAR, SIZE, width - valueWidth - 8);
        }

        double height() {
            return Math.max(label.size(), value.size()) * SIZE * LEADING + 3;
        }

        void paint(Canvas canvas, double x, double top, double height) throws IOException {
            for (int i = 0; i < label.size(); i++) {
                canvas.text(x, top - SIZE * (RISE + i * LEADING), label.get(i), Typeface.REGULAR, SIZE,
                        Colours.FAINT_INK);
            }
            Colour colour = linkColour(entry.value().link());
            for (int i = 0; i < value.size(); i++) {
                double wide = Typeface.REGULAR.width(value.get(i), SIZE);
                canvas.text(x + width - wide, top - SIZE * (RISE + i * LEADING), value.get(i), Typeface.REGULAR,
                        SIZE, colour);
                canvas.link(x + width - wide, top - SIZE * i * LEADING, wide, SIZE * LEADING, entry.value().link());
            }
            canvas.line(x, top - height + 1, x + width, top - height + 1, RULE, 0.4);
        }
    }

    private List<Strip> figure(Block.Figure figure) {
        double scale = Math.min(1, width / figure.drawing().width());
        double height = figure.drawing().height() * scale + 3;
        List<Block.Cell> explained = figure.explained();
        List<Strip> strips = new ArrayList<>();
        strips.add(Strip.of(height, 8, (canvas, x, top) -> ShapePainter.paint(figure.drawing(), canvas, x, top, scale))
                .withIds(figure.findings().stream().map(Block.Cell::id).filter(id -> !id.isEmpty()).toList()));
        strips.addAll(linkedLines(figure.caption(), explained.size() == 1 ? explained.get(0).link() : ""));
        if (explained.size() > 1) {
            explained.forEach(finding -> strips.addAll(linkedLines("Working: " + finding.text(), finding.link())));
        }
        for (int i = 0; i < strips.size() - 1; i++) {
            strips.set(i, strips.get(i).keptWithNext());
        }
        return strips;
    }

    private List<Strip> linkedLines(String text, String link) {
        double size = SMALL + 0.5;
        List<Strip> strips = new ArrayList<>();
        for (String line : TextLines.of(text, Typeface.REGULAR, size, width)) {
            strips.add(Strip.of(size * LEADING, 0, (canvas, x, top) -> {
                canvas.text(x, top - size * RISE, line, Typeface.REGULAR, size, link.isEmpty() ? Colours.FAINT_INK
                        : LINK);
                canvas.link(x, top, Typeface.REGULAR.width(line, size), size * LEADING, link);
            }));
        }
        return strips;
    }

    private List<Strip> statement(Block.Statement statement) {
        String head = statement.tone().word() + (statement.title().isEmpty() ? "" : " \u00b7 " + statement.title());
        List<Line> lines = new ArrayList<>();
        add(lines, head, Typeface.BOLD, 8, toneColour(statement.tone()), 0, "");
        add(lines, statement.text(), Typeface.REGULAR, BODY, linkColour(statement.link()), 0, statement.link());
        statement.reasons().forEach(reason -> add(lines, "\u2013 " + reason, Typeface.REGULAR, 8, Colours.INK, 6, ""));
        return boxed(lines, statement.tone(), statement.id().isEmpty() ? List.of() : List.of(statement.id()));
    }

    private List<Strip> caution(Block.CautionBox caution) {
        String head = caution.tone().word() + (caution.about().isEmpty() ? "" : " \u00b7 " + caution.about());
        List<Line> lines = new ArrayList<>();
        add(lines, head, Typeface.BOLD, 8, toneColour(caution.tone()), 0, "");
        boolean one = caution.texts().size() == 1;
        caution.texts().forEach(text -> add(lines, one ? text : "\u2013 " + text, Typeface.REGULAR, one ? BODY : 8,
                Colours.INK, 0, ""));
        add(lines, caution.source() + " \u00b7 " + caution.code(), Typeface.REGULAR, SMALL, Colours.FAINT_INK, 0, "");
        return boxed(lines, caution.tone(), List.of());
    }

    /** A line of a box. */
    private record Line(String text, Typeface face, double size, Colour colour, double indent, String link) {
    }

    private void add(List<Line> lines, String text, Typeface face, double size, Colour colour, double indent,
            String link) {
        for (String line : TextLines.of(text, face, size, width - INDENT - 6 - indent)) {
            lines.add(new Line(line, face, size, colour, indent, link));
        }
    }

    /** Lines beside a coloured bar; the first two stay together, so do the last two. */
    private List<Strip> boxed(List<Line> lines, Block.Tone tone, List<String> ids) {
        Colour bar = toneColour(tone);
        Colour ground = bar.towards(Colour.WHITE, 0.93);
        List<Strip> strips = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            Line line = lines.get(i);
            boolean first = i == 0;
            boolean last = i == lines.size() - 1;
            double above = first ? 3 : 0;
            double height = line.size() * LEADING + above + (last ? 4 : 0);
            Strip strip = Strip.of(height, first ? 6 : 0, (canvas, x, top) -> {
                canvas.box(x, top, width, height, ground);
                canvas.box(x, top, BAR, height, bar);
                double left = x + INDENT + line.indent();
                canvas.text(left, top - above - line.size() * RISE, line.text(), line.face(), line.size(),
                        line.colour());
                canvas.link(left, top - above, line.face().width(line.text(), line.size()), line.size() * LEADING,
                        line.link());
            });
            boolean together = lines.size() <= 8 && !last || first || i == lines.size() - 2;
            strips.add(together && !last ? strip.keptWithNext() : strip);
        }
        strips.set(0, strips.get(0).withIds(ids));
        return strips;
    }

    private static Colour toneColour(Block.Tone tone) {
        return switch (tone) {
            case GOOD -> Colour.of(0x1f6247);
            case CONDITIONAL, WARNING -> Colour.of(0x8a5200);
            case BAD, DANGER -> Colour.of(0x9b1b1b);
            case INFO -> Colour.of(0x4a5560);
        };
    }

    private List<Strip> workings(Block.Workings workings) {
        double size = 7;
        List<Strip> strips = new ArrayList<>();
        for (String line : TextLines.of(workings.title(), Typeface.BOLD, 8, width)) {
            strips.add(Strip.of(8 * LEADING, strips.isEmpty() ? 7 : 0, (canvas, x, top) -> {
                canvas.text(x, top - 8 * RISE, line, Typeface.BOLD, 8, linkColour(workings.link()));
                canvas.link(x, top, Typeface.BOLD.width(line, 8), 8 * LEADING, workings.link());
            }).keptWithNext());
        }
        if (!workings.id().isEmpty()) {
            strips.set(0, strips.get(0).withIds(List.of(workings.id())));
        }
        for (Block.Step step : workings.steps()) {
            List<Strip> lines = new ArrayList<>(lines(step.meaning(), Typeface.REGULAR, size, Colours.INK, 0, 2.5));
            if (!step.formula().isEmpty()) {
                lines.addAll(lines(step.formula(), Typeface.REGULAR, size, Colours.WATER, 8, 0));
            }
            if (!step.inputs().isEmpty()) {
                lines.addAll(lines(step.inputs(), Typeface.REGULAR, size - 1, Colours.FAINT_INK, 8, 0));
            }
            if (!step.substituted().isEmpty() && !step.substituted().equals(step.formula())) {
                lines.addAll(lines("= " + step.substituted(), Typeface.REGULAR, size, Colours.INK, 8, 0));
            }
            if (!step.result().isEmpty()) {
                lines.addAll(lines("= " + step.result(), Typeface.BOLD, size, Colours.INK, 8, 0));
            }
            lines.addAll(lines(step.source(), Typeface.REGULAR, size - 1, Colours.FAINT_INK, 8, 0));
            for (int i = 0; i < lines.size(); i++) {
                strips.add(i < lines.size() - 1 && lines.size() <= 10 ? lines.get(i).keptWithNext() : lines.get(i));
            }
        }
        return strips;
    }

    private List<Strip> signatures(Block.SignatureSpace space) {
        List<Strip> strips = new ArrayList<>();
        for (String role : space.roles()) {
            strips.add(Strip.of(52, 0, (canvas, x, top) -> {
                canvas.line(x, top - 38, x + Math.min(width, 300), top - 38, Colours.INK, 0.6);
                canvas.text(x, top - 48, role + ", name, licence number, date", Typeface.REGULAR, 8, Colours.FAINT_INK);
            }).keptWithNext());
        }
        if (!strips.isEmpty()) {
            Strip last = strips.remove(strips.size() - 1);
            strips.add(Strip.of(last.height(), last.gap(), last.painter()));
        }
        return strips;
    }
}
