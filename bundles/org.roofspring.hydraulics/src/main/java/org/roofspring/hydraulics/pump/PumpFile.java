package org.roofspring.hydraulics.pump;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

import org.roofspring.hydraulics.internal.Require;
import org.roofspring.quantity.Dimension;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.QuantityException;
import org.roofspring.quantity.Unit;
import org.roofspring.quantity.Units;

/**
 * Reads measured pump points from a table of comma-separated values with units in the header, such as
 * {@code flow[L/s],head[m],efficiency[%],npshr[m],power[W]}.
 *
 * <p>{@code flow} and {@code head} are needed; {@code efficiency}, {@code npshr} and {@code power} (what the motor
 * takes) may be absent, or empty at single points. A column {@code pump} names the pump of each line, so that one file
 * holds many; without it the file is one pump, named after the file. Empty lines and lines that begin with {@code #}
 * are passed over. The text is UTF-8, numbers have a decimal point.
 */
public final class PumpFile {
    /** Largest file accepted [bytes]. */
    public static final long LARGEST_BYTES = 10_000_000;

    private static final int LONGEST_NAME = 100;
    private static final String PUMP = "pump";
    private static final String ACCEPTED =
            "flow[L/s], head[m], efficiency[%], npshr[m], power[W] and pump are accepted";

    private final String file;
    private final String fallbackName;
    private final Map<String, List<PumpPoint>> pointsByPump = new LinkedHashMap<>();
    private final Map<String, Integer> firstLineByPump = new LinkedHashMap<>();
    private List<Column> columns;

    private PumpFile(String file) {
        this.file = file;
        this.fallbackName = file.replaceFirst("(?i)\\.csv$", "");
    }

    /**
     * Reads a file of exactly one pump.
     *
     * @throws PumpFileException where the text is not such a table
     * @throws IOException       where the file cannot be read
     */
    public static PumpCurve read(Path path) throws IOException {
        List<PumpCurve> curves = readAll(path);
        return only(nameOf(path), curves);
    }

    /** Reads a file of one pump or many, in the order in which they appear. */
    public static List<PumpCurve> readAll(Path path) throws IOException {
        Require.present("path of the pump file", path);
        String name = nameOf(path);
        byte[] bytes;
        try (InputStream in = Files.newInputStream(path)) {
            bytes = in.readNBytes((int) LARGEST_BYTES + 1); // a size on disk says nothing of what a device gives
        }
        if (bytes.length > LARGEST_BYTES) {
            throw new PumpFileException(name, 0, 0, "a pump file of at most " + LARGEST_BYTES
                    + " bytes is accepted, this one has more");
        }
        try {
            return parseAll(name, StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString());
        } catch (CharacterCodingException notText) {
            throw new PumpFileException(name, 0, 0,
                    "this is not UTF-8 text; a table of comma-separated values is needed");
        }
    }

    /** The root of a drive has no name. */
    private static String nameOf(Path path) {
        Path name = path.getFileName();
        return name == null ? path.toString() : name.toString();
    }

    /** As {@link #read}, from text. */
    public static PumpCurve parse(String file, String text) {
        return only(file, parseAll(file, text));
    }

    /** As {@link #readAll}, from text. */
    public static List<PumpCurve> parseAll(String file, String text) {
        return new PumpFile(Require.text("name of the pump file", file)).curves(Require.present("text", text));
    }

    private static PumpCurve only(String file, List<PumpCurve> curves) {
        if (curves.size() != 1) {
            throw new PumpFileException(file, 0, 0, "one pump is needed here, this file holds " + curves.size());
        }
        return curves.get(0);
    }

    private List<PumpCurve> curves(String text) {
        String[] lines = (text.startsWith("\ufeff") ? text.substring(1) : text).split("\r\n|\n|\r", -1);
        for (int i = 0; i < lines.length; i++) {
            if (!lines[i].isBlank() && !lines[i].startsWith("#")) {
                readLine(i + 1, lines[i].split(",", -1));
            }
        }
        if (columns == null) {
            throw new PumpFileException(file, 0, 0, "the file has no header; " + ACCEPTED);
        }
        if (pointsByPump.isEmpty()) {
            throw new PumpFileException(file, 0, 0, "the file has a header but no points; at least "
                    + PumpCurve.FEWEST_POINTS + " are needed");
        }
        return pointsByPump.entrySet().stream().map(entry -> curve(entry.getKey(), entry.getValue())).toList();
    }

    private PumpCurve curve(String name, List<PumpPoint> points) {
        try {
            return PumpCurve.of(name, points);
        } catch (IllegalArgumentException wrong) {
            throw new PumpFileException(file, firstLineByPump.get(name), 0, "pump \"" + name + "\": "
                    + wrong.getMessage());
        }
    }

    private void readLine(int line, String[] cells) {
        if (columns == null) {
            columns = header(line, cells);
            return;
        }
        if (cells.length != columns.size()) {
            throw new PumpFileException(file, line, 0, columns.size() + " columns are needed as in the header, not "
                    + cells.length);
        }
        String pump = fallbackName;
        PointBuilder point = new PointBuilder();
        for (int i = 0; i < cells.length; i++) {
            Column column = columns.get(i);
            String cell = unquoted(cells[i]);
            if (column.name.equals(PUMP)) {
                pump = requireText(line, i + 1, cell);
            } else if (!cell.isEmpty()) {
                point.set(column.name, number(line, i + 1, column, cell));
            } else if (column.needed()) {
                throw new PumpFileException(file, line, i + 1, column.name + " is empty; a number in " + column.unit
                        + " is needed");
            }
        }
        add(line, pump, point);
    }

    private void add(int line, String pump, PointBuilder values) {
        List<PumpPoint> points = pointsByPump.computeIfAbsent(pump, name -> new ArrayList<>());
        firstLineByPump.putIfAbsent(pump, line);
        PumpPoint point;
        try {
            point = values.build();
        } catch (IllegalArgumentException wrong) {
            throw new PumpFileException(file, line, columnOf(wrong.getMessage()), wrong.getMessage());
        }
        if (!points.isEmpty() && !(point.flowM3PerS() > points.get(points.size() - 1).flowM3PerS())) {
            throw new PumpFileException(file, line, columnOf("flow"),
                    "points must be in order of rising flow, but this flow is not above the one before it");
        }
        points.add(point);
    }

    /** The column that a message of {@link PumpPoint} is about: each begins with the quantity it names. */
    private int columnOf(String message) {
        String name = message.startsWith("NPSH") ? "npshr" : message.startsWith("input power") ? "power"
                : message.startsWith("efficiency") ? "efficiency" : message.startsWith("head") ? "head" : "flow";
        for (int i = 0; i < columns.size(); i++) {
            if (columns.get(i).name.equals(name)) {
                return i + 1;
            }
        }
        return 0;
    }

    private List<Column> header(int line, String[] cells) {
        List<Column> found = new ArrayList<>();
        for (int i = 0; i < cells.length; i++) {
            Column column = column(line, i + 1, unquoted(cells[i]));
            if (found.stream().anyMatch(other -> other.name.equals(column.name))) {
                throw new PumpFileException(file, line, i + 1, "the column " + column.name + " comes twice");
            }
            found.add(column);
        }
        for (String needed : List.of("flow", "head")) {
            if (found.stream().noneMatch(column -> column.name.equals(needed))) {
                throw new PumpFileException(file, line, 0, "the header has no column " + needed + "; " + ACCEPTED);
            }
        }
        return found;
    }

    private Column column(int line, int place, String title) {
        int bracket = title.indexOf('[');
        String name = (bracket < 0 ? title : title.substring(0, bracket)).trim();
        if (name.equals(PUMP) && bracket < 0) {
            return new Column(PUMP, Units.ONE);
        }
        Dimension dimension = switch (name) {
            case "flow" -> Dimension.FLOW;
            case "head", "npshr" -> Dimension.LENGTH;
            case "efficiency" -> Dimension.RATIO;
            case "power" -> Dimension.POWER;
            default -> throw new PumpFileException(file, line, place, "\"" + abridged(title)
                    + "\" is not a known column; " + ACCEPTED);
        };
        return new Column(name, unit(line, place, title, bracket, dimension));
    }

    private Unit unit(int line, int place, String title, int bracket, Dimension dimension) {
        if (bracket < 0 && dimension == Dimension.RATIO) {
            return Units.ONE;
        }
        if (bracket < 0 || !title.endsWith("]")) {
            throw new PumpFileException(file, line, place, "\"" + abridged(title)
                    + "\" has no unit in brackets; " + dimension.noun() + " is needed (" + dimension.acceptedUnits()
                    + ")");
        }
        String symbol = title.substring(bracket + 1, title.length() - 1).trim();
        return Units.find(symbol, dimension).filter(unit -> unit.dimension() == dimension)
                .orElseThrow(() -> new PumpFileException(file, line, place, "\"" + abridged(symbol)
                        + "\" is not a unit of " + dimension.noun() + " (" + dimension.acceptedUnits()
                        + " are accepted)"));
    }

    private double number(int line, int place, Column column, String cell) {
        try {
            return column.unit.toSi(Quantity.parse(cell, Dimension.RATIO).value());
        } catch (QuantityException wrong) {
            throw new PumpFileException(file, line, place, "\"" + abridged(cell) + "\" is not a number; " + column.name
                    + " in " + column.unit + " is needed, with a decimal point");
        }
    }

    private String requireText(int line, int place, String cell) {
        if (cell.isEmpty()) {
            throw new PumpFileException(file, line, place, "the name of the pump is empty");
        }
        if (cell.length() > LONGEST_NAME) {
            throw new PumpFileException(file, line, place, "the name of the pump has " + cell.length()
                    + " characters; at most " + LONGEST_NAME + " are accepted");
        }
        return cell;
    }

    private static String unquoted(String cell) {
        String trimmed = cell.trim();
        return trimmed.length() >= 2 && trimmed.startsWith("\"") && trimmed.endsWith("\"")
                ? trimmed.substring(1, trimmed.length() - 1).trim() : trimmed;
    }

    private static String abridged(String text) {
        String plain = text.replaceAll("\\p{Cntrl}+", " ");
        return plain.length() > 40 ? plain.substring(0, 37) + "..." : plain;
    }

    /** A column of the table with the unit of its header. */
    private record Column(String name, Unit unit) {
        boolean needed() {
            return name.equals("flow") || name.equals("head");
        }
    }

    /** The values of one line as they come. */
    private static final class PointBuilder {
        private final Map<String, Double> values = new LinkedHashMap<>();

        void set(String name, double si) {
            values.put(name, si);
        }

        PumpPoint build() {
            return new PumpPoint(values.get("flow"), values.get("head"), optional("efficiency"), optional("npshr"),
                    optional("power"));
        }

        private OptionalDouble optional(String name) {
            Double value = values.get(name);
            return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
        }
    }
}
