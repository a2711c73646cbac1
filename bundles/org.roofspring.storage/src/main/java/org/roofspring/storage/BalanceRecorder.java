package org.roofspring.storage;

import org.roofspring.storage.internal.FixedVolume;

/**
 * Collects the days of one run, in whole units, and draws up the result. One recorder serves one run.
 */
final class BalanceRecorder {

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

    BalanceRecorder(int days, long startVolume) {
        this.startVolume = startVolume;
        endVolume = new long[days];
        demand = new long[days];
        supplied = new long[days];
    }

    /** What left the tank on a day other than to meet demand. */
    void losses(long evaporated, long leaked, long dumped) {
        evaporatedTotal += evaporated;
        leakedTotal += leaked;
        dumpedTotal += dumped;
    }

    void topUp(long volume) {
        toppedUpTotal += volume;
    }

    /** Closes a day. */
    void day(long inflow, long asked, long given, long spilled, long volumeAfter) {
        endVolume[day] = volumeAfter;
        demand[day] = asked;
        supplied[day] = given;
        inflowTotal += inflow;
        demandTotal += asked;
        suppliedTotal += given;
        spilledTotal += spilled;
        emptyDays += volumeAfter == 0 ? 1 : 0;
        if (asked > 0) {
            demandDays++;
            fullDays += given >= asked ? 1 : 0;
        }
        spells.day(day, inflow, asked, asked - given);
        day++;
    }

    BalanceResult result() {
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
