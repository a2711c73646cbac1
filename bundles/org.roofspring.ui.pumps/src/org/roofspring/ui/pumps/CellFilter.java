package org.roofspring.ui.pumps;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.DoublePredicate;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Unit;
import org.roofspring.quantity.UnitSystem;

/**
 * What is typed over a column to see only some rows: words that the cell holds, or a comparison such as {@code >1.5},
 * {@code <=20} or {@code 1..2} with its numbers, in the unit that is shown.
 */
final class CellFilter {
    static final String ACCEPTED = "words, or for numbers such as >1.5, <=20 or 1..2";
    private static final String NUMBER = "([+-]?(?:\\d+\\.?\\d*|\\.\\d+))";
    private static final Pattern COMPARISON = Pattern.compile("(>=|<=|>|<|=)?\\s*" + NUMBER);
    private static final Pattern RANGE = Pattern.compile(NUMBER + "\\s*\\.\\.\\s*" + NUMBER);

    private CellFilter() {
    }

    /**
     * Which rows are shown.
     *
     * @throws IllegalArgumentException with one sentence when the text is no such condition
     */
    static Predicate<BoardRow> of(Column column, String typed, UnitSystem system) {
        String text = typed.strip().replace('\u2212', '-');
        if (text.isEmpty()) {
            return row -> true;
        }
        if (!column.isNumber()) {
            String wanted = text.toLowerCase(Locale.ROOT);
            return row -> row.text(column).toLowerCase(Locale.ROOT).contains(wanted);
        }
        DoublePredicate condition = condition(column, text);
        Unit unit = column.unit(system);
        return row -> {
            OptionalDouble value = row.number(column).map((Quantity number) -> OptionalDouble.of(number.in(unit)))
                    .orElse(OptionalDouble.empty());
            return value.isPresent() && condition.test(value.getAsDouble());
        };
    }

    private static DoublePredicate condition(Column column, String text) {
        Matcher range = RANGE.matcher(text);
        if (range.matches()) {
            double from = Double.parseDouble(range.group(1));
            double to = Double.parseDouble(range.group(2));
            return value -> value >= from && value <= to;
        }
        Matcher comparison = COMPARISON.matcher(text);
        if (!comparison.matches()) {
            throw new IllegalArgumentException("the filter \"" + typedShort(text) + "\" over " + column.title()
                    + " is not understood; a comparison such as >1.5, <=20 or 1..2 is accepted");
        }
        double bound = Double.parseDouble(comparison.group(2));
        String sign = comparison.group(1) == null ? ">=" : comparison.group(1);
        return switch (sign) {
            case ">" -> value -> value > bound;
            case "<" -> value -> value < bound;
            case "<=" -> value -> value <= bound;
            case "=" -> value -> value == bound;
            default -> value -> value >= bound;
        };
    }

    private static String typedShort(String text) {
        return text.length() > 20 ? text.substring(0, 20) + "\u2026" : text;
    }
}
