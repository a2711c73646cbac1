package org.roofspring.storage.internal;

import java.util.Arrays;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;

/**
 * Many plain tanks under each of many roofs, on the same demand. The two rules of practice go up {@link TankLadders};
 * the general weighting is run tank by tank. Results are whole units, equal to those of {@link PlainTank}. Memory
 * grows with days plus designs.
 */
public final class TankSweep {

    private final SpellDays days;
    private final int[] wetDay;
    private final long[] demand;
    private final double theta;
    private final long start;
    private final int warmUpPasses;
    private final int[] order;
    private final long[] ascending;

    /**
     * What came of each tank under one roof, in the order the tanks were given, in units.
     *
     * @param supplied over the record
     * @param fullDays with demand, met in full
     * @param startVolume as the counted pass begins
     * @param endVolume after the last day
     * @param inflow of the roof over the record, one value
     */
    public record Row(long[] supplied, int[] fullDays, long[] startVolume, long[] endVolume, long[] inflow) {

        static Row of(int tanks) {
            return new Row(new long[tanks], new int[tanks], new long[tanks], new long[tanks], new long[1]);
        }
    }

    /**
     * @param capacity of each tank, in units, in any order
     * @param demand of each day, in units
     * @param wet whether a day may have inflow
     * @param theta weighting of the rule
     * @param start volume as the first pass begins, in units; a smaller tank begins full
     * @param warmUpPasses passes over the record before the one that counts, 0 or more
     */
    public TankSweep(long[] capacity, long[] demand, boolean[] wet, double theta, long start, int warmUpPasses) {
        this.demand = demand;
        this.theta = theta;
        this.start = start;
        this.warmUpPasses = warmUpPasses;
        days = SpellDays.of(demand, wet);
        wetDay = new int[days.wetDays()];
        int count = 0;
        for (int day = 0; day < wet.length; day++) {
            if (wet[day]) {
                wetDay[count++] = day;
            }
        }
        order = sortedOrder(capacity);
        ascending = Arrays.stream(order).mapToLong(tank -> capacity[tank]).toArray();
    }

    /**
     * Runs all tanks under all roofs.
     *
     * @param inflow of the wet days
     * @param cancelled polled between groups of roofs and tanks
     * @return a row for each roof
     * @throws CancellationException when cancelled
     */
    public Row[] run(WetDayInflow inflow, BooleanSupplier cancelled) {
        Row[] rows = new Row[inflow.roofs()];
        Arrays.setAll(rows, roof -> Row.of(ascending.length));
        for (int firstRoof = 0; firstRoof < rows.length; firstRoof += TankLadders.MOST_ROOFS) {
            int roofs = Math.min(TankLadders.MOST_ROOFS, rows.length - firstRoof);
            for (int from = 0; from < ascending.length; from += TankLadders.MOST_TANKS) {
                if (cancelled.getAsBoolean()) {
                    throw new CancellationException("the sweep over roofs and tanks was cancelled");
                }
                int to = Math.min(ascending.length, from + TankLadders.MOST_TANKS);
                if (theta == 0 || theta == 1) {
                    climb(inflow, firstRoof, roofs, from, to, rows);
                } else {
                    runEach(inflow, firstRoof, roofs, from, to, rows);
                }
            }
        }
        Arrays.setAll(rows, roof -> inGivenOrder(rows[roof]));
        return rows;
    }

    private void climb(WetDayInflow inflow, int firstRoof, int roofs, int from, int to, Row[] rows) {
        TankLadders ladders = new TankLadders(Arrays.copyOfRange(ascending, from, to), roofs);
        ladders.pour(start);
        for (int pass = 0; pass < warmUpPasses; pass++) {
            ladders.run(days, inflow, firstRoof, theta == 0);
        }
        ladders.forget();
        for (int roof = 0; roof < roofs; roof++) {
            ladders.read(roof, from, rows[firstRoof + roof], rows[firstRoof + roof].startVolume());
        }
        ladders.run(days, inflow, firstRoof, theta == 0);
        for (int roof = 0; roof < roofs; roof++) {
            ladders.read(roof, from, rows[firstRoof + roof], rows[firstRoof + roof].endVolume());
            rows[firstRoof + roof].inflow()[0] = ladders.inflowTotal(roof);
        }
    }

    private void runEach(WetDayInflow inflow, int firstRoof, int roofs, int from, int to, Row[] rows) {
        long[] one = new long[1];
        long[] daily = new long[demand.length];
        for (int roof = firstRoof; roof < firstRoof + roofs; roof++) {
            Row row = rows[roof];
            for (int wet = 0; wet < wetDay.length; wet++) {
                inflow.write(wet, roof, one);
                daily[wetDay[wet]] = one[0];
            }
            row.inflow()[0] = FixedVolume.sum(daily);
            for (int i = from; i < to; i++) {
                PlainTank tank = new PlainTank(ascending[i], Math.min(start, ascending[i]), theta);
                for (int pass = 0; pass < warmUpPasses; pass++) {
                    tank.run(daily, demand);
                }
                row.startVolume()[i] = tank.volume();
                for (int day = 0; day < demand.length; day++) {
                    tank.day(daily[day], demand[day]);
                    row.supplied()[i] += tank.supplied();
                    row.fullDays()[i] += demand[day] > 0 && tank.supplied() >= demand[day] ? 1 : 0;
                }
                row.endVolume()[i] = tank.volume();
            }
        }
    }

    private Row inGivenOrder(Row sorted) {
        Row row = Row.of(order.length);
        for (int i = 0; i < order.length; i++) {
            row.supplied()[order[i]] = sorted.supplied()[i];
            row.fullDays()[order[i]] = sorted.fullDays()[i];
            row.startVolume()[order[i]] = sorted.startVolume()[i];
            row.endVolume()[order[i]] = sorted.endVolume()[i];
        }
        row.inflow()[0] = sorted.inflow()[0];
        return row;
    }

    private static int[] sortedOrder(long[] capacity) {
        Integer[] order = new Integer[capacity.length];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, (a, b) -> Long.compare(capacity[a], capacity[b]));
        return Arrays.stream(order).mapToInt(Integer::intValue).toArray();
    }
}
