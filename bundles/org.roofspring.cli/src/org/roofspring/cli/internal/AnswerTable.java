package org.roofspring.cli.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.UnaryOperator;

import org.roofspring.calc.Caution;
import org.roofspring.calc.Finding;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.Outcome;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.QuantityFormat;
import org.roofspring.quantity.Units;

/** Answers as a table to read on a terminal. */
final class AnswerTable {
    private static final int TEXT_WIDTH = 100;
    private static final int MOST_ROWS = 60;
    private static final Comparator<Caution> GRAVEST_FIRST = Comparator.comparing(Caution::severity).reversed();

    private AnswerTable() {
    }

    static String write(Outcome.Completed outcome) {
        List<String> lines = new ArrayList<>();
        addFindings(lines, outcome, QuantityFormat.metric(), "", UnaryOperator.identity());
        addCautions(lines, outcome.cautions(), QuantityFormat.metric());
        return String.join(System.lineSeparator(), lines);
    }

    /** @param names turns the id of an element into what people call it */
    static void addFindings(List<String> lines, Outcome.Completed outcome, QuantityFormat format, String indent, UnaryOperator<String> names) {
        List<Finding> shown = outcome.findings().stream().filter(finding -> !isSeries(finding.value())).toList();
        int width = shown.stream().filter(finding -> !(finding.value() instanceof FindingValue.Table)).mapToInt(finding -> label(finding, names).length()).max().orElse(0);
        for (Finding finding : shown) {
            if (finding.value() instanceof FindingValue.Table table) {
                lines.add(indent + label(finding, names));
                addTable(lines, table, format, indent + "  ");
            } else {
                lines.add(indent + pad(label(finding, names), width) + "  " + shown(finding.value(), format));
            }
        }
    }

    /** Series are for files and charts; a terminal is no place for decades of days. */
    private static boolean isSeries(FindingValue value) {
        return value instanceof FindingValue.Daily || value instanceof FindingValue.Curve;
    }

    private static String label(Finding finding, UnaryOperator<String> names) {
        return finding.elementId() == null ? finding.title() : names.apply(finding.elementId()) + ": " + lowered(finding.title());
    }

    /** The title within a line: its first letter small, unless it is an abbreviation. */
    private static String lowered(String title) {
        boolean abbreviation = title.length() > 1 && Character.isUpperCase(title.charAt(1));
        return abbreviation ? title : Character.toLowerCase(title.charAt(0)) + title.substring(1);
    }

    private static String shown(FindingValue value, QuantityFormat format) {
        return switch (value) {
            case FindingValue.Number number -> format.format(readable(number.quantity()));
            case FindingValue.Flag flag -> flag.value() ? "yes" : "no";
            case FindingValue.Text text -> text.text();
            case FindingValue.Verdict verdict -> verdict.reasons().isEmpty() ? verdict.text()
                    : verdict.text() + ": " + String.join("; ", verdict.reasons());
            case FindingValue.Daily daily -> daily.days() + " days from " + daily.firstDay();
            case FindingValue.Curve curve -> curve.x().length + " points";
            case FindingValue.Table table -> table.rows().size() + " rows";
        };
    }

    /** Cubic metres a second are what figures are stated in, and too large a unit to read a house's flows in. */
    private static Quantity readable(Quantity quantity) {
        return quantity.unit() == Units.M3_PER_S ? quantity.as(Units.L_PER_S) : quantity;
    }

    private static void addTable(List<String> lines, FindingValue.Table table, QuantityFormat format, String indent) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(table.columns());
        table.rows().stream().limit(MOST_ROWS).forEach(row -> rows.add(row.stream().map(cell -> switch (cell) {
            case Quantity quantity -> format.format(readable(quantity));
            case Boolean flag -> flag ? "yes" : "no";
            case null -> "";
            default -> cell.toString();
        }).toList()));
        int[] widths = new int[table.columns().size()];
        rows.forEach(row -> {
            for (int i = 0; i < widths.length; i++) {
                widths[i] = Math.max(widths[i], row.get(i).length());
            }
        });
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder(indent);
            for (int i = 0; i < widths.length; i++) {
                line.append(pad(row.get(i), widths[i])).append("  ");
            }
            lines.add(line.toString().stripTrailing());
        }
        if (table.rows().size() > MOST_ROWS) {
            lines.add(indent + "... " + (table.rows().size() - MOST_ROWS) + " more rows with --json");
        }
    }

    static void addCautions(List<String> lines, List<Caution> cautions, QuantityFormat format) {
        if (cautions.isEmpty()) {
            return;
        }
        lines.add("");
        lines.add("Cautions");
        for (Caution caution : cautions.stream().sorted(GRAVEST_FIRST).toList()) {
            String mark = caution.severity().word().toUpperCase(java.util.Locale.ROOT);
            List<String> wrapped = wrap(caution.text(format), TEXT_WIDTH - 10);
            for (int i = 0; i < wrapped.size(); i++) {
                lines.add("  " + pad(i == 0 ? mark : "", 8) + wrapped.get(i));
            }
        }
    }

    static List<String> wrap(String text, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ")) {
            if (line.length() > 0 && line.length() + 1 + word.length() > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() > 0 ? " " : "").append(word);
        }
        lines.add(line.toString());
        return lines;
    }

    private static String pad(String text, int width) {
        return text + " ".repeat(Math.max(0, width - text.length()));
    }
}
