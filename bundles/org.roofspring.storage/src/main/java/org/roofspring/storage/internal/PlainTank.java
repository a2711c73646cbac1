package org.roofspring.storage.internal;

/**
 * One day of the plain tank in whole units: the reference that every faster kernel must equal.
 * Holds the state of one run; not for sharing between threads.
 */
public final class PlainTank {

    private final long capacity;
    private final double theta;
    private long volume;
    private long supplied;
    private long spilled;

    /**
     * @param capacity S, in units
     * @param start volume as the first day begins, in units, 0 to the capacity
     * @param theta weighting of the yield rule, 0 to 1
     */
    public PlainTank(long capacity, long start, double theta) {
        this.capacity = capacity;
        this.volume = start;
        this.theta = theta;
    }

    /** Runs one day with inflow Q and demand D, in units. */
    public void day(long inflow, long demand) {
        long yield = Math.min(demand, volume + FixedVolume.share(inflow, theta));
        long early = FixedVolume.share(yield, theta);
        long level = volume + inflow - early;
        spilled = Math.max(0, level - capacity);
        level -= spilled;
        // For 0 < theta < 1 a tank smaller than the late part of the yield cannot give all of it.
        long late = Math.min(yield - early, level);
        volume = level - late;
        supplied = early + late;
    }

    /** Volume after the last day run, in units. */
    public long volume() {
        return volume;
    }

    /** Supplied on the last day run, in units. */
    public long supplied() {
        return supplied;
    }

    /** Spilled on the last day run, in units. */
    public long spilled() {
        return spilled;
    }

    /**
     * Runs a whole record.
     *
     * @return days with demand on which all of it was supplied
     */
    public int run(long[] inflow, long[] demand) {
        int fullDays = 0;
        for (int day = 0; day < inflow.length; day++) {
            day(inflow[day], demand[day]);
            fullDays += demand[day] > 0 && supplied >= demand[day] ? 1 : 0;
        }
        return fullDays;
    }
}
