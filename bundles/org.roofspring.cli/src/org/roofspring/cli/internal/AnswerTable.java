package org.roofspring.cli.internal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.UnaryOperator;

import org.roofspring.calc.Caution;
import org.roofspring.calc.Finding;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.ValueWords;
import org.roofspring.quantity.QuantityFormat;

/** Answers as a table to read on a terminal. */
final class AnswerTable {
    private static final int TEXT_WIDTH = 100;
    private static final int MOST_ROWS = 60;
    private static final int WIDEST_LABEL = 60;
    private static final Comparator<Caution> GRAVEST_FIRST = Comparator.comparing(Caution::severity).reversed();

    private AnswerTable() {
    }

    /** @param names turns the id of an element into what people call it */
    static String write(Outcome.Completed outcome, UnaryOperator<String> names) {
        List<String> lines = new ArrayList<>();
        addFindings(lines, outcome, QuantityFormat.metric(), "", names);
        addCautions(lines, outcome.cautions(), QuantityFormat.metric());
        return String.join(System.lineSeparator(), lines);
    }

    /** @param names turns the id of an element into what people call it */
    static void addFindings(List<String> lines, Outcome.Completed outcome, QuantityFormat format, String indent, UnaryOperator<String> names) {
        List<Finding> shown = outcome.findings().stream().filter(finding -> !isSeries(finding.value())).toList();
        int widest = shown.stream().filter(finding -> !(finding.value() instanceof FindingValue.Table))
                .mapToInt(finding -> label(finding, names).length()).max().orElse(0);
        int width = Math.min(widest, WIDEST_LABEL);
        for (Finding finding : shown) {
            if (finding.value() instanceof FindingValue.Table table) {
                lines.add(indent + label(finding, names));
                addTable(lines, table, format, indent + "  ");
            } else {
                String label = label(finding, names);
                String value = shown(finding.value(), format);
                if (label.length() <= width) {
                    addHanging(lines, indent + pad(label, width) + "  ", value);
                } else {
                    lines.add(indent + label);
                    addHanging(lines, indent + " ".repeat(width) + "  ", value);
                }
                if (finding.value() instanceof FindingValue.Verdict verdict) {
                    verdict.reasons().forEach(reason -> addHanging(lines, indent + "  - ", reason));
                }
            }
        }
    }

    /** A sentence in lines that fit, the later ones under the first word. */
    private static void addHanging(List<String> lines, String head, String text) {
        List<String> wrapped = wrap(text, TEXT_WIDTH - head.length());
        for (int i = 0; i < wrapped.size(); i++) {
            lines.add((i == 0 ? head : " ".repeat(head.length())) + wrapped.get(i));
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
        return value instanceof FindingValue.Daily daily ? daily.days() + " days from " + daily.firstDay()
                : ValueWords.of(value, format);
    }

    private static void addTable(List<String> lines, FindingValue.Table table, QuantityFormat format, String indent) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(table.columns());
        table.rows().stream().limit(MOST_ROWS).forEach(row -> rows.add(row.stream().map(cell -> ValueWords.ofCell(cell, format)).toList()));
        int[] widths = widths(rows, TEXT_WIDTH - indent.length());
        for (List<String> row : rows) {
            addRow(lines, row, widths, indent);
        }
        if (table.rows().size() > MOST_ROWS) {
            lines.add(indent + "... " + (table.rows().size() - MOST_ROWS) + " more rows with --json");
        }
    }

    /** As wide as the widest cell or, where that does not fit, less of the widest; a word is not broken. */
    private static int[] widths(List<List<String>> rows, int available) {
        int[] widths = new int[rows.get(0).size()];
        int[] words = new int[widths.length];
        rows.forEach(row -> {
            for (int i = 0; i < widths.length; i++) {
                widths[i] = Math.max(widths[i], row.get(i).length());
                words[i] = Arrays.stream(row.get(i).split(" ")).mapToInt(String::length).reduce(words[i], Math::max);
            }
        });
        int over = Arrays.stream(widths).sum() + 2 * (widths.length - 1) - available;
        while (over > 0) {
            int widest = -1;
            for (int i = 0; i < widths.length; i++) {
                boolean canGive = widths[i] > words[i];
                widest = canGive && (widest < 0 || widths[i] > widths[widest]) ? i : widest;
            }
            if (widest < 0) {
                break;
            }
            widths[widest]--;
            over--;
        }
        return widths;
    }

    /** A row whose long cells go on in the lines below. */
    private static void addRow(List<String> lines, List<String> row, int[] widths, String indent) {
        List<List<String>> cells = new ArrayList<>();
        for (int i = 0; i < widths.length; i++) {
            cells.add(wrap(row.get(i), Math.max(1, widths[i])));
        }
        int height = cells.stream().mapToInt(List::size).max().orElse(0);
        for (int k = 0; k < height; k++) {
            StringBuilder line = new StringBuilder(indent);
            for (int i = 0; i < widths.length; i++) {
                line.append(pad(k < cells.get(i).size() ? cells.get(i).get(k) : "", widths[i])).append("  ");
            }
            lines.add(line.toString().stripTrailing());
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
