package org.roofspring.rain;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RainReaderTest {
    private static final Path DLY = TestFiles.RESOURCES.resolve("invented.dly");
    private static final Path STATION = TestFiles.RESOURCES.resolve("invented-station.csv");

    @TempDir
    Path folder;

    private static RainFormatException fault(String text) {
        return fault(text, ReadOptions.AUTO);
    }

    private static RainFormatException fault(String text, ReadOptions options) {
        return assertThrows(RainFormatException.class, () -> TestFiles.read(text, options));
    }

    private static RainReading dly(String text) {
        return RainReader.read("test.dly", text.getBytes(StandardCharsets.ISO_8859_1), ReadOptions.AUTO, () -> false);
    }

    // GHCN-Daily .dly: NOAA, Global Historical Climatology Network - Daily, readme, version 3.00

    @ParameterizedTest
    @ValueSource(strings = {"invented.dly", "invented-stripped.dly"})
    void dlyWithFlags(String name) throws IOException {
        RainReading reading = RainReader.read(TestFiles.RESOURCES.resolve(name));
        RainRecord record = reading.record();
        assertEquals(RainFormat.GHCN_DLY, reading.format());
        assertEquals("ZZ0INVENTED", reading.station());
        assertEquals(LocalDate.of(2012, 1, 1), record.firstDay());
        assertEquals(LocalDate.of(2012, 2, 29), record.lastDay());
        assertEquals(10.9, record.depthMm(1));
        assertEquals(0.8, record.depthMm(2));
        assertEquals(DayMark.FAILED_QUALITY, record.mark(5));
        assertEquals(DayMark.MISSING, record.mark(6));
        assertEquals(14.5, record.depthMm(59));
        assertEquals(DayMark.IMPOSSIBLE, record.mark(record.indexOf(LocalDate.of(2012, 2, 10))));
        for (int day = 12; day <= 14; day++) {
            assertEquals(DayMark.IN_MULTI_DAY_TOTAL, record.mark(record.indexOf(LocalDate.of(2012, 2, day))));
        }
        QualityReport quality = reading.quality();
        assertEquals(6, quality.missingDays());
        assertEquals(Map.of('X', 1), quality.failedQuality());
        assertEquals(1, quality.traces());
        assertEquals(1, quality.presumedZeroDays());
        assertEquals(List.of(new QualityReport.ImpossibleDepth(LocalDate.of(2012, 2, 10), -5, 3)),
                quality.impossibleDepths());
        assertEquals(List.of(new QualityReport.MultiDayTotal(LocalDate.of(2012, 2, 14), 3, 9, false)),
                quality.multiDayTotals());
        assertEquals(3, quality.gaps().size());
        assertEquals(new QualityReport.Gap(LocalDate.of(2012, 1, 6), 2), quality.gaps().get(0));
    }

    @Test
    void multiDayTotalIsSpreadWhenAsked() throws IOException {
        RainReading reading = RainReader.read(DLY, ReadOptions.AUTO.withMultiDay(MultiDayPolicy.SPREAD), () -> false);
        for (int day = 12; day <= 14; day++) {
            int index = reading.record().indexOf(LocalDate.of(2012, 2, day));
            assertEquals(3.0, reading.record().depthMm(index));
            assertEquals(DayMark.SPREAD, reading.record().mark(index));
        }
        assertTrue(reading.quality().multiDayTotals().get(0).spread());
        assertTrue(reading.quality().sentences().stream().anyMatch(s -> s.contains("1 total of several days spread")));
    }

    @Test
    void dlyFaults() throws IOException {
        String whole = Files.readString(DLY);
        assertEquals("test.dly, line 5, column 117: the line is cut after 116 characters; a GHCN-Daily line has 269 "
                + "characters", assertThrows(RainFormatException.class,
                        () -> dly(whole.substring(0, 4 * 270 + 116))).getMessage());
        String rain = whole.lines().skip(1).findFirst().orElseThrow() + "\n";
        assertTrue(assertThrows(RainFormatException.class, () -> dly(rain + rain)).getMessage()
                .contains("line 2, column 12: the rain of 2012-01 stands in the file twice"));
        assertTrue(assertThrows(RainFormatException.class, () -> dly(rain.replace("201201", "201213"))).getMessage()
                .contains("column 16: the month is \"13\""));
        assertTrue(assertThrows(RainFormatException.class, () -> dly(rain.replace("  203", "  2x3"))).getMessage()
                .contains("column 46: the value of day 4 is \"  2x3\""));
        String leap = whole.lines().skip(2).findFirst().orElseThrow();
        RainFormatException inCommonYear = assertThrows(RainFormatException.class,
                () -> dly(leap.replace("201202", "201302")));
        assertTrue(inCommonYear.getMessage().contains("day 29 of 2013-02 has a value"), inCommonYear.getMessage());
        assertEquals(246, inCommonYear.column());
        assertTrue(assertThrows(RainFormatException.class, () -> dly(rain.replace("PRCP", "TMAX"))).getMessage()
                .contains("no line has the element PRCP"));
        assertThrows(RainFormatException.class, () -> dly(rain.replace("\n", "0000000000\n")));
        assertThrows(RainFormatException.class, () -> dly(""));
        assertThrows(RainFormatException.class, () -> dly("date,rain\n2012-01-01,5\n"));
    }

    @Test
    void dlyMonthsOutOfOrderAndSeveralStations() throws IOException {
        List<String> lines = Files.readAllLines(DLY);
        RainReading reading = dly(lines.get(2) + "\n" + lines.get(1) + "\n");
        assertEquals(1, reading.quality().rowsOutOfOrder());
        assertEquals(LocalDate.of(2012, 1, 1), reading.record().firstDay());
        assertEquals(10.9, reading.record().depthMm(1));
        assertEquals(14.5, reading.record().depthMm(59));
        String two = lines.get(1) + "\n" + lines.get(1).replace("ZZ0INVENTED", "ZZ0DISTANT1") + "\n";
        RainFormatException several = assertThrows(RainFormatException.class, () -> dly(two));
        assertTrue(several.getMessage().contains("2 stations") && several.getMessage().contains("ZZ0DISTANT1"));
        Path file = Files.writeString(folder.resolve("two.dly"), two);
        assertEquals("ZZ0DISTANT1", RainReader.read(file, ReadOptions.AUTO.withStation("ZZ0DISTANT1"), () -> false)
                .station());
        assertEquals(2, RainReader.readStations(file, ReadOptions.AUTO, () -> false).size());
        assertThrows(RainFormatException.class,
                () -> RainReader.read(file, ReadOptions.AUTO.withStation("ZZ0NOWHERE0"), () -> false));
    }

    // GHCN-Daily station CSV

    @Test
    void stationCsv() throws IOException {
        RainReading reading = RainReader.read(STATION);
        assertEquals(RainFormat.GHCN_STATION_CSV, reading.format());
        assertEquals("ZZ0INVENTED", reading.station());
        assertEquals(10.9, reading.record().depthMm(1));
        assertEquals(DayMark.FAILED_QUALITY, reading.record().mark(5));
        assertEquals(DayMark.MISSING, reading.record().mark(6));
        // no rows for 9 to 11 January; 10 to 12 lie in a total
        assertEquals(DayMark.MISSING, reading.record().mark(8));
        assertEquals(DayMark.IN_MULTI_DAY_TOTAL, reading.record().mark(9));
        assertEquals(DayMark.IN_MULTI_DAY_TOTAL, reading.record().mark(11));
        assertEquals(1.2, reading.record().depthMm(12));
        assertEquals(13, reading.record().days());
        assertEquals(1, reading.quality().traces());
        assertEquals(1, reading.quality().presumedZeroDays());
        assertEquals(Map.of('X', 1), reading.quality().failedQuality());
    }

    @Test
    void stationCsvWithDecimalsMustBeToldItsUnit() {
        String text = "STATION,DATE,PRCP\nZZ,2020-01-01,0.10\nZZ,2020-01-02,0.00\n";
        assertTrue(fault(text).getMessage().contains("line 2, column 3: \"0.10\" has decimals"));
        assertEquals(2.54, TestFiles.read(text, ReadOptions.AUTO.withDepthUnit(DepthUnit.IN)).record().depthMm(0));
    }

    // generic CSV

    @Test
    void seattle() throws IOException {
        RainReading reading = RainReader.read(TestFiles.SEATTLE);
        assertEquals(RainFormat.GENERIC_CSV, reading.format());
        assertEquals(1461, reading.record().days());
        assertEquals(0, reading.quality().missingDays());
        assertEquals(LocalDate.of(2012, 1, 1), reading.record().firstDay());
        assertEquals("2012-01-01 to 2015-12-31, 1461 days, none missing.", reading.quality().sentences().get(0));
        assertTrue(reading.quality().notes().stream().anyMatch(note -> note.contains("millimetres are assumed")));
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "date,precipitation[mm]\n2020-02-28,1.5\n2020-02-29,0\n2020-03-01,12.0\n",
        "\uFEFFdate,precipitation[mm]\r\n2020-02-28,1.5\r2020-02-29,0\n2020-03-01,12.0\r\n",
        "Date;Rain (cm)\n28.02.2020;0,15\n29.02.2020;0\n1.3.2020;1,2\n",
        "# made by hand\nday\tflag\train_mm\n\n2020/02/28\tx\t1.5\n2020/02/29\tx\t0\n2020/03/01\tx\t12\n",
        "date,rainfall [0.1mm]\n20200228,15\n20200229,0\n20200301,120\n",
        "\"date\",\"rain mm\"\n"
                + "\"2020-02-28T00:00\",\"1,5\"\n\"2020-02-29T00:00\",\"0,0\"\n\"2020-03-01T00:00\",\"12,0\"\n",
        "02/28/2020,1.5\n02/29/2020,0.0\n03/01/2020,12.0\n",
        "rain,date\n1.5,28/02/2020\n0,29/02/2020\n12,01/03/2020\n",
        "date,precipitation[m]\n2020-02-28,1.5e-3\n2020-02-29,0\n2020-03-01,0.012\n,\n",
    })
    void layoutsOfTheSameRain(String text) {
        RainRecord record = TestFiles.read(text).record();
        assertEquals(LocalDate.of(2020, 2, 28), record.firstDay());
        assertArrayEquals(new double[] {1.5, 0, 12}, record.completeDepthsMm(), 1e-12);
    }

    @Test
    void utf16AndOldCodePages() {
        String text = "date;lluvia caída;rain\n2020-02-28;ñ;1,5\n";
        byte[] utf16 = ("\uFEFF" + text).getBytes(StandardCharsets.UTF_16LE);
        assertEquals(1.5, RainReader.read("x", utf16, ReadOptions.AUTO, () -> false).record().depthMm(0));
        byte[] latin = text.getBytes(StandardCharsets.ISO_8859_1);
        assertEquals(1.5, RainReader.read("x", latin, ReadOptions.AUTO, () -> false).record().depthMm(0));
    }

    @Test
    void optionsAreObeyed() {
        ReadOptions options = ReadOptions.AUTO.withDateColumn("when").withDepthColumn("Gauge")
                .withDepthUnit(DepthUnit.IN).withDatePattern("d-MMM-yyyy").withDelimiter('|').withDecimalMark(',');
        RainRecord record = TestFiles.read("gauge|when|date\n1,5|29-Feb-2020|x\n", options).record();
        assertEquals(38.1, record.depthMm(0), 1e-12);
        assertTrue(fault("gauge|when\n1|29-Feb-2021\n", options).getMessage()
                .contains("line 2, column 2: \"29-Feb-2021\" is not a date"));
        assertTrue(fault("a|b\n1|2\n", options).getMessage().contains("there is no column \"when\""));
        assertTrue(assertThrows(IllegalArgumentException.class,
                () -> TestFiles.read("date,rain\n1,2\n", ReadOptions.AUTO.withDatePattern("bb{")))
                .getMessage().contains("dd.MM.yyyy"));
        assertThrows(IllegalArgumentException.class, () -> ReadOptions.AUTO.withDelimiter(',').withDecimalMark(','));
        assertThrows(IllegalArgumentException.class, () -> ReadOptions.AUTO.withDecimalMark('x'));
        assertThrows(IllegalArgumentException.class, () -> ReadOptions.AUTO.withDelimiter('5'));
    }

    @Test
    void missingAndTrace() {
        RainReading reading = TestFiles.read("date,rain_mm\n2020-01-01,\n2020-01-02,NA\n2020-01-03,-9999\n"
                + "2020-01-04,-99.9\n2020-01-05,T\n2020-01-08,3\n");
        assertEquals(6, reading.record().missingDays());
        assertEquals(1, reading.quality().traces());
        assertEquals(2, reading.quality().gaps().size());
        assertEquals(0, reading.record().depthMm(4));
    }

    @Test
    void impossibleDepthsAreCountedAndMissing() {
        RainReading reading = TestFiles.read("date,rain_mm\n2020-01-01,-3\n2020-01-02,1826\n2020-01-03,1e999\n"
                + "2020-01-04,1825\n");
        assertEquals(3, reading.record().count(DayMark.IMPOSSIBLE));
        assertEquals(3, reading.quality().impossibleDepths().size());
        assertEquals(3, reading.quality().impossibleDepths().get(1).line());
        assertEquals(1825, reading.record().depthMm(3));
        assertTrue(reading.quality().sentences().stream().anyMatch(s -> s.startsWith("3 impossible depths")));
    }

    @Test
    void duplicatesAndOrder() {
        RainReading reading = TestFiles.read("date,rain\n2020-01-03,3\n2020-01-01,1\n2020-01-02,2\n2020-01-02,2\n");
        assertArrayEquals(new double[] {1, 2, 3}, reading.record().completeDepthsMm());
        assertEquals(1, reading.quality().duplicateRows());
        assertEquals(1, reading.quality().rowsOutOfOrder());
        assertEquals("test.csv, line 4: the date 2020-01-02 stands in line 3 already, with another depth; one row a "
                + "day is accepted", fault("date,rain\n2020-01-01,1\n2020-01-02,2\n2020-01-02,5\n").getMessage());
    }

    @Test
    void dayAndMonthMustBeToldApart() {
        assertTrue(fault("date,rain\n01/02/2020,1\n05/04/2020,1\n").getMessage()
                .contains("day and month of the dates cannot be told apart"));
        assertEquals(LocalDate.of(2020, 2, 1), TestFiles.read("date,rain\n01/02/2020,1\n02/02/2020,1\n").record()
                .firstDay());
        assertEquals(LocalDate.of(2020, 1, 2), TestFiles.read("date,rain\n01/02/2020,1\n05/04/2020,1\n",
                ReadOptions.AUTO.withDatePattern("MM/dd/yyyy")).record().firstDay());
        assertEquals(LocalDate.of(2020, 5, 5), TestFiles.read("date,rain\n05/05/2020,1\n").record().firstDay());
        // a day of 13 settles it; a later row that only fits the other order is a fault
        assertTrue(fault("date,rain\n13/01/2020,1\n01/14/2020,1\n").getMessage().contains("line 3, column 1"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "date,rain~2019-02-29,1~| line 2, column 1: \"2019-02-29\" is not in the calendar",
        "date,rain~1900-02-29,1~| line 2, column 1: \"1900-02-29\" is not in the calendar",
        "date,rain~2020-01-01,1~2020-01-32,1~| line 3, column 1: \"2020-01-32\" is not in the calendar",
        "date,rain~2020-01-01,1~yesterday,1~| line 3, column 1: \"yesterday\" is not a date",
        "date,rain~2020-01-01,1~01.02.2020,1~| line 3, column 1: \"01.02.2020\" is not written like",
        "date,rain~2020-01-01,wet~| line 2, column 2: \"wet\" is not a depth; a number such as 12.5 is accepted",
        "date,rain~2020-01-01,1.5~2020-01-02,1.~| line 3, column 2: \"1.\" is not a depth",
        "date,rain~,5~| line 2, column 1: the row has no date",
        "date,rain,x~2020-01-01,1,2~2020-01-0| line 3, column 1: the row ends after 1 of 3 fields",
        "date,rain~2020-01-01,1~2020-01-02,| line 3, column 2: nothing is not a depth",
        "date,rain~2020-01-01,1~2020-01-0| line 3, column 1: the row ends after 1 of 2 fields",
        "date,rain~2020-01-01,1.5~2020-01-02,1| line 3, column 2: the file ends with \"1\"",
        "rain,date~1,2020-01-11~1,2020-01-1| line 3, column 2: \"2020-01-1\" is not",
        "date,rain~2020-01-01,1,5~| line 2, column 3: the row has 3 fields, the header 2",
        "date,rain~| there is no row below the header",
        "date~2020-01-01~| line 1: the first line has one column only",
        "when,rain~2020-01-01,1~| line 1: no column is named date",
        "date,amount~2020-01-01,1~| line 1: no column is named precipitation",
        "date,rain,rain~2020-01-01,1,2~| line 1, column 3: two columns are named \"rain\"",
        "date,rain[furlong]~2020-01-01,1~| line 1, column 2: \"furlong\" is not a unit of depth; mm, 0.1mm, cm, m, in",
        "2020-01-01,1,2~| line 1: there is no header",
        "date;rain~2020-01-01;1,5~2020-01-02;1.5~| line 3, column 2: \"1.5\" is not a depth; a number such as 12,5",
        "month,rain~1,5~| the file holds monthly normals, not days",
        "~~| the file has no row",
    })
    void faultsAreOneSentence(String text, String expected) {
        String message = fault(text.replace('~', '\n')).getMessage();
        assertTrue(message.startsWith("test.csv") && message.contains(expected.strip()), message);
        assertFalse(message.contains("\n"));
    }

    @Test
    void lineNumbersCountEveryLineEnd() {
        RainFormatException fault = fault("# one\r\n\r\ndate,rain\r2020-01-01,1\n\n2020-01-02,x\n");
        assertEquals(6, fault.line());
        assertEquals(2, fault.column());
        assertEquals("test.csv", fault.file());
    }

    @Test
    void quotedFieldThatDoesNotEnd() {
        assertThrows(RainFormatException.class, () -> TestFiles.read("date,rain\n2020-01-01,\"1\n2020-01-02,1\n"));
    }

    @Test
    void otherThanText() throws IOException {
        byte[] png = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n', 0, 0, 0, 13};
        Path file = Files.write(folder.resolve("roof.csv"), png);
        String message = assertThrows(RainFormatException.class, () -> RainReader.read(file)).getMessage();
        assertEquals(file + ": the file is a PNG picture; GHCN-Daily .dly, GHCN-Daily station CSV, or a CSV with a "
                + "date and a depth column is accepted", message);
        assertTrue(assertThrows(RainFormatException.class, () -> RainReader.read(folder)).getMessage()
                .contains("is a folder"));
        assertThrows(java.nio.file.NoSuchFileException.class, () -> RainReader.read(folder.resolve("none.csv")));
        assertTrue(fault("").getMessage().contains("the file is empty"));
        assertTrue(fault("date,rain\n\u0000\u0001").getMessage().contains("not text"));
        assertTrue(fault("PK\u0003\u0004zip").getMessage().contains("spreadsheet"));
    }

    // monthly normals

    @Test
    void normals() throws IOException {
        MonthlyNormals normals = RainReader.readNormals(TestFiles.RESOURCES.resolve("normals.csv"), ReadOptions.AUTO);
        assertEquals(820, normals.annualMm(), 1e-9);
        assertEquals(1.5, normals.depthMm(java.time.Month.AUGUST));
        assertEquals(0.4, normals.wetDays(java.time.Month.AUGUST).orElseThrow());
        assertEquals(RainFormat.MONTHLY_NORMALS, RainReader.findFormat(TestFiles.RESOURCES.resolve("normals.csv")));
        Path eleven = folder.resolve("eleven.csv");
        Files.writeString(eleven, "month;rain\nJan;1,5\nFebruary;2\n3;1\n04;1\n5;1\n6;1\n7;1\n8;1\n9;1\n10;1\n11;1\n");
        assertTrue(assertThrows(RainFormatException.class, () -> RainReader.readNormals(eleven, ReadOptions.AUTO))
                .getMessage().contains("month 12 is missing"));
        Files.writeString(eleven, Files.readString(eleven) + "12;1\n");
        assertEquals(13.5, RainReader.readNormals(eleven, ReadOptions.AUTO).annualMm());
        assertTrue(RainReader.readNormals(eleven, ReadOptions.AUTO).wetDays().isEmpty());
        Files.writeString(eleven, Files.readString(eleven) + "12;1\n");
        assertTrue(assertThrows(RainFormatException.class, () -> RainReader.readNormals(eleven, ReadOptions.AUTO))
                .getMessage().contains("line 14, column 1: the month stands in the file twice"));
        Files.writeString(eleven, "month,rain\n1,-5\n");
        assertTrue(assertThrows(RainFormatException.class, () -> RainReader.readNormals(eleven, ReadOptions.AUTO))
                .getMessage().contains("line 2, column 2: \"-5\" cannot be"));
    }

    // cancelling

    @Test
    void millionLinesCancelledMidway() throws IOException {
        StringBuilder text = new StringBuilder("date,precipitation[mm]\n");
        LocalDate date = LocalDate.of(1000, 1, 1);
        for (int row = 0; row < 1_000_000; row++) {
            text.append(date.plusDays(row)).append(",").append(row % 7).append(".5\n");
        }
        Path file = Files.writeString(folder.resolve("million.csv"), text);
        AtomicInteger polls = new AtomicInteger();
        // the longest stretch without a poll bounds the answer to a cancel at any moment; the best of a few runs,
        // since a busy machine can stop a thread for longer than that
        double longestMs = Double.POSITIVE_INFINITY;
        for (int run = 0; run < 5 && longestMs >= 200; run++) {
            polls.set(0);
            longestMs = longestStretchMs(file, polls);
        }
        assertTrue(longestMs < 200, "longest stretch without a poll: " + longestMs + " ms");
        int half = polls.get() / 2;
        polls.set(0);
        assertThrows(CancellationException.class,
                () -> RainReader.read(file, ReadOptions.AUTO, () -> polls.incrementAndGet() > half));
        assertEquals(half + 1, polls.get());
    }

    private static double longestStretchMs(Path file, AtomicInteger polls) throws IOException {
        AtomicLong last = new AtomicLong(System.nanoTime());
        AtomicLong longest = new AtomicLong();
        assertEquals(1_000_000, RainReader.read(file, ReadOptions.AUTO, () -> {
            polls.incrementAndGet();
            long now = System.nanoTime();
            longest.accumulateAndGet(now - last.getAndSet(now), Math::max);
            return false;
        }).record().days());
        return longest.accumulateAndGet(System.nanoTime() - last.get(), Math::max) / 1e6;
    }
}
