package org.roofspring.drawing.chart;

import java.util.List;
import java.util.Objects;

/**
 * Cells shaded by their value, such as shortage by month and year.
 *
 * @param title       what it shows
 * @param description what there is to see, for those who cannot; may be empty
 * @param columns     labels below; an empty label is left out
 * @param rows        labels at the left
 * @param values      by row and column; what is not a number stays blank
 * @param unit        of the values, as shown beside the scale
 */
public record HeatGrid(String title, String description, List<String> columns, List<String> rows, double[][] values,
        String unit) {
    public HeatGrid {
        Objects.requireNonNull(title);
        Objects.requireNonNull(description);
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
        Objects.requireNonNull(unit);
        if (columns.isEmpty() || rows.isEmpty() || values.length != rows.size()) {
            throw new IllegalArgumentException("a grid needs a row of values for each of its " + rows.size() + " rows");
        }
        for (double[] row : values) {
            if (row.length != columns.size()) {
                throw new IllegalArgumentException("a row of the grid has " + row.length + " values for "
                        + columns.size() + " columns");
            }
        }
    }
}
