package org.roofspring.rain.internal;

import java.util.Arrays;
import org.roofspring.rain.DayMark;

/** Depths and marks by date, growing at both ends while a file is read. */
final class DayTable {
    private static final byte MISSING = (byte) DayMark.MISSING.ordinal();

    /** Room for the days of a century, so that most tables never grow. */
    private static final int SMALLEST = 36_600;

    private double[] depthMm = {};
    private byte[] marks = {};
    /** Day since 1970-01-01 of element 0. */
    private long origin;
    private int first;
    private int end;

    boolean isEmpty() {
        return first == end;
    }

    /**
     * Makes room for a run of days and gives the place of its first one in {@link #depthMm()}. Days that were not in
     * the table before are missing.
     */
    int reserve(long epochDay, int days) {
        if (isEmpty()) {
            origin = epochDay;
        }
        long place = epochDay - origin;
        if (place < 0) {
            int room = (int) Math.max(-place, depthMm.length / 2);
            makeRoomBefore(room);
            place += room;
        }
        if (place + days > depthMm.length) {
            int capacity = (int) Math.max(place + days, Math.max(SMALLEST, depthMm.length * 2L));
            depthMm = Arrays.copyOf(depthMm, capacity);
            marks = Arrays.copyOf(marks, capacity);
        }
        if (place < first) {
            setMissing((int) place, first);
            first = (int) place;
        }
        if (place + days > end) {
            setMissing(end, (int) place + days);
            end = (int) place + days;
        }
        return (int) place;
    }

    private void makeRoomBefore(int room) {
        double[] newDepthMm = new double[depthMm.length + room];
        byte[] newMarks = new byte[depthMm.length + room];
        System.arraycopy(depthMm, first, newDepthMm, first + room, end - first);
        System.arraycopy(marks, first, newMarks, first + room, end - first);
        depthMm = newDepthMm;
        marks = newMarks;
        origin -= room;
        first += room;
        end += room;
    }

    private void setMissing(int from, int to) {
        Arrays.fill(depthMm, from, to, Double.NaN);
        Arrays.fill(marks, from, to, MISSING);
    }

    /** Live array; valid until the next {@link #reserve}. */
    double[] depthMm() {
        return depthMm;
    }

    /** Live array of ordinals of {@link DayMark}; valid until the next {@link #reserve}. */
    byte[] marks() {
        return marks;
    }

    void set(long epochDay, double depth, DayMark mark) {
        int place = reserve(epochDay, 1);
        depthMm[place] = depth;
        marks[place] = (byte) mark.ordinal();
    }

    boolean hasDepth(long epochDay) {
        long place = epochDay - origin;
        return place >= first && place < end && !Double.isNaN(depthMm[(int) place]);
    }

    long firstEpochDay() {
        return origin + first;
    }

    double[] copyDepthsMm() {
        return Arrays.copyOfRange(depthMm, first, end);
    }

    byte[] copyMarks() {
        return Arrays.copyOfRange(marks, first, end);
    }
}
