package org.roofspring.ui.look;

import org.roofspring.calc.FindingValue;
import org.roofspring.quantity.QuantityFormat;

/** A finding's value in a few words, for a cell or a heading. */
public final class FindingWords {
    /** Characters of a value that a column of findings shows. */
    public static final int BRIEF = 34;

    private FindingWords() {
    }

    /** Numbers in the reader's units; series and tables by their size. */
    public static String of(FindingValue value, QuantityFormat format) {
        return switch (value) {
            case FindingValue.Number number -> format.format(number.quantity());
            case FindingValue.Flag flag -> flag.value() ? "yes" : "no";
            case FindingValue.Text text -> text.text();
            case FindingValue.Verdict verdict -> verdict.text();
            case FindingValue.Daily daily -> format.number(daily.days()) + " days";
            case FindingValue.Curve curve -> format.number(curve.x().length) + " points";
            case FindingValue.Table table -> format.number(table.rows().size()) + (table.rows().size() == 1 ? " row" : " rows");
        };
    }

    /** Words short enough for a column, ended at a word by an ellipsis where there are more. */
    public static String brief(String words) {
        if (words.length() <= BRIEF) {
            return words;
        }
        int end = words.lastIndexOf(' ', BRIEF - 1);
        return words.substring(0, end < BRIEF / 2 ? BRIEF - 1 : end) + "\u2026";
    }
}
