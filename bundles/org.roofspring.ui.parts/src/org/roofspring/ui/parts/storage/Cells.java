package org.roofspring.ui.parts.storage;

import org.roofspring.calc.FindingValue;
import org.roofspring.quantity.Quantity;

/** The cells of a table by the names of their columns. */
record Cells(FindingValue.Table table) {

    int size() {
        return table.rows().size();
    }

    /** A cell that holds a quantity, or null. */
    Quantity quantity(int row, String column) {
        return (Quantity) cell(row, column);
    }

    String text(int row, String column) {
        return (String) cell(row, column);
    }

    boolean flag(int row, String column) {
        return (Boolean) cell(row, column);
    }

    private Object cell(int row, String column) {
        int place = table.columns().indexOf(column);
        if (place < 0) {
            throw new IllegalStateException("the table has no column " + column + " but " + table.columns());
        }
        return table.rows().get(row).get(place);
    }
}
