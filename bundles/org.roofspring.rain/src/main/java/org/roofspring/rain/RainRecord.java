package org.roofspring.rain;

import java.nio.ByteBuffer;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Objects;

/**
 * Rain of consecutive calendar days; immutable.
 *
 * <p>Each day has a depth [mm] from 0 to {@link #MAX_DEPTH_MM}, or is missing. A missing day never shows as a number:
 * {@link #depthMm} refuses it, and {@link #completeDepthsMm} refuses a record with gaps.
 */
public final class RainRecord {
    /** Depths above this [mm] are refused: several times the rain of the wettest day ever observed. */
    public static final double MAX_DEPTH_MM = 10_000;
    private static final DayMark[] MARKS = DayMark.values();
    /** By ordinal of the mark; this is asked for every day of every file. */
    private static final boolean[] HAS_DEPTH = new boolean[MARKS.length];

    static {
        for (DayMark mark : MARKS) {
            HAS_DEPTH[mark.ordinal()] = mark.hasDepth();
        }
    }

    private final LocalDate firstDay;
    private final double[] depthMm;
    private final byte[] marks;
    private final int[] counts;
    /** Computed when first asked for; a race computes the same text twice, which does no harm. */
    private String contentHash;

    private RainRecord(LocalDate firstDay, double[] depthMm, byte[] marks) {
        this.firstDay = firstDay;
        this.depthMm = depthMm;
        this.marks = marks;
        this.counts = new int[MARKS.length];
        for (byte mark : marks) {
            counts[mark]++;
        }
    }

    /**
     * A record of measured days.
     *
     * @param firstDay date of the first depth
     * @param depthMm  depth of each day [mm], 0 to {@link #MAX_DEPTH_MM}; NaN where the day is missing; copied
     * @throws IllegalArgumentException when there is no day, or a depth is out of range
     */
    public static RainRecord of(LocalDate firstDay, double[] depthMm) {
        Objects.requireNonNull(depthMm, "depthMm");
        byte[] marks = new byte[depthMm.length];
        for (int day = 0; day < marks.length; day++) {
            marks[day] = (byte) (Double.isNaN(depthMm[day]) ? DayMark.MISSING : DayMark.MEASURED).ordinal();
        }
        return owning(firstDay, depthMm.clone(), marks);
    }

    /**
     * A record whose days carry the same mark where they have a depth, such as {@link DayMark#SYNTHETIC}.
     *
     * @throws IllegalArgumentException as {@link #of(LocalDate, double[])}, or when the mark is of missing days
     */
    public static RainRecord of(LocalDate firstDay, double[] depthMm, DayMark mark) {
        Objects.requireNonNull(depthMm, "depthMm");
        if (!mark.hasDepth()) {
            throw new IllegalArgumentException("mark is " + mark + ", but a mark of days with a depth is accepted");
        }
        byte[] marks = new byte[depthMm.length];
        for (int day = 0; day < marks.length; day++) {
            marks[day] = (byte) (Double.isNaN(depthMm[day]) ? DayMark.MISSING : mark).ordinal();
        }
        return owning(firstDay, depthMm.clone(), marks);
    }

    /**
     * A record with a mark for each day.
     *
     * @param marks as many as depths; {@link DayMark#hasDepth()} exactly where the depth is a number; copied
     * @throws IllegalArgumentException as {@link #of(LocalDate, double[])}, or when marks and depths disagree
     */
    public static RainRecord of(LocalDate firstDay, double[] depthMm, DayMark[] marks) {
        Objects.requireNonNull(depthMm, "depthMm");
        if (marks.length != depthMm.length) {
            throw new IllegalArgumentException("marks has " + marks.length + " days and depthMm " + depthMm.length
                    + "; as many of each are accepted");
        }
        byte[] ordinals = new byte[marks.length];
        for (int day = 0; day < marks.length; day++) {
            ordinals[day] = (byte) marks[day].ordinal();
        }
        return owning(firstDay, depthMm.clone(), ordinals);
    }

    /** Takes the arrays as its own, so that a reader of long files need not copy them. */
    static RainRecord owning(LocalDate firstDay, double[] depthMm, byte[] marks) {
        Objects.requireNonNull(firstDay, "firstDay");
        if (depthMm.length == 0) {
            throw new IllegalArgumentException("depthMm has no day; a record of at least one day is accepted");
        }
        for (int day = 0; day < depthMm.length; day++) {
            double depth = depthMm[day];
            boolean missing = Double.isNaN(depth);
            if (depth >= 0 && depth <= MAX_DEPTH_MM && HAS_DEPTH[marks[day]]) {
                continue;
            }
            if (!missing && !(depth >= 0 && depth <= MAX_DEPTH_MM)) {
                throw new IllegalArgumentException("depthMm of " + firstDay.plusDays(day) + " is " + depth
                        + "; 0 to 10000 mm is accepted, NaN where the day is missing");
            }
            if (HAS_DEPTH[marks[day]] == missing) {
                throw new IllegalArgumentException("the mark of " + firstDay.plusDays(day) + " is "
                        + MARKS[marks[day]] + " but its depth is " + depth + "; they must agree");
            }
        }
        return new RainRecord(firstDay, depthMm, marks);
    }

    /** Date of day 0. */
    public LocalDate firstDay() {
        return firstDay;
    }

    /** Date of the last day. */
    public LocalDate lastDay() {
        return firstDay.plusDays(days() - 1L);
    }

    /** Calendar days from first to last, missing ones included. */
    public int days() {
        return depthMm.length;
    }

    /** Date of a day by its index. */
    public LocalDate date(int day) {
        return firstDay.plusDays(Objects.checkIndex(day, depthMm.length));
    }

    /**
     * Index of a date.
     *
     * @throws IllegalArgumentException when the date lies outside the record
     */
    public int indexOf(LocalDate date) {
        long day = date.toEpochDay() - firstDay.toEpochDay();
        if (day < 0 || day >= depthMm.length) {
            throw new IllegalArgumentException("date is " + date + "; " + span() + " is accepted");
        }
        return (int) day;
    }

    /** Whether the day has no depth. */
    public boolean isMissing(int day) {
        return Double.isNaN(depthMm[day]);
    }

    /**
     * Depth of a day [mm].
     *
     * @throws MissingRainException when the day is missing
     */
    public double depthMm(int day) {
        double depth = depthMm[day];
        if (Double.isNaN(depth)) {
            throw new MissingRainException("the rain of " + date(day) + " is missing");
        }
        return depth;
    }

    /** Depth of a day [mm], or the given number where it is missing. */
    public double depthMmOr(int day, double whereMissing) {
        double depth = depthMm[day];
        return Double.isNaN(depth) ? whereMissing : depth;
    }

    /** Where the depth of a day comes from, or why it has none. */
    public DayMark mark(int day) {
        return MARKS[marks[day]];
    }

    /** How many days carry a mark. */
    public int count(DayMark mark) {
        return counts[mark.ordinal()];
    }

    /** Days without a depth, for whatever reason. */
    public int missingDays() {
        int missing = 0;
        for (DayMark mark : MARKS) {
            missing += mark.hasDepth() ? 0 : count(mark);
        }
        return missing;
    }

    /** Days filled by a stated method. */
    public int filledDays() {
        return count(DayMark.FILLED);
    }

    /** Whether every day has a depth. */
    public boolean isComplete() {
        return missingDays() == 0;
    }

    /**
     * All depths [mm] as a new array, for a kernel that runs over them.
     *
     * @throws MissingRainException when a day is missing
     */
    public double[] completeDepthsMm() {
        int missing = missingDays();
        if (missing > 0) {
            throw new MissingRainException(missing + " of " + days() + " days are missing, the first on "
                    + date(firstMissing()) + "; choose how to fill them: zero, mean or climatology");
        }
        return depthMm.clone();
    }

    private int firstMissing() {
        int day = 0;
        while (!isMissing(day)) {
            day++;
        }
        return day;
    }

    /**
     * The days from one date to another, both included.
     *
     * @throws IllegalArgumentException when they are in the wrong order or outside the record
     */
    public RainRecord slice(LocalDate from, LocalDate to) {
        int first = indexOf(from);
        int last = indexOf(to);
        if (last < first) {
            throw new IllegalArgumentException("to is " + to + "; " + from + " or later is accepted");
        }
        return new RainRecord(from, Arrays.copyOfRange(depthMm, first, last + 1),
                Arrays.copyOfRange(marks, first, last + 1));
    }

    /**
     * SHA-256 of the first date and the depths, in hexadecimal: two records with the same hash hold the same rain.
     * Marks do not enter.
     */
    public String contentHash() {
        String hash = contentHash;
        if (hash == null) {
            hash = computeHash();
            contentHash = hash;
        }
        return hash;
    }

    private String computeHash() {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            ByteBuffer block = ByteBuffer.allocate(8 * 1024);
            block.putLong(firstDay.toEpochDay());
            for (double depth : depthMm) {
                if (!block.hasRemaining()) {
                    digest.update(block.flip());
                    block.clear();
                }
                // + 0.0 makes a negative zero positive, so that equal records have equal hashes
                block.putDouble(depth + 0.0);
            }
            digest.update(block.flip());
            return HexFormat.of().formatHex(digest.digest());
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    /** The array itself, for figures within this package; NaN where a day is missing; never to be written to. */
    double[] rawDepthsMm() {
        return depthMm;
    }

    String span() {
        return firstDay + " to " + lastDay();
    }

    /** Equal when the days, depths and marks are equal. */
    @Override
    public boolean equals(Object other) {
        return other instanceof RainRecord that && firstDay.equals(that.firstDay)
                && Arrays.equals(marks, that.marks) && sameDepths(that);
    }

    private boolean sameDepths(RainRecord that) {
        for (int day = 0; day < depthMm.length; day++) {
            if (!isMissing(day) && depthMm[day] != that.depthMm[day]) {
                return false;
            }
        }
        return true;
    }

    @Override
    public int hashCode() {
        return Objects.hash(firstDay, contentHash());
    }

    @Override
    public String toString() {
        return "rain of " + days() + " days, " + span() + ", " + missingDays() + " missing";
    }
}
