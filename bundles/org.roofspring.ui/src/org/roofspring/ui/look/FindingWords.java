package org.roofspring.ui.look;

import java.util.Locale;

import org.roofspring.calc.FindingValue;
import org.roofspring.quantity.QuantityFormat;

/** A finding's value in a few words, for a cell or a heading. */
public final class FindingWords {
    private FindingWords() {
    }

    /** Numbers in the reader's units; series and tables by their size. */
    public static String of(FindingValue value, QuantityFormat format) {
        return switch (value) {
            case FindingValue.Number number -> format.format(number.quantity());
            case FindingValue.Flag flag -> flag.value() ? "yes" : "no";
            case FindingValue.Text text -> text.text();
            case FindingValue.Verdict verdict -> verdict.level().name().toLowerCase(Locale.ROOT) + ": " + verdict.text();
            case FindingValue.Daily daily -> format.number(daily.days()) + " days";
            case FindingValue.Curve curve -> format.number(curve.x().length) + " points";
            case FindingValue.Table table -> format.number(table.rows().size()) + (table.rows().size() == 1 ? " row" : " rows");
        };
    }
}
