package org.roofspring.storage.system;

import java.util.List;
import org.roofspring.storage.internal.FixedVolume;

/**
 * What a system is run over, day by day; every series has the same length. The arrays are not copied and not to be
 * written to.
 *
 * @param inflowM3 for each stage, what its roofs send [m&sup3;], each day 0 to 2,000,000
 * @param demandM3 for each use, what it asks for [m&sup3;]
 * @param evaporationMm off open water [mm], each day 0 to 1000; a series of length 0 for none. Rain on an open tank is
 *            not in here: give it a catchment of its own
 */
public record SystemSeries(List<double[]> inflowM3, List<double[]> demandM3, double[] evaporationMm) {

    private static final double MAX_EVAPORATION_MM = 1000;

    /** Copies the lists and checks lengths. */
    public SystemSeries {
        inflowM3 = List.copyOf(inflowM3);
        demandM3 = List.copyOf(demandM3);
        if (inflowM3.isEmpty() || inflowM3.getFirst().length == 0) {
            throw new IllegalArgumentException(
                    "inflowM3 has no days; accepted is one series or more of one day or more");
        }
        int days = inflowM3.getFirst().length;
        inflowM3.forEach(series -> length(series, days, "inflowM3"));
        demandM3.forEach(series -> length(series, days, "demandM3"));
        if (evaporationMm.length > 0) {
            length(evaporationMm, days, "evaporationMm");
        }
    }

    /** Days of the run. */
    public int days() {
        return inflowM3.getFirst().length;
    }

    long[][] inflowUnits(StorageSystem system) {
        return units(inflowM3, system.stages().size(), "inflowM3");
    }

    long[][] demandUnits(StorageSystem system) {
        return units(demandM3, system.uses().size(), "demandM3");
    }

    /** Evaporation of each day [mm], checked; all zero when none was given. */
    double[] checkedEvaporationMm() {
        if (evaporationMm.length == 0) {
            return new double[days()];
        }
        for (int day = 0; day < evaporationMm.length; day++) {
            if (!(evaporationMm[day] >= 0 && evaporationMm[day] <= MAX_EVAPORATION_MM)) {
                throw new IllegalArgumentException("evaporationMm on day " + day + " is " + evaporationMm[day]
                        + " mm; accepted is 0 to 1000");
            }
        }
        return evaporationMm;
    }

    private static long[][] units(List<double[]> series, int wanted, String name) {
        if (series.size() != wanted) {
            throw new IllegalArgumentException(
                    name + " has " + series.size() + " series; accepted is " + wanted + ", one for each part");
        }
        long[][] units = new long[wanted][];
        long total = 0;
        for (int i = 0; i < wanted; i++) {
            units[i] = FixedVolume.toUnits(series.get(i), name + " series " + i);
            total = FixedVolume.addTotals(total, FixedVolume.sum(units[i]), name);
        }
        return units;
    }

    private static void length(double[] series, int days, String name) {
        if (series.length != days) {
            throw new IllegalArgumentException(
                    name + " has a series of " + series.length + " days; accepted is " + days + " as in the first");
        }
    }
}
