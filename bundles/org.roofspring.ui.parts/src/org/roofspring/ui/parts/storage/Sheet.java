package org.roofspring.ui.parts.storage;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

import de.siegmar.fastcsv.writer.CsvWriter;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.ValueWords;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Unit;
import org.roofspring.quantity.Units;
import org.roofspring.ui.session.FindingKey;

/**
 * The table twin of a plot: the same values in rows and columns, in the units they are shown in. The unit of a column
 * stands in its heading.
 */
public final class Sheet {
    private final FindingKey finding;
    private final FindingValue.Table table;
    private final Figures figures;
    private final Unit[] units;

    /**
     * @param finding whose workings explain the table
     * @param table   the values
     */
    Sheet(FindingKey finding, FindingValue.Table table, Figures figures) {
        this.finding = finding;
        this.table = table;
        this.figures = figures;
        units = new Unit[table.columns().size()];
        for (int column = 0; column < units.length; column++) {
            int place = column;
            units[column] = table.rows().stream().map(row -> row.get(place)).filter(Quantity.class::isInstance)
                    .map(cell -> figures.shown(((Quantity) cell).unit())).findFirst().orElse(null);
        }
    }

    public FindingKey finding() {
        return finding;
    }

    public int rows() {
        return table.rows().size();
    }

    public int columns() {
        return units.length;
    }

    /** Heading of a column, with its unit. */
    public String heading(int column) {
        return units[column] == null ? table.columns().get(column)
                : figures.title(table.columns().get(column), units[column]);
    }

    /** Whether a column holds numbers. */
    boolean numeric(int column) {
        return units[column] != null;
    }

    /** A cell as it is shown; empty where there is nothing. */
    public String text(int row, int column) {
        return switch (table.rows().get(row).get(column)) {
            case Quantity quantity when figures.shown(quantity.unit()) == units[column] ->
                figures.format().number(figures.number(quantity));
            case null, default -> ValueWords.ofCell(table.rows().get(row).get(column), figures.format());
        };
    }

    /** Comma-separated values at full precision, with a point for decimals and the units in the first line. */
    public String csv() {
        StringWriter text = new StringWriter();
        try (CsvWriter csv = CsvWriter.builder().build(text)) {
            List<String> headings = new ArrayList<>();
            for (int column = 0; column < units.length; column++) {
                boolean plain = units[column] == null || units[column] == Units.ONE;
                headings.add(table.columns().get(column) + (plain ? "" : " [" + units[column].symbol() + "]"));
            }
            csv.writeRecord(headings);
            for (List<Object> row : table.rows()) {
                csv.writeRecord(record(row));
            }
        } catch (IOException e) {
            throw new UncheckedIOException("text in memory cannot be written", e);
        }
        return text.toString();
    }

    private List<String> record(List<Object> row) {
        List<String> cells = new ArrayList<>();
        for (int column = 0; column < units.length; column++) {
            cells.add(switch (row.get(column)) {
                case null -> "";
                case Quantity quantity -> Double.toString(quantity.in(units[column]));
                case Object words -> words.toString();
            });
        }
        return cells;
    }
}
