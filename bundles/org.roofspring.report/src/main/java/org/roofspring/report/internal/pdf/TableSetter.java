package org.roofspring.report.internal.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.roofspring.drawing.Colour;
import org.roofspring.drawing.Colours;
import org.roofspring.drawing.Typeface;
import org.roofspring.report.Block;
import org.roofspring.report.Block.Cell;

/** Sets tables: columns as wide as they need to be, cells wrapped, the head repeated on every page. */
final class TableSetter {
    private static final double SIZE = 7.5;
    private static final double SMALLEST = 4.8;
    private static final double PADDING = 3.5;
    private static final double LINE = SIZE * Typesetter.LEADING;
    /** A longer word may be cut. */
    private static final double LONG_WORD = 130;
    /** Taller rows are cut at a line, so that they fit on any page. */
    private static final int LINES_AT_ONCE = 30;
    private static final int LONG_TABLE = 12;
    /** Between the parts of a table that is set beside itself. */
    private static final double SPACE = 24;
    private static final Colour RULE = Colour.of(0xd5dbe0);

    private final double width;

    TableSetter(double width) {
        this.width = width;
    }

    List<Strip> strips(Block.Table table) {
        double[] least = least(table);
        double needed = Arrays.stream(least).sum();
        // a table that is too wide is set wider than the page and painted smaller
        double scale = Math.max(SMALLEST / SIZE, Math.min(1, width / needed));
        double[] columns = columns(table, least, width / scale);
        List<Strip> strips = new ArrayList<>();
        if (!table.caption().isEmpty()) {
            strips.addAll(caption(table));
        }
        int beside = beside(table, columns);
        if (beside > 1) {
            strips.addAll(besideEachOther(table, columns, beside));
        } else {
            Strip head = scaled(head(table, columns), scale);
            strips.add(head.keptWithNext());
            for (List<Cell> row : table.shownRows()) {
                for (Strip piece : row(table, row, columns)) {
                    strips.add(scaled(piece, scale).under(head));
                }
            }
        }
        if (!table.shownNote().isEmpty()) {
            for (String line : TextLines.of(table.shownNote(), Typeface.REGULAR, Typesetter.SMALL, width)) {
                strips.add(Strip.of(Typesetter.SMALL * Typesetter.LEADING, 2, (canvas, x, top) -> canvas.text(x,
                        top - Typesetter.SMALL * Typesetter.RISE, line, Typeface.REGULAR, Typesetter.SMALL,
                                Colours.FAINT_INK)));
            }
        }
        if (!table.id().isEmpty()) {
            strips.set(0, strips.get(0).withIds(List.of(table.id())));
        }
        return strips;
    }

    /** In how many parts a long and narrow table is set beside itself. */
    private int beside(Block.Table table, double[] columns) {
        double total = Arrays.stream(columns).sum();
        int fit = (int) ((width + SPACE) / (total + SPACE));
        return table.shownRows().size() < LONG_TABLE ? 1 : Math.min(3, fit);
    }

    private static List<Strip> besideEachOther(Block.Table table, double[] columns, int parts) {
        double step = Arrays.stream(columns).sum() + SPACE;
        Strip head = head(table, columns);
        List<Strip> strips = new ArrayList<>();
        strips.add(Strip.of(head.height(), head.gap(), (canvas, x, top) -> {
            for (int p = 0; p < parts; p++) {
                head.painter().paint(canvas, x + p * step, top);
            }
        }).keptWithNext());
        List<List<Cell>> rows = table.shownRows();
        int each = Math.ceilDiv(rows.size(), parts);
        for (int r = 0; r < each; r++) {
            List<Strip> line = new ArrayList<>();
            for (int p = 0; p < parts && r + p * each < rows.size(); p++) {
                line.add(row(table, rows.get(r + p * each), columns).get(0));
            }
            double height = line.stream().mapToDouble(Strip::height).max().orElse(0);
            List<String> ids = line.stream().flatMap(strip -> strip.ids().stream()).toList();
            Strip strip = Strip.of(height, 0, (canvas, x, top) -> {
                for (int p = 0; p < line.size(); p++) {
                    line.get(p).painter().paint(canvas, x + p * step, top);
                }
            }).withIds(ids);
            // read downwards, so that all of it must be on one page
            strips.add(r < each - 1 ? strip.keptWithNext() : strip);
        }
        return strips;
    }

    private static Strip scaled(Strip strip, double scale) {
        return scale == 1 ? strip : new Strip(strip.height() * scale, strip.gap(), strip.keepWithNext(),
                strip.header(), strip.ids(),
                (canvas, x, top) -> canvas.scaled(scale, x, top, strip.painter()));
    }

    private List<Strip> caption(Block.Table table) {
        List<Strip> strips = new ArrayList<>();
        double size = 8.5;
        for (String line : TextLines.of(table.caption(), Typeface.BOLD, size, width)) {
            strips.add(Strip.of(size * Typesetter.LEADING, strips.isEmpty() ? 9 : 0, (canvas, x, top) -> {
                canvas.text(x, top - size * Typesetter.RISE, line, Typeface.BOLD, size,
                        Typesetter.linkColour(table.link()));
                canvas.link(x, top, Typeface.BOLD.width(line, size), size * Typesetter.LEADING, table.link());
            }).keptWithNext());
        }
        return strips;
    }

    /** The widest word of each column, with its padding. */
    private static double[] least(Block.Table table) {
        double[] least = new double[table.columns().size()];
        for (int c = 0; c < least.length; c++) {
            double widest = TextLines.widestWord(table.columns().get(c).title(), Typeface.BOLD, SIZE);
            for (List<Cell> row : table.shownRows()) {
                widest = Math.max(widest, TextLines.widestWord(row.get(c).text(), Typeface.REGULAR, SIZE));
            }
            least[c] = Math.min(widest, LONG_WORD) + 2 * PADDING;
        }
        return least;
    }

    /** What each column gets: what it wants where that fits, else its least and a share of what is left. */
    private static double[] columns(Block.Table table, double[] least, double available) {
        double[] wanted = new double[least.length];
        for (int c = 0; c < least.length; c++) {
            double widest = Typeface.BOLD.width(TextLines.printable(table.columns().get(c).title(), Typeface.BOLD),
                    SIZE);
            for (List<Cell> row : table.shownRows()) {
                widest = Math.max(widest, Typeface.REGULAR.width(TextLines.printable(row.get(c).text(),
                        Typeface.REGULAR), SIZE));
            }
            // a hair more, so that rounding never wraps what just fits
            wanted[c] = Math.max(least[c], widest + 2 * PADDING + 0.1);
        }
        if (Arrays.stream(wanted).sum() <= available) {
            return wanted;
        }
        double sum = Arrays.stream(least).sum();
        double[] columns = least.clone();
        if (sum >= available) {
            for (int c = 0; c < columns.length; c++) {
                columns[c] = least[c] * available / sum;
            }
            return columns;
        }
        // the square root keeps one very long column from starving the others
        double[] greed = new double[least.length];
        for (int c = 0; c < greed.length; c++) {
            greed[c] = Math.sqrt(wanted[c] - least[c]);
        }
        spread(columns, wanted, greed, available - sum);
        return columns;
    }

    /** Shares out what is left by greed; nobody gets more than wanted. */
    private static void spread(double[] columns, double[] wanted, double[] greed, double left) {
        double rest = left;
        for (int round = 0; round < columns.length && rest > 0.01; round++) {
            double all = Arrays.stream(greed).sum();
            if (all <= 0) {
                return;
            }
            double given = 0;
            for (int c = 0; c < columns.length; c++) {
                double share = Math.min(rest * greed[c] / all, wanted[c] - columns[c]);
                columns[c] += share;
                given += share;
                greed[c] = wanted[c] - columns[c] < 0.01 ? 0 : greed[c];
            }
            rest -= given;
        }
    }

    private static Strip head(Block.Table table, double[] columns) {
        List<List<String>> cells = new ArrayList<>();
        for (int c = 0; c < columns.length; c++) {
            cells.add(TextLines.of(table.columns().get(c).title(), Typeface.BOLD, SIZE, columns[c] - 2 * PADDING));
        }
        int lines = cells.stream().mapToInt(List::size).max().orElse(1);
        double height = lines * LINE + 4;
        double total = Arrays.stream(columns).sum();
        return Strip.of(height, 3, (canvas, x, top) -> {
            double left = x;
            for (int c = 0; c < columns.length; c++) {
                List<String> cell = cells.get(c);
                for (int i = 0; i < cell.size(); i++) {
                    double base = top - 1 - (lines - cell.size() + i) * LINE - SIZE * Typesetter.RISE;
                    place(canvas, cell.get(i), Typeface.BOLD, Colours.INK, left, columns[c], base,
                            table.columns().get(c).number());
                }
                left += columns[c];
            }
            canvas.line(x, top - height + 0.8, x + total, top - height + 0.8, Colours.FAINT_INK, 0.9);
        });
    }

    private static List<Strip> row(Block.Table table, List<Cell> row, double[] columns) {
        List<List<String>> cells = new ArrayList<>();
        for (int c = 0; c < columns.length; c++) {
            cells.add(TextLines.of(row.get(c).text(), Typeface.REGULAR, SIZE, columns[c] - 2 * PADDING));
        }
        int lines = cells.stream().mapToInt(List::size).max().orElse(1);
        List<String> ids = row.stream().map(Cell::id).filter(id -> !id.isEmpty()).toList();
        double total = Arrays.stream(columns).sum();
        List<Strip> strips = new ArrayList<>();
        for (int from = 0; from < lines; from += LINES_AT_ONCE) {
            int first = from;
            int until = Math.min(lines, from + LINES_AT_ONCE);
            boolean last = until == lines;
            double height = (until - from) * LINE + (last ? 3 : 0) + (first == 0 ? 1.5 : 0);
            strips.add(Strip.of(height, 0, (canvas, x, top) -> {
                double start = top - (first == 0 ? 1.5 : 0);
                double left = x;
                for (int c = 0; c < columns.length; c++) {
                    List<String> cell = cells.get(c);
                    for (int i = first; i < Math.min(until, cell.size()); i++) {
                        paintLine(canvas, row.get(c), cell.get(i), left, columns[c], start - (i - first) * LINE,
                                table.columns().get(c).number());
                    }
                    left += columns[c];
                }
                if (last) {
                    canvas.line(x, top - height + 0.6, x + total, top - height + 0.6, RULE, 0.4);
                }
            }));
        }
        strips.set(0, strips.get(0).withIds(ids));
        return strips;
    }

    private static void paintLine(Canvas canvas, Cell cell, String line, double left, double width, double top,
            boolean right)
            throws IOException {
        double at = place(canvas, line, Typeface.REGULAR, Typesetter.linkColour(cell.link()), left, width,
                top - SIZE * Typesetter.RISE, right);
        canvas.link(at, top, Typeface.REGULAR.width(line, SIZE), LINE, cell.link());
    }

    private static double place(Canvas canvas, String line, Typeface face, Colour colour, double left, double width,
            double base,
            boolean right) throws IOException {
        double at = right ? left + width - PADDING - face.width(line, SIZE) : left + PADDING;
        canvas.text(at, base, line, face, SIZE, colour);
        return at;
    }
}
