package org.roofspring.rain.internal;

import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Arrays;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.roofspring.rain.DayMark;
import org.roofspring.rain.MultiDayPolicy;

/**
 * Reads GHCN-Daily {@code .dly}: one month of one element a line. Columns (from 1): station 1-11, year 12-15, month
 * 16-17, element 18-21, then for each of 31 days a value of 5 characters and the flags M, Q and S. PRCP and MDPR are
 * tenths of a millimetre; -9999 is missing. Source: NOAA, Global Historical Climatology Network - Daily, readme,
 * version 3.00.
 *
 * <p>Works on bytes, since decades of many stations make files of tens of megabytes.
 */
public final class DlyParser {
    static final int LINE_LENGTH = 269;
    /** A line whose trailing blanks were stripped still has the value of day 31. */
    private static final int SHORTEST_LINE = 266;
    private static final int FIRST_VALUE = 21;
    private static final int DAY_WIDTH = 8;
    private static final int MISSING = -9999;
    private static final int NOT_A_NUMBER = Integer.MIN_VALUE;
    private static final int LINES_BETWEEN_POLLS = 4096;
    private static final VarHandle EIGHT_BYTES = MethodHandles.byteArrayViewVarHandle(long[].class,
            ByteOrder.LITTLE_ENDIAN);
    /** One in each of the five bytes that hold the characters of a value. */
    private static final long FIVE = 0x0101010101L;
    private static final long SPACES = 0x2020202020202020L;
    private static final long HIGH_BITS = 0x8080808080808080L;
    private static final byte MEASURED = (byte) DayMark.MEASURED.ordinal();
    private static final byte ABSENT = (byte) DayMark.MISSING.ordinal();
    private static final String LINE_ACCEPTED = "a GHCN-Daily line has 269 characters";

    private final RainFile file;
    private final byte[] bytes;
    private final MultiDayPolicy policy;
    private final Map<String, Station> stations = new LinkedHashMap<>();
    private Station current;
    private long line;

    private DlyParser(RainFile file, MultiDayPolicy policy) {
        this.file = file;
        this.bytes = file.bytes();
        this.policy = policy;
    }

    /** Whether a line is laid out as this format says, so that the file is taken for one of these. */
    public static boolean looksLike(String line) {
        return line.length() >= FIRST_VALUE + 5
                && line.substring(0, FIRST_VALUE).matches("[A-Z]{2}[A-Z0-9]\\w{8}\\d{6}[A-Z0-9]{4}")
                && line.substring(FIRST_VALUE, FIRST_VALUE + 5).matches(" *-?\\d+");
    }

    /** Every station of the file that has rain, in the order of the file; never empty. */
    public static List<ParsedStation> parse(RainFile file, MultiDayPolicy policy) {
        return new DlyParser(file, policy).parse();
    }

    private static final class Station {
        final byte[] id;
        final DayTable days = new DayTable();
        final Findings findings = new Findings();
        final MultiDayTotals multiDay = new MultiDayTotals();
        final BitSet monthsSeen = new BitSet();
        int lastMonth = -1;
        int unsureSource;

        Station(byte[] id) {
            this.id = id;
        }
    }

    private List<ParsedStation> parse() {
        int start = 0;
        while (start < bytes.length) {
            int end = lineEnd(start);
            line++;
            if (line % LINES_BETWEEN_POLLS == 0) {
                file.poll();
            }
            if (!isBlank(start, end)) {
                parseLine(start, end);
            }
            start = end + 1;
            if (end + 1 < bytes.length && bytes[end] == '\r' && bytes[end + 1] == '\n') {
                start++;
            }
        }
        List<ParsedStation> parsed = stations.values().stream().map(this::finished)
                .filter(station -> station != null).toList();
        if (parsed.isEmpty()) {
            throw file.fault(0, 0, "no line has the element PRCP, daily rain", "a .dly file with PRCP is accepted");
        }
        return parsed;
    }

    /** Where the line ends: at a line feed, a carriage return, or the end of the file. */
    private int lineEnd(int start) {
        int at = start;
        // eight bytes at a time up to the first of them that holds a control character
        while (at + Long.BYTES <= bytes.length && (((long) EIGHT_BYTES.get(bytes, at) - SPACES) & HIGH_BITS) == 0) {
            at += Long.BYTES;
        }
        while (at < bytes.length && bytes[at] != '\n' && bytes[at] != '\r') {
            at++;
        }
        return at;
    }

    private boolean isBlank(int start, int end) {
        int at = start;
        while (at < end && bytes[at] == ' ') {
            at++;
        }
        return at == end;
    }

    private void parseLine(int start, int end) {
        int length = end - start;
        if (length < SHORTEST_LINE) {
            throw file.fault(line, length + 1, "the line is cut after " + length + " characters", LINE_ACCEPTED);
        }
        if (length > LINE_LENGTH && !isBlank(start + LINE_LENGTH, end)) {
            throw file.fault(line, LINE_LENGTH + 1, "the line has " + length + " characters", LINE_ACCEPTED);
        }
        int year = number(start + 11, 4);
        int month = number(start + 15, 2);
        if (year < 1) {
            throw file.fault(line, 12, "the year is " + text(start + 11, 4), "four digits are accepted");
        }
        if (month < 1 || month > 12) {
            throw file.fault(line, 16, "the month is " + text(start + 15, 2), "01 to 12 is accepted");
        }
        if (bytes[start + 17] == 'P' && bytes[start + 18] == 'R' && bytes[start + 19] == 'C'
                && bytes[start + 20] == 'P') {
            rainLine(start, end, year, month);
        } else {
            String element = new String(bytes, start + 17, 4, StandardCharsets.ISO_8859_1);
            if (element.equals("MDPR") || element.equals("DAPR")) {
                multiDayLine(start, end, year, month, element.equals("MDPR"));
            }
        }
    }

    private Station station(int start) {
        if (current == null || !Arrays.equals(current.id, 0, 11, bytes, start, start + 11)) {
            current = stations.computeIfAbsent(new String(bytes, start, 11, StandardCharsets.ISO_8859_1),
                    id -> new Station(Arrays.copyOfRange(bytes, start, start + 11)));
        }
        return current;
    }

    private void rainLine(int start, int end, int year, int month) {
        Station station = station(start);
        int monthNumber = year * 12 + month - 1;
        if (station.monthsSeen.get(monthNumber)) {
            throw file.fault(line, 12, "the rain of " + YearMonth.of(year, month) + " stands in the file twice",
                    "one PRCP line a month is accepted");
        }
        station.monthsSeen.set(monthNumber);
        if (monthNumber < station.lastMonth) {
            station.findings.rowsOutOfOrder++;
        }
        station.lastMonth = monthNumber;
        long epochDay = LocalDate.of(year, month, 1).toEpochDay();
        int length = daysOfMonth(year, month);
        int place = station.days.reserve(epochDay, length);
        double[] depthMm = station.days.depthMm();
        byte[] marks = station.days.marks();
        int at = start + FIRST_VALUE;
        for (int day = 0; day < length; day++, at += DAY_WIDTH) {
            long word = word(at, end);
            int tenths = value(word, at);
            byte mFlag = (byte) (word >>> 40);
            byte qFlag = (byte) (word >>> 48);
            station.unsureSource += word >>> 56 == 'S' ? 1 : 0;
            if (tenths >= 0 && qFlag == ' ' && tenths <= 10 * Findings.LARGEST_OBSERVED_MM) {
                depthMm[place + day] = tenths / 10.0;
                marks[place + day] = MEASURED;
                if (mFlag != ' ') {
                    station.findings.traces += mFlag == 'T' ? 1 : 0;
                    station.findings.presumedZeroDays += mFlag == 'P' ? 1 : 0;
                }
            } else if (tenths != MISSING) {
                unusable(station, day, at, tenths, qFlag, epochDay);
            }
        }
        for (int day = length; day < 31; day++, at += DAY_WIDTH) {
            if (value(word(at, end), at) != MISSING) {
                throw file.fault(line, at - start + 1, "day " + (day + 1) + " of " + YearMonth.of(year, month)
                        + " has a value", "that month has " + length + " days; -9999 is accepted past its end");
            }
        }
    }

    private void unusable(Station station, int day, int at, int tenths, byte qFlag, long monthEpochDay) {
        long epochDay = monthEpochDay + day;
        if (tenths == NOT_A_NUMBER) {
            throw notANumber(day, at);
        }
        if (qFlag != ' ') {
            station.findings.failed((char) qFlag);
            station.days.set(epochDay, Double.NaN, DayMark.FAILED_QUALITY);
        } else {
            station.findings.impossible(epochDay, tenths / 10.0, line);
            station.days.set(epochDay, Double.NaN, DayMark.IMPOSSIBLE);
        }
    }

    private void multiDayLine(int start, int end, int year, int month, boolean isTotal) {
        Station station = station(start);
        long epochDay = LocalDate.of(year, month, 1).toEpochDay();
        int at = start + FIRST_VALUE;
        for (int day = 0; day < daysOfMonth(year, month); day++, at += DAY_WIDTH) {
            long word = word(at, end);
            int value = value(word, at);
            byte qFlag = (byte) (word >>> 48);
            if (value == NOT_A_NUMBER) {
                throw notANumber(day, at);
            }
            if (value != MISSING && qFlag != ' ') {
                station.findings.failed((char) qFlag);
            } else if (value != MISSING && isTotal) {
                station.multiDay.total(epochDay + day, value / 10.0, line);
            } else if (value != MISSING) {
                station.multiDay.length(epochDay + day, value);
            }
        }
    }

    private ParsedStation finished(Station station) {
        if (station.days.isEmpty()) {
            return null;
        }
        station.multiDay.apply(station.days, station.findings, policy);
        if (station.unsureSource > 0) {
            station.findings.notes.add(station.unsureSource + " readings come from source S (Global Summary of the "
                    + "Day), whose rain is to be used with caution.");
        }
        return ParsedStation.of(new String(station.id, StandardCharsets.ISO_8859_1), station.days, station.findings);
    }

    private RuntimeException notANumber(int day, int at) {
        return file.fault(line, FIRST_VALUE + DAY_WIDTH * day + 1, "the value of day " + (day + 1) + " is "
                + text(at, 5), "a whole number of tenths of a millimetre in five characters is accepted");
    }

    private String text(int at, int length) {
        return RainFile.quoted(new String(bytes, at, length, StandardCharsets.ISO_8859_1));
    }

    /** Value and flags of a day, its first character lowest; blanks where the line ends before. */
    private long word(int at, int end) {
        if (at + DAY_WIDTH <= end) {
            return (long) EIGHT_BYTES.get(bytes, at);
        }
        long word = 0;
        for (int i = DAY_WIDTH - 1; i >= 0; i--) {
            word = word << 8 | (at + i < end ? bytes[at + i] & 0xFF : ' ');
        }
        return word;
    }

    /**
     * Blanks, perhaps a minus, digits; {@link #NOT_A_NUMBER} for anything else.
     *
     * <p>All five characters are looked at together, one in each byte of a number: this is where the time of reading
     * goes, and a loop that ends where the blanks end is four times slower.
     */
    private int value(long word, int at) {
        long characters = word & FIVE * 0xFF;
        long digits = characters & FIVE * 0x0F;
        long isDigit = characters >>> 4 & FIVE;
        long isBlank = isDigit ^ FIVE;
        boolean blanksAndDigits = (characters & FIVE * 0xE0) == FIVE * 0x20
                && (digits + FIVE * 6 & FIVE * 0x10) == 0 && (digits & isBlank * 0x0F) == 0;
        boolean digitsAreLast = (isDigit << 8 & isBlank) == 0 && isDigit >>> 32 == 1;
        if (!blanksAndDigits || !digitsAreLast) {
            return negative(at);
        }
        long pairs = digits * 10 + (digits >>> 8);
        return (int) ((pairs & 0xFF) * 1000 + (pairs >>> 16 & 0xFF) * 10 + (digits >>> 32));
    }

    private int negative(int at) {
        int i = at;
        while (i < at + 4 && bytes[i] == ' ') {
            i++;
        }
        int number = bytes[i] == '-' ? number(i + 1, at + 4 - i) : -1;
        return number < 0 ? NOT_A_NUMBER : -number;
    }

    /** Digits only; -1 for anything else. */
    private int number(int at, int length) {
        int value = length == 0 ? -1 : 0;
        for (int i = at; i < at + length; i++) {
            int digit = bytes[i] - '0';
            if (digit < 0 || digit > 9) {
                return -1;
            }
            value = value * 10 + digit;
        }
        return value;
    }

    private static int daysOfMonth(int year, int month) {
        return month == 2 ? (year % 4 == 0 && (year % 100 != 0 || year % 400 == 0) ? 29 : 28)
                : month == 4 || month == 6 || month == 9 || month == 11 ? 30 : 31;
    }
}
