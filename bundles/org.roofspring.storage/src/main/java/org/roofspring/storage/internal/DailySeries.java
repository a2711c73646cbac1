package org.roofspring.storage.internal;

/** Inflow and demand of a record in whole units, checked once. The arrays are not to be written to. */
public record DailySeries(long[] inflow, long[] demand) {

    /**
     * Checks and converts.
     *
     * @throws IllegalArgumentException when a series is empty, has another length, or holds a value out of range
     */
    public static DailySeries of(double[] inflowM3, double[] demandM3) {
        if (inflowM3.length == 0) {
            throw new IllegalArgumentException("inflowM3 has no days; accepted is one day or more");
        }
        if (demandM3.length != inflowM3.length) {
            throw new IllegalArgumentException("demandM3 has " + demandM3.length + " days; accepted is the "
                    + inflowM3.length + " days of inflowM3");
        }
        return new DailySeries(FixedVolume.toUnits(inflowM3, "inflowM3"), FixedVolume.toUnits(demandM3, "demandM3"));
    }

    /** Days in the record. */
    public int days() {
        return inflow.length;
    }

    /** Days with a demand above zero. */
    public int demandDays() {
        int days = 0;
        for (long asked : demand) {
            days += asked > 0 ? 1 : 0;
        }
        return days;
    }

    /** Inflow of the record, in units. */
    public long totalInflow() {
        return FixedVolume.sum(inflow);
    }

    /** Demand of the record, in units. */
    public long totalDemand() {
        return FixedVolume.sum(demand);
    }
}
