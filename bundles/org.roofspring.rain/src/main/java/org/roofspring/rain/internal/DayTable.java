package org.roofspring.rain.internal;

import java.util.Arrays;
import org.roofspring.rain.DayMark;

/** Depths and marks by date, growing at both ends while a file is read. */
final class DayTable {
    private static final byte MISSING = (byte) DayMark.MISSING.ordinal();

    private double[] depthMm = {};
    private byte[] marks = {};
    /** Day since 1970-01-01 of element 0. */
    private long origin;
    private int first;
    private int end;

    boolean isEmpty() {
        return first == end;
    }

    /** Makes room for a run of days and gives the place of its first one in {@link #depthMm()}. */
    int reserve(long epochDay, int days) {
        if (isEmpty()) {
            origin = epochDay;
            grow(0, Math.max(days, 366));
            end = days;
            return 0;
        }
        long place = epochDay - origin;
        if (place < 0) {
            int room = (int) Math.max(-place, depthMm.length / 2);
            grow(room, depthMm.length + room);
            origin -= room;
            first += room;
            end += room;
            place += room;
        }
        if (place + days > depthMm.length) {
            grow(0, (int) Math.max(place + days, depthMm.length * 2L));
        }
        first = (int) Math.min(first, place);
        end = (int) Math.max(end, place + days);
        return (int) place;
    }

    private void grow(int shift, int capacity) {
        double[] newDepthMm = new double[capacity];
        byte[] newMarks = new byte[capacity];
        Arrays.fill(newDepthMm, 0, shift, Double.NaN);
        Arrays.fill(newDepthMm, shift + depthMm.length, capacity, Double.NaN);
        Arrays.fill(newMarks, 0, shift, MISSING);
        Arrays.fill(newMarks, shift + marks.length, capacity, MISSING);
        System.arraycopy(depthMm, 0, newDepthMm, shift, depthMm.length);
        System.arraycopy(marks, 0, newMarks, shift, marks.length);
        depthMm = newDepthMm;
        marks = newMarks;
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
