package org.roofspring.rain;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.YearMonth;
import java.util.Arrays;
import java.util.Random;

/** Rain files for tests. */
public final class TestFiles {
    /** Invented values in the layouts under test. */
    static final Path RESOURCES = Path.of("src/test/resources/rain");
    /** The real record; see the README beside it for source and terms. */
    static final Path SEATTLE = Path.of("../../demo-data/rain/real/seattle-weather.csv");

    private TestFiles() {
    }

    static RainReading read(String text) {
        return read(text, ReadOptions.AUTO);
    }

    static RainReading read(String text, ReadOptions options) {
        return RainReader.read("test.csv", text.getBytes(StandardCharsets.UTF_8), options, () -> false);
    }

    /**
     * A GHCN-Daily file of which every line is PRCP: invented stations of 500 years each.
     *
     * @param bytes size to reach at least
     */
    public static byte[] allRainDly(int bytes, long seed) {
        Random random = new Random(seed);
        int lines = (bytes + 269) / 270;
        byte[] file = new byte[lines * 270];
        Arrays.fill(file, (byte) ' ');
        for (int line = 0; line < lines; line++) {
            int month = line % 12;
            int year = 1500 + line / 12 % 500;
            int at = line * 270;
            put(file, at, String.format("ZZ0%08d%04d%02dPRCP", line / 6000, year, month + 1));
            int length = YearMonth.of(year, month + 1).lengthOfMonth();
            for (int day = 0; day < 31; day++) {
                int value = day >= length || random.nextInt(200) == 0 ? -9999
                        : random.nextInt(3) > 0 ? 0 : random.nextInt(600);
                putRight(file, at + 21 + 8 * day, value);
                if (value >= 0) {
                    file[at + 21 + 8 * day + 7] = '0';
                }
            }
            file[at + 269] = '\n';
        }
        return file;
    }

    private static void put(byte[] file, int at, String text) {
        for (int i = 0; i < text.length(); i++) {
            file[at + i] = (byte) text.charAt(i);
        }
    }

    private static void putRight(byte[] file, int at, int value) {
        String text = Integer.toString(value);
        put(file, at + 5 - text.length(), text);
    }
}
