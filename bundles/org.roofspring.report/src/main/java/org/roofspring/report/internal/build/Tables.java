package org.roofspring.report.internal.build;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Unit;
import org.roofspring.report.Block;
import org.roofspring.report.Block.Cell;
import org.roofspring.report.Block.Column;

/**
 * Tables of values as tables to read: the unit goes into the head of a column where it is the same in all its cells,
 * and
 * a table with many columns and few rows is turned on its side.
 */
final class Tables {
    /** More columns than a page of paper holds in a readable size. */
    private static final int MANY_COLUMNS = 8;
    private static final int ROWS_TO_TURN = 15;
    private static final int TURNED_AT_ONCE = 5;
    /** A longer table is shown by its beginning; whoever needs all of it turns to the file. */
    private static final int ROWS_SHOWN = 60;
    private static final int ROWS_OF_A_LONG_TABLE = 15;

    private final Words words;

    Tables(Words words) {
        this.words = words;
    }

    /**
     * One table, or several where it had to be turned and split.
     *
     * @param id      of the first
     * @param rows    values in the order of the columns; a {@link Cell} is taken as it is
     * @param link    of the caption
     */
    List<Block> of(String id, String caption, List<String> columns, List<List<Object>> rows, String note, String link) {
        List<Column> heads = new ArrayList<>();
        List<List<Cell>> cells = new ArrayList<>();
        rows.forEach(row -> cells.add(new ArrayList<>()));
        for (int c = 0; c < columns.size(); c++) {
            addColumn(columns.get(c), column(rows, c), heads, cells);
        }
        if (heads.size() > MANY_COLUMNS && rows.size() <= ROWS_TO_TURN && !rows.isEmpty()) {
            return turned(id, caption, heads, cells, note, link);
        }
        return List.of(new Block.Table(id, caption, heads, cells, rows.size() <= ROWS_SHOWN ? rows.size()
                : ROWS_OF_A_LONG_TABLE, note, link));
    }

    private static List<Object> column(List<List<Object>> rows, int index) {
        List<Object> values = new ArrayList<>();
        rows.forEach(row -> values.add(row.get(index)));
        return values;
    }

    private void addColumn(String title, List<Object> values, List<Column> heads, List<List<Cell>> cells) {
        Unit unit = commonUnit(values);
        String symbol = unit == null ? "" : words.symbol(unit);
        boolean numbers = unit != null || allMatch(values, v -> v instanceof Quantity || v instanceof Number);
        heads.add(new Column(symbol.isEmpty() ? title : title + " [" + symbol + "]", numbers));
        for (int r = 0; r < values.size(); r++) {
            Object value = values.get(r);
            cells.get(r).add(value instanceof Cell cell ? cell
                    : new Cell(unit != null && value instanceof Quantity q ? words.number(q) : words.of(value)));
        }
    }

    /** The unit that all quantities of a column are shown in; null where they differ or something else stands there. */
    private Unit commonUnit(List<Object> values) {
        Unit common = null;
        for (Object value : values) {
            if (value instanceof Quantity quantity) {
                Unit unit = words.shownUnit(quantity);
                if (common != null && common != unit) {
                    return null;
                }
                common = unit;
            } else if (value != null) {
                return null;
            }
        }
        return common;
    }

    private static boolean allMatch(List<Object> values, Predicate<Object> kind) {
        return values.stream().anyMatch(v -> v != null) && values.stream().allMatch(v -> v == null || kind.test(v));
    }

    /** How many of {@code count} go together so that parts of at most {@code most} are about equal. */
    static int evenly(int count, int most) {
        int parts = Math.ceilDiv(count, most);
        return Math.ceilDiv(count, Math.max(1, parts));
    }

    private static List<Block> turned(String id, String caption, List<Column> heads, List<List<Cell>> cells,
            String note,
            String link) {
        List<Block> parts = new ArrayList<>();
        int atOnce = evenly(cells.size(), TURNED_AT_ONCE);
        for (int from = 0; from < cells.size(); from += atOnce) {
            List<List<Cell>> part = cells.subList(from, Math.min(cells.size(), from + atOnce));
            List<Column> columns = new ArrayList<>();
            columns.add(new Column(heads.get(0).title(), false));
            part.forEach(row -> columns.add(new Column(row.get(0).text(), false)));
            List<List<Cell>> rows = new ArrayList<>();
            for (int c = 1; c < heads.size(); c++) {
                List<Cell> row = new ArrayList<>();
                row.add(new Cell(heads.get(c).title()));
                for (List<Cell> old : part) {
                    row.add(old.get(c));
                }
                if (row.subList(1, row.size()).stream().anyMatch(cell -> !cell.text().isEmpty()
                        || !cell.id().isEmpty())) {
                    rows.add(row);
                }
            }
            boolean first = from == 0;
            String partId = first || id.isEmpty() ? first ? id : "" : id + "+" + from / atOnce;
            parts.add(new Block.Table(partId, first ? caption : caption + ", continued", columns, rows,
                    Integer.MAX_VALUE,
                    from + atOnce >= cells.size() ? note : "", first ? link : ""));
        }
        return parts;
    }
}
