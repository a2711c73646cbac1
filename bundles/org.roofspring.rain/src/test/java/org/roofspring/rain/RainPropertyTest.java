package org.roofspring.rain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.Month;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import net.jqwik.api.constraints.IntRange;

/** Invariants, and slow independent ways to the same figures. */
class RainPropertyTest {
    private static final LocalDate START = LocalDate.of(2019, 11, 20);

    @Provide
    Arbitrary<double[]> depths() {
        return Arbitraries.frequencyOf(Tuple.of(5, Arbitraries.just(0.0)),
                Tuple.of(4, Arbitraries.integers().between(1, 900).map(tenths -> tenths / 10.0)),
                Tuple.of(1, Arbitraries.just(Double.NaN)))
                .list().ofMinSize(1).ofMaxSize(900)
                .map(list -> list.stream().mapToDouble(Double::doubleValue).toArray());
    }

    private static boolean isWet(double mm) {
        return mm > 0;
    }

    @Property(tries = 100)
    void figuresByBruteForce(@ForAll("depths") double[] mm, @ForAll @IntRange(min = 1, max = 40) int window) {
        RainStatistics statistics = RainStatistics.of(RainRecord.of(START, mm));
        int longest = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int from = 0; from < mm.length; from++) {
            int length = 0;
            while (from + length < mm.length && mm[from + length] == 0) {
                length++;
            }
            longest = Math.max(longest, length);
            double sum = 0;
            for (int day = from; day < from + window; day++) {
                sum += day < mm.length ? mm[day] : Double.NaN;
            }
            least = sum < least ? sum : least;
        }
        assertEquals(longest, statistics.longestDrySpell().map(DrySpell::days).orElse(0));
        assertEquals(least, statistics.minimumOver(window).map(WindowMinimum::depthMm)
                .orElse(Double.POSITIVE_INFINITY), 1e-9);
        int[] after = new int[4];
        for (int day = 1; day < mm.length; day++) {
            if (!Double.isNaN(mm[day]) && !Double.isNaN(mm[day - 1])) {
                after[(isWet(mm[day - 1]) ? 2 : 0) + (isWet(mm[day]) ? 1 : 0)]++;
            }
        }
        assertRatio(after[1], after[0] + after[1], statistics.p01());
        assertRatio(after[3], after[2] + after[3], statistics.p11());
    }

    private static void assertRatio(int part, int whole, OptionalDouble ratio) {
        assertEquals(whole == 0 ? -1 : (double) part / whole, ratio.orElse(-1));
    }

    @Property(tries = 100)
    void totalsAgree(@ForAll("depths") double[] mm) {
        RainRecord record = RainRecord.of(START, mm);
        RainStatistics statistics = RainStatistics.of(record);
        double total = statistics.totalMm();
        assertEquals(total, statistics.monthlyTotals().stream().mapToDouble(MonthTotal::totalMm).sum(), 1e-9);
        assertEquals(total, statistics.yearlyTotals().stream().mapToDouble(YearTotal::totalMm).sum(), 1e-9);
        assertEquals(statistics.wetDays(), statistics.monthlyTotals().stream().mapToInt(MonthTotal::wetDays).sum());
        assertEquals(statistics.presentDays() - statistics.wetDays(),
                statistics.drySpells().stream().mapToInt(DrySpell::days).sum());
        for (Month month : Month.values()) {
            List<HydrologicalYear> years = HydrologicalYear.split(record, month);
            assertEquals(record.days(), years.stream().mapToInt(HydrologicalYear::days).sum());
            assertTrue(years.stream().skip(1).allMatch(year -> record.date(year.firstIndex()).getDayOfMonth() == 1
                    && record.date(year.firstIndex()).getMonth() == month));
            assertTrue(years.stream().skip(1).limit(Math.max(0, years.size() - 2L)).allMatch(HydrologicalYear::whole));
        }
    }

    @Property(tries = 60)
    void fillingChangesMissingDaysOnly(@ForAll("depths") double[] mm) {
        RainRecord record = RainRecord.of(START, mm);
        for (GapMethod method : List.of(GapMethod.ZERO, GapMethod.MONTH_MEAN, GapMethod.CLIMATOLOGY)) {
            GapFilling filled;
            try {
                filled = GapFilling.fill(record, method);
            } catch (MissingRainException noReadingThen) {
                continue;
            }
            assertEquals(record.missingDays(), filled.filledDays());
            assertTrue(filled.record().isComplete());
            for (int day = 0; day < mm.length; day++) {
                assertEquals(record.isMissing(day) ? DayMark.FILLED : DayMark.MEASURED, filled.record().mark(day));
                if (!record.isMissing(day)) {
                    assertEquals(mm[day], filled.record().depthMm(day));
                }
            }
        }
    }

    @Property(tries = 60)
    void csvRoundTrip(@ForAll("depths") double[] mm) {
        StringBuilder text = new StringBuilder("date,precipitation[mm]\n");
        for (int day = 0; day < mm.length; day++) {
            text.append(START.plusDays(day)).append(',').append(Double.isNaN(mm[day]) ? "" : mm[day]).append('\n');
        }
        assertEquals(RainRecord.of(START, mm), TestFiles.read(text.toString()).record());
    }

    // GHCN-Daily against a reader that takes each field as text

    private static double[] slowDly(List<String> lines) {
        LocalDate first = LocalDate.of(Integer.parseInt(lines.get(0).substring(11, 15)),
                Integer.parseInt(lines.get(0).substring(15, 17)), 1);
        List<Double> mm = new ArrayList<>();
        for (String line : lines) {
            int length = first.lengthOfMonth();
            for (int day = 0; day < length; day++) {
                int at = 21 + 8 * day;
                int tenths = Integer.parseInt(line.substring(at, at + 5).strip());
                boolean usable = line.charAt(at + 6) == ' ' && tenths >= 0 && tenths <= 18_250;
                mm.add(usable ? tenths / 10.0 : Double.NaN);
            }
            first = first.plusMonths(1);
        }
        return mm.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static List<String> randomDly(Random random, int months) {
        List<String> lines = new ArrayList<>();
        YearMonth month = YearMonth.of(1890 + random.nextInt(120), 1 + random.nextInt(12));
        for (int i = 0; i < months; i++, month = month.plusMonths(1)) {
            StringBuilder line = new StringBuilder(String.format("ZZ0INVENTED%04d%02dPRCP", month.getYear(),
                    month.getMonthValue()));
            for (int day = 1; day <= 31; day++) {
                int bound = (int) Math.pow(10, 1 + random.nextInt(5));
                int value = day > month.lengthOfMonth() || random.nextInt(8) == 0 ? -9999
                        : random.nextInt(30) == 0 ? -random.nextInt(1, 9999) : random.nextInt(bound);
                String flags = value == -9999 ? "   " : "" + " BDPT".charAt(random.nextInt(5))
                        + "          X".charAt(random.nextInt(11)) + "0S ".charAt(random.nextInt(3));
                line.append(String.format(random.nextBoolean() || value < 0 ? "%5d" : "%05d", value)).append(flags);
            }
            lines.add(line.toString());
        }
        return lines;
    }

    private static RainReading readDly(String text) {
        return RainReader.read("test.dly", text.getBytes(StandardCharsets.US_ASCII), ReadOptions.AUTO, () -> false);
    }

    @Property(tries = 100)
    void dlyAsASlowReaderReadsIt(@ForAll long seed, @ForAll @IntRange(min = 1, max = 30) int months) {
        List<String> lines = randomDly(new Random(seed), months);
        double[] mm = slowDly(lines);
        RainRecord record = readDly(String.join("\n", lines) + "\n").record();
        assertEquals(mm.length, record.days());
        for (int day = 0; day < mm.length; day++) {
            assertEquals(mm[day], record.depthMmOr(day, Double.NaN));
        }
    }

    /** Every value of five characters: a number as text has it, or a fault. */
    @Property(tries = 2000)
    void dlyValues(@ForAll("fiveCharacters") String value) {
        String line = "ZZ0INVENTED202001PRCP" + value + "  0" + "    7  0".repeat(30) + "\n";
        boolean number = value.strip().matches("-?\\d+") && value.stripLeading().equals(value.strip());
        try {
            RainRecord record = readDly(line).record();
            assertTrue(number, value);
            int tenths = Integer.parseInt(value.strip());
            assertEquals(tenths < 0 || tenths > 18_250 ? Double.NaN : tenths / 10.0,
                    record.depthMmOr(0, Double.NaN), value);
        } catch (RainFormatException e) {
            assertTrue(!number, value);
            assertEquals(22, e.column());
        }
    }

    @Provide
    Arbitrary<String> fiveCharacters() {
        return Arbitraries.strings().withChars("  00123456789--+.,/:ax!\"#$%&'()*?@P").ofLength(5);
    }

    // files that were cut, and files that are noise

    @Property(tries = 300)
    void cutCsvIsAFaultOrAWholePart(@ForAll @IntRange(min = 24, max = 900) int length) throws IOException {
        assertPart(start(Path.of("../../demo-data/rain/upland-40y.csv")), length, RainFormat.GENERIC_CSV);
    }

    @Property(tries = 300)
    void cutSeattleIsAFaultOrAWholePart(@ForAll @IntRange(min = 60, max = 900) int length) throws IOException {
        assertPart(start(TestFiles.SEATTLE), length, RainFormat.GENERIC_CSV);
    }

    private static String start(Path file) throws IOException {
        String text = Files.readString(file);
        return text.substring(0, text.indexOf('\n', 900) + 1);
    }

    @Property(tries = 300)
    void cutDlyIsAFaultOrAWholePart(@ForAll @IntRange(min = 1, max = 1350) int length) throws IOException {
        String whole = Files.readString(TestFiles.RESOURCES.resolve("invented.dly"));
        assertPart(whole.substring(270), Math.min(length, 1080), RainFormat.GHCN_DLY);
    }

    private static void assertPart(String whole, int length, RainFormat format) {
        ReadOptions options = ReadOptions.AUTO.withFormat(format);
        RainRecord record = RainReader.read("whole", whole.getBytes(StandardCharsets.UTF_8), options, () -> false)
                .record();
        RainRecord part;
        try {
            part = RainReader.read("part", whole.substring(0, length).getBytes(StandardCharsets.UTF_8), options,
                    () -> false).record();
        } catch (RainFormatException clear) {
            return;
        }
        assertEquals(record.firstDay(), part.firstDay());
        // the flags of the last days may be cut off, which is no more than a line whose blanks were stripped
        for (int day = 0; day < part.days() - (format == RainFormat.GHCN_DLY ? 20 : 0); day++) {
            assertEquals(record.depthMmOr(day, -1), part.depthMmOr(day, -1));
        }
    }

    /** The seed is fixed: what a build finds must not depend on the day; other seeds are for a longer run by hand. */
    @Property(tries = 500, seed = "20261125")
    void noiseIsAFaultAndNothingElse(@ForAll long seed) throws IOException {
        Random random = new Random(seed);
        Path source = List.of(TestFiles.RESOURCES.resolve("invented.dly"), TestFiles.SEATTLE,
                TestFiles.RESOURCES.resolve("invented-station.csv"), TestFiles.RESOURCES.resolve("normals.csv"))
                .get(random.nextInt(4));
        byte[] bytes = Files.readAllBytes(source);
        bytes = Arrays.copyOf(bytes, Math.min(bytes.length, 2000));
        for (int change = random.nextInt(20); change >= 0; change--) {
            bytes[random.nextInt(bytes.length)] = (byte) (random.nextBoolean() ? random.nextInt(256)
                    : "\r\n\t\",;#-+.0T ".charAt(random.nextInt(13)));
        }
        RainFormat format = RainFormat.values()[random.nextInt(RainFormat.values().length)];
        try {
            RainReading reading = RainReader.read("noise", bytes, ReadOptions.AUTO.withFormat(format), () -> false);
            assertTrue(!reading.quality().sentences().isEmpty());
        } catch (RainFormatException clear) {
            assertTrue(clear.getMessage().startsWith("noise"), clear.getMessage());
            assertTrue(clear.getMessage().lines().count() == 1, clear.getMessage());
        }
    }

    /** What follows a closed quote is met when the reader looks whether the row before is the last and may be cut. */
    @Example
    void brokenRowAfterTheLastWholeOneIsAFault() throws IOException {
        byte[] bytes = "date,precipitation\n2001-01-01,1.0\n2001-01-02,2.0\n\"2001-01-03\"x,3.0".getBytes(StandardCharsets.UTF_8);
        assertThrows(RainFormatException.class, () -> RainReader.read("quote", bytes, ReadOptions.AUTO, () -> false));
    }
}
