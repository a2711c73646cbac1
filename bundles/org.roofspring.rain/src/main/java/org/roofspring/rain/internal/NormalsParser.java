package org.roofspring.rain.internal;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.roofspring.rain.DepthUnit;
import org.roofspring.rain.MonthlyNormals;
import org.roofspring.rain.ReadOptions;

/**
 * Reads monthly normals: a CSV with a column {@code month} (1 to 12, or English names), a column of depths such as
 * {@code precipitation[mm]}, and perhaps {@code wet days}.
 */
public final class NormalsParser {
    private static final Pattern DEPTH = Pattern.compile(
            "(?i)(precipitation|precip|prcp|rain|rainfall|depth)\\s*(?:[\\[(]([^\\])]*)[\\])])?");
    private static final Pattern WET_DAYS = Pattern.compile(
            "(?i)(wet|rain|rainy)[ _]?days\\s*(?:[\\[(]d(ays)?[\\])])?");
    /** In any unit; more than the wettest month ever observed in millimetres. */
    private static final double LARGEST_MONTH = 20_000;
    private static final String ACCEPTED = "columns month, precipitation[mm] and perhaps \"wet days\" are accepted";

    private final RainFile file;
    private final CsvRows csv;
    private final Numbers depths;
    private final Numbers days;
    private final Double[] depthMm = new Double[12];
    private final Double[] wetDays = new Double[12];

    private NormalsParser(RainFile file, ReadOptions options) {
        this.file = file;
        this.csv = new CsvRows(file, options.delimiter());
        this.depths = new Numbers(options.decimalMark());
        this.days = new Numbers(options.decimalMark());
    }

    /** Whether a first line is the header of this format. */
    public static boolean looksLike(String line) {
        return Arrays.stream(line.split("[,;\t|]"))
                .anyMatch(name -> name.replace("\"", "").strip()
                        .equalsIgnoreCase("month"))
                && !Pattern.compile("(?i)\\b(date|year)\\b").matcher(line).find();
    }

    /** Reads the twelve months. */
    public static MonthlyNormals parse(RainFile file, ReadOptions options) {
        return new NormalsParser(file, options).parse(options);
    }

    private MonthlyNormals parse(ReadOptions options) {
        int monthColumn = csv.find("month").orElseThrow(() -> file.fault(csv.line(), 0, "there is no column month",
                ACCEPTED));
        int depthColumn = column(options.depthColumn(), DEPTH).orElseThrow(() -> file.fault(csv.line(), 0,
                "there is no column of depths", ACCEPTED));
        OptionalInt wetColumn = column(null, WET_DAYS);
        DepthUnit unit = unit(options, depthColumn);
        while (csv.next()) {
            int month = month(csv.field(monthColumn), monthColumn);
            if (depthMm[month] != null) {
                throw file.fault(csv.line(), monthColumn + 1, "the month stands in the file twice",
                        "one row a month is accepted");
            }
            depthMm[month] = unit.toMm(number(depths, depthColumn, LARGEST_MONTH));
            if (wetColumn.isPresent()) {
                wetDays[month] = number(days, wetColumn.getAsInt(), Month.of(month + 1).maxLength());
            }
        }
        for (int month = 0; month < 12; month++) {
            if (depthMm[month] == null) {
                throw file.fault(0, 0, "month " + (month + 1) + " is missing", "a row for each of twelve months is "
                        + "accepted");
            }
        }
        return new MonthlyNormals(List.of(depthMm), wetColumn.isPresent() ? List.of(wetDays) : List.of());
    }

    private DepthUnit unit(ReadOptions options, int column) {
        if (options.depthUnit() != null) {
            return options.depthUnit();
        }
        Matcher matcher = DEPTH.matcher(csv.header().get(column));
        String unit = matcher.matches() ? matcher.group(2) : null;
        return unit == null ? DepthUnit.MM : DepthUnit.find(unit).orElseThrow(() -> file.fault(csv.line(), column + 1,
                RainFile.quoted(unit) + " is not a unit of depth", DepthUnit.accepted() + " are accepted"));
    }

    private OptionalInt column(String told, Pattern usual) {
        return told != null ? csv.find(told) : IntStream.range(0, csv.header().size())
                .filter(column -> usual.matcher(csv.header().get(column)).matches()).findFirst();
    }

    private int month(String text, int column) {
        for (Month month : Month.values()) {
            if (text.equalsIgnoreCase(month.getDisplayName(TextStyle.FULL, Locale.ENGLISH))
                    || text.equalsIgnoreCase(month.getDisplayName(TextStyle.SHORT, Locale.ENGLISH))
                    || text.equals(Integer.toString(month.getValue()))
                    || text.equals(String.format(Locale.ROOT, "%02d", month.getValue()))) {
                return month.ordinal();
            }
        }
        throw file.fault(csv.line(), column + 1, RainFile.quoted(text) + " is not a month",
                "1 to 12 or an English name is accepted");
    }

    private double number(Numbers numbers, int column, double most) {
        String text = csv.field(column);
        double value = numbers.parse(text);
        if (!(value >= 0 && value <= most)) {
            throw file.fault(csv.line(), column + 1, RainFile.quoted(text) + " cannot be",
                    numbers.accepted("a number from 0 to " + (int) most));
        }
        return value;
    }
}
