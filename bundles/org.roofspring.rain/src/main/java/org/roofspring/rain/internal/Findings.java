package org.roofspring.rain.internal;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.roofspring.rain.QualityReport.ImpossibleDepth;
import org.roofspring.rain.QualityReport.MultiDayTotal;

/** What a parser counts on its way through a file. */
final class Findings {
    /**
     * More rain [mm] than fell on the wettest day known, 1825 mm at Foc-Foc, Reunion, on 7 and 8 January 1966 (World
     * Meteorological Organization, archive of weather and climate extremes; from memory).
     */
    static final double LARGEST_OBSERVED_MM = 1825;

    final SortedMap<Character, Integer> failedQuality = new TreeMap<>();
    final List<ImpossibleDepth> impossible = new ArrayList<>();
    final List<MultiDayTotal> multiDayTotals = new ArrayList<>();
    final List<String> notes = new ArrayList<>();
    int traces;
    int presumedZeroDays;
    int duplicateRows;
    int rowsOutOfOrder;

    static boolean isPossible(double depthMm) {
        return depthMm >= 0 && depthMm <= LARGEST_OBSERVED_MM;
    }

    void failed(char flag) {
        failedQuality.merge(flag, 1, Integer::sum);
    }

    void impossible(long epochDay, double depthMm, long line) {
        impossible.add(new ImpossibleDepth(LocalDate.ofEpochDay(epochDay), depthMm, line));
    }
}
