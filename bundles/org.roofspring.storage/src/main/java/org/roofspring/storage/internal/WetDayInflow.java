package org.roofspring.storage.internal;

/** Inflow of the roofs of a sweep on their wet days, in units. */
public interface WetDayInflow {

    /** How many roofs. */
    int roofs();

    /**
     * Writes the inflow of a day.
     *
     * @param wetDay which of the wet days, from 0
     * @param firstRoof first roof wanted
     * @param into inflow of that roof and those after it, as many as fit the array and exist
     */
    void write(int wetDay, int firstRoof, long[] into);
}
