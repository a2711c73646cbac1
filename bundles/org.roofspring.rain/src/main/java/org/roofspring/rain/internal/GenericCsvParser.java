package org.roofspring.rain.internal;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.roofspring.rain.DayMark;
import org.roofspring.rain.DepthUnit;
import org.roofspring.rain.ReadOptions;

/** Reads a CSV with a column of dates and a column of depths; finds what is not told. */
public final class GenericCsvParser {
    private static final List<String> DATE_NAMES = List.of("date", "day", "datum", "fecha", "datetime", "timestamp",
            "time");
    private static final List<String> DEPTH_NAMES = List.of("precipitation", "precip", "prcp", "rain", "rainfall",
            "depth");
    private static final Set<String> MISSING = Set.of("", "na", "n/a", "nan", "null", "none", "missing", "m", "-",
            "--");
    private static final Set<Double> MISSING_NUMBERS = Set.of(-9999.0, -9999.9, -999.0, -999.9, -999.99, -99.0,
            -99.9, -99.99);
    private static final Set<String> TRACE = Set.of("t", "tr", "trace");
    /** A header with its unit: {@code rain[mm]}, {@code rain (mm)}. */
    private static final Pattern WITH_UNIT = Pattern.compile("(.*?)\\s*[\\[(]([^\\])]*)[\\])]\\s*");
    private static final Pattern UNIT_BEHIND = Pattern.compile("(.*)[_ ](mm|cm|in|inch|inches)");

    private final RainFile file;
    private final CsvRows csv;
    private final ReadOptions options;
    private final Findings findings = new Findings();
    private final DailyRows rows = new DailyRows();
    private final int dateColumn;
    private final int depthColumn;
    private final DepthUnit unit;
    private final Dates dates;
    private final Numbers numbers;
    private int fewestDecimals = Integer.MAX_VALUE;

    private GenericCsvParser(RainFile file, ReadOptions options) {
        this.file = file;
        this.options = options;
        this.csv = new CsvRows(file, options.delimiter());
        this.dates = new Dates(options.datePattern());
        this.numbers = new Numbers(options.decimalMark());
        if (csv.header().size() < 2) {
            throw file.fault(csv.line(), 0, "the first line has one column only", RainFile.ACCEPTED);
        }
        boolean headless = Dates.looksLike(csv.header().get(0));
        if (headless && csv.header().size() > 2) {
            throw file.fault(csv.line(), 0, "there is no header, and more than two columns", "a header that names "
                    + "the columns, or two columns of date and depth, are accepted");
        }
        this.dateColumn = headless ? 0 : column("date", options.dateColumn(), DATE_NAMES);
        this.depthColumn = headless ? 1 : column("depth", options.depthColumn(), DEPTH_NAMES);
        if (dateColumn == depthColumn) {
            throw file.fault(csv.line(), dateColumn + 1, "the date and the depth column are the same",
                    "two columns are accepted");
        }
        this.unit = unit(headless ? "" : csv.header().get(depthColumn));
        if (headless) {
            addRow();
        }
    }

    /** Reads the file whole. */
    public static ParsedStation parse(RainFile file, ReadOptions options) {
        return new GenericCsvParser(file, options).parse();
    }

    private ParsedStation parse() {
        while (csv.next()) {
            addRow();
        }
        if (rows.count() == 0) {
            throw file.fault(0, 0, "there is no row below the header", "a row for each day is accepted");
        }
        int[] epochDays = dates.resolve();
        if (epochDays == null) {
            throw file.fault(rows.line(0), dateColumn + 1, "day and month of the dates cannot be told apart",
                    "a date pattern such as dd/MM/yyyy or MM/dd/yyyy must be told");
        }
        for (int row = 0; row < rows.count(); row++) {
            double depth = rows.depthMm(row);
            if (!Double.isNaN(depth) && !Findings.isPossible(depth)) {
                findings.impossible(epochDays[row], depth, rows.line(row));
                rows.makeImpossible(row);
            }
        }
        return ParsedStation.of("", rows.inOrder(epochDays, file, findings), findings);
    }

    private void addRow() {
        String problem = dates.add(csv.field(dateColumn));
        if (problem != null) {
            throw file.fault(csv.line(), dateColumn + 1, problem, options.datePattern() == null ? Dates.ACCEPTED
                    : "a date such as " + options.datePattern() + " says is accepted");
        }
        String text = csv.field(depthColumn);
        String word = text.length() <= 7 ? text.toLowerCase(Locale.ROOT) : text;
        if (TRACE.contains(word)) {
            findings.traces++;
            rows.add(0, DayMark.MEASURED, csv.line());
            return;
        }
        boolean mayBeCut = csv.mayBeCut();
        if (MISSING.contains(word) && !(mayBeCut && isLastColumn())) {
            rows.add(Double.NaN, DayMark.MISSING, csv.line());
            return;
        }
        double value = numbers.parse(text);
        if (Double.isNaN(value)) {
            throw file.fault(csv.line(), depthColumn + 1, (text.isEmpty() ? "nothing" : RainFile.quoted(text))
                    + " is not a depth", numbers.accepted("a number"));
        }
        if (MISSING_NUMBERS.contains(value)) {
            rows.add(Double.NaN, DayMark.MISSING, csv.line());
            return;
        }
        if (mayBeCut && isLastColumn()) {
            checkLastNumber(text);
        }
        fewestDecimals = Math.min(fewestDecimals, Numbers.decimals(text));
        rows.add(unit.toMm(value), DayMark.MEASURED, csv.line());
    }

    private boolean isLastColumn() {
        return depthColumn == csv.header().size() - 1;
    }

    /** The number at the very end of a file without a last line end may have lost digits. */
    private void checkLastNumber(String text) {
        if (rows.count() > 0 && fewestDecimals != Integer.MAX_VALUE && Numbers.decimals(text) < fewestDecimals) {
            throw file.fault(csv.line(), depthColumn + 1, "the file ends with " + RainFile.quoted(text)
                    + ", which has fewer decimals than every depth above it, so it seems cut",
                    "a whole file is accepted");
        }
        findings.notes.add("The last line has no line end; if the file was cut, its depth may have lost digits.");
    }

    private DepthUnit unit(String header) {
        if (options.depthUnit() != null) {
            return options.depthUnit();
        }
        Matcher bracketed = WITH_UNIT.matcher(header);
        if (bracketed.matches()) {
            return DepthUnit.find(bracketed.group(2)).orElseThrow(() -> file.fault(csv.line(), depthColumn + 1,
                    RainFile.quoted(bracketed.group(2)) + " is not a unit of depth", DepthUnit.accepted()
                            + " are accepted"));
        }
        Matcher behind = UNIT_BEHIND.matcher(header.toLowerCase(Locale.ROOT));
        Optional<DepthUnit> found = behind.matches() ? DepthUnit.find(behind.group(2)) : Optional.empty();
        if (found.isEmpty()) {
            findings.notes.add("The file does not say the unit of depth; millimetres are assumed.");
        }
        return found.orElse(DepthUnit.MM);
    }

    private static String nameOf(String header) {
        Matcher bracketed = WITH_UNIT.matcher(header);
        String name = (bracketed.matches() ? bracketed.group(1) : header).toLowerCase(Locale.ROOT).strip();
        Matcher behind = UNIT_BEHIND.matcher(name);
        return behind.matches() ? behind.group(1) : name;
    }

    private int column(String what, String told, List<String> usual) {
        if (told != null) {
            String wanted = told.strip().toLowerCase(Locale.ROOT);
            return csv.find(told.strip()).orElseGet(() -> named(what, wanted).orElseThrow(() -> file.fault(
                    csv.line(), 0, "there is no column " + RainFile.quoted(told), "the columns are "
                            + csv.columns())));
        }
        for (String name : usual) {
            Optional<Integer> found = named(what, name);
            if (found.isPresent()) {
                return found.get();
            }
        }
        throw file.fault(csv.line(), 0, "no column is named " + String.join(", ", usual), "the columns are "
                + csv.columns() + "; the " + what + " column can be told by name");
    }

    private Optional<Integer> named(String what, String name) {
        int[] found = IntStream.range(0, csv.header().size())
                .filter(column -> nameOf(csv.header().get(column)).equals(name)).toArray();
        if (found.length > 1) {
            throw file.fault(csv.line(), found[1] + 1, "two columns are named " + RainFile.quoted(name), "one "
                    + what + " column, or its full name told, is accepted");
        }
        return Arrays.stream(found).boxed().findFirst();
    }
}
