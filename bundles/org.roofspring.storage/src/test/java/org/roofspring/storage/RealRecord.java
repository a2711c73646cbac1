package org.roofspring.storage;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** Reads the real daily record that is kept with the demonstration data: Seattle 2012 to 2015, 1461 days. */
final class RealRecord {

    private static final Path FILE = Path.of("../../demo-data/rain/real/seattle-weather.csv");

    private RealRecord() {
    }

    static double[] depthMm() throws IOException {
        List<String> lines = Files.readAllLines(FILE);
        return lines.stream().skip(1).filter(line -> !line.isBlank())
                .mapToDouble(line -> Double.parseDouble(line.split(",")[1])).toArray();
    }
}
