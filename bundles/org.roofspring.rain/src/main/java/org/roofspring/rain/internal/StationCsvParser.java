package org.roofspring.rain.internal;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.roofspring.rain.DayMark;
import org.roofspring.rain.DepthUnit;
import org.roofspring.rain.ReadOptions;

/**
 * Reads GHCN-Daily station CSV: columns STATION, DATE, PRCP and PRCP_ATTRIBUTES with the flags "M,Q,S[,time]", and
 * MDPR and DAPR for totals of several days, where there are such (layout from memory). Whole numbers are tenths of a
 * millimetre; exports with decimals are in millimetres or inches and do not say which, so that must be told.
 */
public final class StationCsvParser {
    private final RainFile file;
    private final ReadOptions options;
    private final CsvRows csv;
    private final int stationColumn;
    private final int dateColumn;
    private final int depthColumn;
    private final OptionalInt flagColumn;
    private final OptionalInt totalColumn;
    private final OptionalInt totalFlagColumn;
    private final OptionalInt lengthColumn;
    private final DepthUnit unit;
    private final Map<String, Station> stations = new LinkedHashMap<>();

    private static final class Station {
        final Dates dates = new Dates("uuuu-MM-dd");
        final DailyRows rows = new DailyRows();
        final Findings findings = new Findings();
        final MultiDayTotals multiDay = new MultiDayTotals();
    }

    private StationCsvParser(RainFile file, ReadOptions options) {
        this.file = file;
        this.options = options;
        this.csv = new CsvRows(file, options.delimiter());
        this.stationColumn = required("STATION");
        this.dateColumn = required("DATE");
        this.depthColumn = required("PRCP");
        this.flagColumn = csv.find("PRCP_ATTRIBUTES");
        this.totalColumn = csv.find("MDPR");
        this.totalFlagColumn = csv.find("MDPR_ATTRIBUTES");
        this.lengthColumn = csv.find("DAPR");
        this.unit = options.depthUnit() == null ? DepthUnit.TENTHS_OF_MM : options.depthUnit();
    }

    /** Whether a first line is the header of this format. */
    public static boolean looksLike(String line) {
        List<String> names = Arrays.stream(line.split("[,;\t]")).map(name -> name.replace("\"", "").strip()).toList();
        return names.containsAll(List.of("STATION", "DATE", "PRCP"));
    }

    /** Every station of the file, in its order; never empty. */
    public static List<ParsedStation> parse(RainFile file, ReadOptions options) {
        return new StationCsvParser(file, options).parse();
    }

    private int required(String name) {
        return csv.find(name).orElseThrow(() -> file.fault(csv.line(), 0, "there is no column " + name,
                "the columns STATION, DATE and PRCP are accepted"));
    }

    private List<ParsedStation> parse() {
        while (csv.next()) {
            addRow(stations.computeIfAbsent(csv.field(stationColumn), id -> new Station()));
        }
        List<ParsedStation> parsed = new ArrayList<>();
        stations.forEach((id, station) -> {
            DayTable days = station.rows.inOrder(station.dates.resolve(), file, station.findings);
            station.multiDay.apply(days, station.findings, options.multiDay());
            if (flagColumn.isEmpty()) {
                station.findings.notes.add("The file has no column PRCP_ATTRIBUTES, so readings that failed quality "
                        + "control cannot be told.");
            }
            if (options.depthUnit() == null) {
                station.findings.notes.add("PRCP has whole numbers and is read as tenths of a millimetre.");
            }
            parsed.add(ParsedStation.of(id, days, station.findings));
        });
        if (parsed.isEmpty()) {
            throw file.fault(0, 0, "there is no row below the header", "a row for each day is accepted");
        }
        return parsed;
    }

    private void addRow(Station station) {
        String problem = station.dates.add(csv.field(dateColumn));
        if (problem != null) {
            throw file.fault(csv.line(), dateColumn + 1, problem, Dates.ACCEPTED);
        }
        long epochDay = LocalDate.parse(csv.field(dateColumn)).toEpochDay();
        addTotal(station, epochDay);
        String[] flags = flags(flagColumn);
        Double value = value(depthColumn);
        if (value == null) {
            station.rows.add(Double.NaN, DayMark.MISSING, csv.line());
            return;
        }
        double depth = unit.toMm(value);
        if (!flags[1].isEmpty()) {
            station.findings.failed(flags[1].charAt(0));
            station.rows.add(Double.NaN, DayMark.FAILED_QUALITY, csv.line());
        } else if (!Findings.isPossible(depth)) {
            station.findings.impossible(epochDay, depth, csv.line());
            station.rows.add(Double.NaN, DayMark.IMPOSSIBLE, csv.line());
        } else {
            station.findings.traces += flags[0].equals("T") ? 1 : 0;
            station.findings.presumedZeroDays += flags[0].equals("P") ? 1 : 0;
            station.rows.add(depth, DayMark.MEASURED, csv.line());
        }
    }

    private void addTotal(Station station, long epochDay) {
        Double total = totalColumn.isPresent() ? value(totalColumn.getAsInt()) : null;
        if (total == null) {
            return;
        }
        String[] flags = flags(totalFlagColumn);
        if (!flags[1].isEmpty()) {
            station.findings.failed(flags[1].charAt(0));
            return;
        }
        station.multiDay.total(epochDay, unit.toMm(total), csv.line());
        Double length = lengthColumn.isPresent() ? value(lengthColumn.getAsInt()) : null;
        if (length != null) {
            station.multiDay.length(epochDay, length.intValue());
        }
    }

    /** The flags M, Q and S; blank where the row has none. */
    private String[] flags(OptionalInt column) {
        String[] flags = {"", "", ""};
        if (column.isPresent()) {
            String[] given = csv.field(column.getAsInt()).split(",", -1);
            for (int flag = 0; flag < Math.min(flags.length, given.length); flag++) {
                flags[flag] = given[flag].strip();
            }
        }
        return flags;
    }

    /** A number, or null where the field is blank or says missing. */
    private Double value(int column) {
        String text = csv.field(column);
        if (text.isEmpty()) {
            return null;
        }
        double value = new Numbers('.').parse(text);
        if (Double.isNaN(value)) {
            throw file.fault(csv.line(), column + 1, RainFile.quoted(text) + " is not a number",
                    "a whole number of tenths of a millimetre is accepted");
        }
        if (value == -9999) {
            return null;
        }
        if (options.depthUnit() == null && text.indexOf('.') >= 0) {
            throw file.fault(csv.line(), column + 1, RainFile.quoted(text) + " has decimals, so it is not tenths of "
                    + "a millimetre", "whole numbers are accepted, or the unit of depth must be told: mm or in");
        }
        return value;
    }
}
