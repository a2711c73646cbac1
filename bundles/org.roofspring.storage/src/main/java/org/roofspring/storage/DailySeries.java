package org.roofspring.storage;

import org.roofspring.storage.internal.FixedVolume;

/** Inflow and demand of a record in whole units, checked once. The arrays are not to be written to. */
record DailySeries(long[] inflow, long[] demand) {

    static DailySeries of(double[] inflowM3, double[] demandM3) {
        if (inflowM3.length == 0) {
            throw new IllegalArgumentException("inflowM3 has no days; accepted is one day or more");
        }
        if (demandM3.length != inflowM3.length) {
            throw new IllegalArgumentException("demandM3 has " + demandM3.length + " days; accepted is the "
                    + inflowM3.length + " days of inflowM3");
        }
        return new DailySeries(FixedVolume.toUnits(inflowM3, "inflowM3"), FixedVolume.toUnits(demandM3, "demandM3"));
    }

    int days() {
        return inflow.length;
    }

    int demandDays() {
        int days = 0;
        for (long asked : demand) {
            days += asked > 0 ? 1 : 0;
        }
        return days;
    }

    long totalInflow() {
        return FixedVolume.sum(inflow);
    }

    long totalDemand() {
        return FixedVolume.sum(demand);
    }
}
