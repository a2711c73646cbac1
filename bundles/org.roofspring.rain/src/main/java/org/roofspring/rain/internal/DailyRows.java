package org.roofspring.rain.internal;

import java.time.LocalDate;
import java.util.Arrays;
import org.roofspring.rain.DayMark;

/** Depths row by row as a CSV gives them, set into calendar order once all are read. */
final class DailyRows {
    private static final int ROWS_BETWEEN_POLLS = 100_000;

    private double[] depthMm = new double[512];
    private byte[] marks = new byte[512];
    private int[] lines = new int[512];
    private int count;

    void add(double depth, DayMark mark, long line) {
        if (count == depthMm.length) {
            depthMm = Arrays.copyOf(depthMm, count * 2);
            marks = Arrays.copyOf(marks, count * 2);
            lines = Arrays.copyOf(lines, count * 2);
        }
        depthMm[count] = depth;
        marks[count] = (byte) mark.ordinal();
        lines[count] = (int) line;
        count++;
    }

    int count() {
        return count;
    }

    double depthMm(int row) {
        return depthMm[row];
    }

    int line(int row) {
        return lines[row];
    }

    void makeImpossible(int row) {
        depthMm[row] = Double.NaN;
        marks[row] = (byte) DayMark.IMPOSSIBLE.ordinal();
    }

    /** Puts the rows into calendar order. A date that comes twice with two depths is a fault. */
    DayTable inOrder(int[] epochDays, RainFile file, Findings findings) {
        DayTable days = new DayTable();
        int first = Integer.MAX_VALUE;
        int last = Integer.MIN_VALUE;
        for (int row = 0; row < count; row++) {
            first = Math.min(first, epochDays[row]);
            last = Math.max(last, epochDays[row]);
            findings.rowsOutOfOrder += row > 0 && epochDays[row] < epochDays[row - 1] ? 1 : 0;
        }
        int place = days.reserve(first, last - first + 1);
        int[] rowOfDay = new int[last - first + 1];
        for (int row = 0; row < count; row++) {
            if (row % ROWS_BETWEEN_POLLS == 0) {
                file.poll();
            }
            int day = epochDays[row] - first;
            int earlier = rowOfDay[day] - 1;
            if (earlier >= 0) {
                if (Double.compare(depthMm[earlier], depthMm[row]) != 0) {
                    throw file.fault(lines[row], 0, "the date " + LocalDate.ofEpochDay(epochDays[row])
                            + " stands in line " + lines[earlier] + " already, with another depth",
                            "one row a day is accepted");
                }
                findings.duplicateRows++;
                continue;
            }
            rowOfDay[day] = row + 1;
            days.depthMm()[place + day] = depthMm[row];
            days.marks()[place + day] = marks[row];
        }
        return days;
    }
}
