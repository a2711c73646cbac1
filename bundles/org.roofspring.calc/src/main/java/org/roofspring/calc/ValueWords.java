package org.roofspring.calc;

import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.QuantityFormat;

/** Values of findings in a few words, for a cell or a heading: the same on screen, in a report and on a terminal. */
public final class ValueWords {
    private ValueWords() {
    }

    /** Numbers in the reader's units; series and tables by their size. */
    public static String of(FindingValue value, QuantityFormat format) {
        return switch (value) {
            case FindingValue.Number number -> format.format(number.quantity());
            case FindingValue.Flag flag -> yesNo(flag.value());
            case FindingValue.Text text -> text.text();
            case FindingValue.Verdict verdict -> verdict.text();
            case FindingValue.Daily daily -> format.number(daily.days()) + " days";
            case FindingValue.Curve curve -> format.number(curve.x().length) + " points";
            case FindingValue.Table table -> format.number(table.rows().size()) + (table.rows().size() == 1 ? " row" : " rows");
        };
    }

    /** A cell of a {@link FindingValue.Table}; empty where there is nothing. */
    public static String ofCell(Object cell, QuantityFormat format) {
        return switch (cell) {
            case Quantity quantity -> format.format(quantity);
            case Boolean flag -> yesNo(flag);
            case null -> "";
            default -> cell.toString();
        };
    }

    /** A flag. */
    public static String yesNo(boolean flag) {
        return flag ? "yes" : "no";
    }
}
