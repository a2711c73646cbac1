package org.roofspring.cli.internal;

import java.util.List;
import java.util.Optional;

import org.roofspring.calc.FindingValue;
import org.roofspring.quantity.Quantity;

/** Findings as comma-separated values, at full precision, with units in their own column or in the header. */
final class CsvText {
    private CsvText() {
    }

    /** A single value; the unit is empty where it has none. */
    record Value(String number, String unit) {
    }

    /** Value and unit of a finding that is one value; empty for series and tables. */
    static Optional<Value> value(FindingValue value) {
        return switch (value) {
            case FindingValue.Number number -> {
                Quantity written = PlainShare.of(number.quantity());
                yield Optional.of(new Value(Double.toString(written.value()), written.unit().symbol()));
            }
            case FindingValue.Flag flag -> Optional.of(new Value(Boolean.toString(flag.value()), ""));
            case FindingValue.Text text -> Optional.of(new Value(text.text(), ""));
            case FindingValue.Verdict verdict -> Optional.of(new Value(verdict.text(), ""));
            default -> Optional.empty();
        };
    }

    /** A table; the unit of a column stands in its header. */
    static String table(FindingValue.Table table) {
        String[] header = new String[table.columns().size()];
        for (int i = 0; i < header.length; i++) {
            int column = i;
            String unit = table.rows().stream().map(row -> row.get(column)).filter(Quantity.class::isInstance)
                    .map(cell -> PlainShare.of((Quantity) cell).unit().symbol()).findFirst().orElse("");
            header[i] = table.columns().get(i) + (unit.isEmpty() || unit.equals("1") ? "" : " [" + unit + "]");
        }
        StringBuilder csv = new StringBuilder(row(header));
        for (List<Object> row : table.rows()) {
            csv.append(row(row.stream().map(cell -> switch (cell) {
                case Quantity quantity -> Double.toString(PlainShare.of(quantity).value());
                case null -> "";
                default -> cell.toString();
            }).toArray(String[]::new)));
        }
        return csv.toString();
    }

    /** One line with its line feed; a cell is quoted where it must be. */
    static String row(String... cells) {
        StringBuilder row = new StringBuilder();
        for (int i = 0; i < cells.length; i++) {
            String cell = cells[i];
            boolean quoted = cell.contains(",") || cell.contains("\"") || cell.contains("\n");
            row.append(i == 0 ? "" : ",").append(quoted ? "\"" + cell.replace("\"", "\"\"") + "\"" : cell);
        }
        return row.append('\n').toString();
    }
}
