package org.roofspring.bench;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.roofspring.rain.RainReader;
import org.roofspring.rain.RainReading;
import org.roofspring.rain.ReadOptions;

/** Reading a 50 MB GHCN-Daily file, every line PRCP, against reading its lines and doing nothing with them. */
final class RainGroup implements Bench.Group {

    private static final int STATIONS = 40;
    private static final int FIRST_YEAR = 1600;
    private static final int YEARS = 387;
    private static final int WARM_UPS = 4;
    private static final int ROUNDS = 9;

    @Override
    public void run(Bench.Places places, Report report) throws Exception {
        Files.createDirectories(places.work());
        Path file = places.work().resolve("stations.dly");
        int lines = write(file);
        report.note(String.format(Locale.ROOT, "rain: %d lines, %.1f MB", lines, Files.size(file) / 1e6));
        int read = readLines(file);
        Map<String, RainReading> stations = RainReader.readStations(file, ReadOptions.AUTO, () -> false);
        long days = stations.values().stream().mapToLong(reading -> reading.record().days()).sum();
        long expected = STATIONS * (LocalDate.of(FIRST_YEAR + YEARS, 1, 1).toEpochDay()
                - LocalDate.of(FIRST_YEAR, 1, 1).toEpochDay());
        if (read != lines || stations.size() != STATIONS || days != expected) {
            throw new IllegalStateException("the readers saw " + read + " lines, " + stations.size()
                    + " stations and " + days + " days, not " + lines + ", " + STATIONS + " and " + expected);
        }
        List<Double> plain = new ArrayList<>();
        List<Double> parsed = new ArrayList<>();
        for (int round = 0; round < WARM_UPS + ROUNDS; round++) {
            long begin = System.nanoTime();
            readLines(file);
            long middle = System.nanoTime();
            RainReader.readStations(file, ReadOptions.AUTO, () -> false);
            long end = System.nanoTime();
            if (round >= WARM_UPS) {
                plain.add((middle - begin) / 1e6);
                parsed.add((end - middle) / 1e6);
            }
        }
        Files.delete(file);
        report.figure("rain.readline", Medians.of(plain), "ms");
        report.figure("rain.dly", Medians.of(parsed), "ms");
        report.ratio("rain.dly_over_readline", Medians.of(parsed) / Medians.of(plain));
    }

    private static int readLines(Path file) throws IOException {
        int lines = 0;
        try (BufferedReader reader = Files.newBufferedReader(file, StandardCharsets.US_ASCII)) {
            while (reader.readLine() != null) {
                lines++;
            }
        }
        return lines;
    }

    /** Writes invented stations of an invented country. */
    private static int write(Path file) throws IOException {
        Random random = new Random(1);
        int lines = 0;
        try (Writer out = Files.newBufferedWriter(file, StandardCharsets.US_ASCII)) {
            for (int station = 0; station < STATIONS; station++) {
                for (int month = 0; month < 12 * YEARS; month++) {
                    int year = FIRST_YEAR + month / 12;
                    StringBuilder line = new StringBuilder(270);
                    line.append(String.format(Locale.ROOT, "XX0%08d%04d%02dPRCP", station, year, month % 12 + 1));
                    int days = YearMonth.of(year, month % 12 + 1).lengthOfMonth();
                    for (int day = 1; day <= 31; day++) {
                        int depth = day > days ? -9999 : random.nextInt(4) > 0 ? 0 : random.nextInt(600);
                        line.append(String.format(Locale.ROOT, "%5d  %s", depth, day > days ? " " : "S"));
                    }
                    out.append(line).append('\n');
                    lines++;
                }
            }
        }
        return lines;
    }
}
