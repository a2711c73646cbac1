package org.roofspring.rain;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;
import org.roofspring.rain.internal.DlyParser;
import org.roofspring.rain.internal.GenericCsvParser;
import org.roofspring.rain.internal.NormalsParser;
import org.roofspring.rain.internal.ParsedStation;
import org.roofspring.rain.internal.RainFile;
import org.roofspring.rain.internal.StationCsvParser;

/**
 * Reads rain files. The layout is found from the content unless the options tell it; see {@link RainFormat}.
 *
 * <p>Every fault of a file is a {@link RainFormatException} with one sentence. Reading polls {@code cancelled} many
 * times a second and then throws {@link java.util.concurrent.CancellationException}.
 */
public final class RainReader {
    private RainReader() {
    }

    /** Reads a file of one station, everything found from the content. */
    public static RainReading read(Path path) throws IOException {
        return read(path, ReadOptions.AUTO, () -> false);
    }

    /**
     * Reads a file of one station, or the station that the options name.
     *
     * @throws RainFormatException when the file cannot be read, or holds several stations and none is named
     * @throws IOException         when the file cannot be opened
     */
    public static RainReading read(Path path, ReadOptions options, BooleanSupplier cancelled) throws IOException {
        return one(path.toString(), RainFile.read(path, cancelled), options);
    }

    /**
     * Reads content that is in memory.
     *
     * @param name of the content, for messages
     */
    public static RainReading read(String name, byte[] content, ReadOptions options, BooleanSupplier cancelled) {
        return one(name, RainFile.of(name, content.clone(), cancelled), options);
    }

    /**
     * Reads every station of a file, by its identifier in the order of the file; the identifier is empty where the
     * file names none.
     */
    public static Map<String, RainReading> readStations(Path path, ReadOptions options, BooleanSupplier cancelled)
            throws IOException {
        return all(RainFile.read(path, cancelled), options);
    }

    /** Reads monthly normals: columns month, precipitation[mm] and perhaps "wet days". */
    public static MonthlyNormals readNormals(Path path, ReadOptions options) throws IOException {
        return NormalsParser.parse(RainFile.read(path, () -> false), options);
    }

    /** The layout of a file, from its first line; {@link RainFormat#GENERIC_CSV} where nothing says otherwise. */
    public static RainFormat findFormat(Path path) throws IOException {
        return format(RainFile.read(path, () -> false));
    }

    private static RainFormat format(RainFile file) {
        String line = file.firstLine();
        return DlyParser.looksLike(line) || file.isNamed(".dly") ? RainFormat.GHCN_DLY
                : StationCsvParser.looksLike(line) ? RainFormat.GHCN_STATION_CSV
                : NormalsParser.looksLike(line) ? RainFormat.MONTHLY_NORMALS
                : RainFormat.GENERIC_CSV;
    }

    private static RainReading one(String name, RainFile file, ReadOptions options) {
        Map<String, RainReading> readings = all(file, options);
        if (readings.size() > 1 && options.station() == null) {
            throw new RainFormatException(name, 0, 0, "the file holds " + readings.size() + " stations", "one of them "
                    + "must be named: " + readings.keySet().stream().limit(10).collect(Collectors.joining(", ")));
        }
        return readings.values().iterator().next();
    }

    private static Map<String, RainReading> all(RainFile file, ReadOptions options) {
        RainFormat format = options.format() == RainFormat.AUTO ? format(file) : options.format();
        List<ParsedStation> stations = switch (format) {
            case GHCN_DLY -> DlyParser.parse(file, options.multiDay());
            case GHCN_STATION_CSV -> StationCsvParser.parse(file, options);
            case MONTHLY_NORMALS -> throw file.fault(0, 0, "the file holds monthly normals, not days", "a record of "
                    + "days is accepted here; normals need a weather synthesis first");
            default -> List.of(GenericCsvParser.parse(file, options));
        };
        Map<String, RainReading> readings = new LinkedHashMap<>();
        for (ParsedStation station : stations) {
            file.poll();
            if (options.station() == null || station.station().isEmpty()
                    || options.station().strip().equals(station.station())) {
                RainRecord record = RainRecord.owning(station.firstDay(), station.depthMm(), station.marks());
                readings.put(station.station(), new RainReading(record, format, station.station(),
                        () -> station.report(record)));
            }
        }
        if (readings.isEmpty()) {
            throw file.fault(0, 0, "there is no station " + options.station(), "the stations are "
                    + stations.stream().map(ParsedStation::station).limit(10).collect(Collectors.joining(", ")));
        }
        return readings;
    }
}
