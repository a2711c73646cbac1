package org.roofspring.storage;

import org.roofspring.storage.internal.FixedVolume;

/**
 * Collects the days of one run, in whole microlitres, and draws up the result. A balance with rules of its own can use
 * it too: it refuses a run whose water does not add up. One recorder serves one run, on one thread.
 *
 * <p>Every volume is a whole number of microlitres (1e-9 m&sup3;), 0 or more.
 */
public final class BalanceRecorder {

    private final long startVolume;
    private final long[] endVolume;
    private final long[] demand;
    private final long[] supplied;
    private final SpellWatch spells = new SpellWatch();
    private int day;
    private int demandDays;
    private int fullDays;
    private int emptyDays;
    private long inflowTotal;
    private long toppedUpTotal;
    private long demandTotal;
    private long suppliedTotal;
    private long spilledTotal;
    private long evaporatedTotal;
    private long leakedTotal;
    private long dumpedTotal;

    /**
     * @param days days that will be recorded, 0 to {@value TankBalance#MOST_DAYS}
     * @param startVolume in store before the first day
     */
    public BalanceRecorder(int days, long startVolume) {
        this.startVolume = startVolume;
        endVolume = new long[TankBalance.checkedDays(days)];
        demand = new long[days];
        supplied = new long[days];
    }

    /** What left the tank on a day other than to meet demand. */
    public void losses(long evaporated, long leaked, long dumped) {
        evaporatedTotal += evaporated;
        leakedTotal += leaked;
        dumpedTotal += dumped;
    }

    /** What was bought or carried in on a day. */
    public void topUp(long volume) {
        toppedUpTotal += volume;
    }

    /**
     * Closes a day.
     *
     * @param inflow from the roofs
     * @param asked demand
     * @param given supplied, at most the demand
     * @param spilled over the top
     * @param volumeAfter in store as the day ends
     * @param usableAfter part of it that can be drawn
     */
    public void day(long inflow, long asked, long given, long spilled, long volumeAfter, long usableAfter) {
        endVolume[day] = volumeAfter;
        demand[day] = asked;
        supplied[day] = given;
        inflowTotal += inflow;
        demandTotal += asked;
        suppliedTotal += given;
        spilledTotal += spilled;
        emptyDays += usableAfter == 0 ? 1 : 0;
        if (asked > 0) {
            demandDays++;
            fullDays += given >= asked ? 1 : 0;
        }
        spells.day(day, inflow, asked, asked - given);
        day++;
    }

    /**
     * The result of the days recorded.
     *
     * @throws IllegalStateException when the water does not add up, which is a fault of the balance that recorded it
     */
    public BalanceResult result() {
        long end = day == 0 ? startVolume : endVolume[day - 1];
        long residual = inflowTotal + toppedUpTotal + startVolume - suppliedTotal - spilledTotal - evaporatedTotal
                - leakedTotal - dumpedTotal - end;
        if (residual != 0) {
            throw new IllegalStateException("the balance does not close: " + residual + " microlitres are left over");
        }
        BalanceTotals totals = new BalanceTotals(FixedVolume.toM3(inflowTotal), FixedVolume.toM3(toppedUpTotal),
                FixedVolume.toM3(demandTotal), FixedVolume.toM3(suppliedTotal), FixedVolume.toM3(spilledTotal),
                FixedVolume.toM3(evaporatedTotal), FixedVolume.toM3(leakedTotal), FixedVolume.toM3(dumpedTotal),
                FixedVolume.toM3(startVolume), FixedVolume.toM3(end));
        return new BalanceResult(totals, new DayCounts(day, demandDays, fullDays, emptyDays), spells.close(),
                endVolume, demand, supplied);
    }
}
