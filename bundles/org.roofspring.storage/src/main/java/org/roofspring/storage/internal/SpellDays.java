package org.roofspring.storage.internal;

/**
 * The demand of a record, told as spells: before each wet day the dry days that lead up to it, and those after the
 * last. A dry day on which nothing is asked for changes nothing and is left out. Shared by runs; not to be written to.
 *
 * @param wetDemand demand of each wet day
 * @param dryFrom for each spell, the index in {@code drySums} where it begins; one more entry closes the last
 * @param dryTotal for each spell, the sum of its demand
 * @param dryEach for each spell, the demand of each of its days where they are all alike, else 0
 * @param drySums for each dry day with a demand, the sum of its spell's demand up to and with it
 * @param dryInverse for each spell, one over that; infinite where it is 0
 */
record SpellDays(long[] wetDemand, int[] dryFrom, long[] dryTotal, long[] dryEach,
        long[] drySums, double[] dryInverse) {

    /**
     * @param demand of each day
     * @param wet whether the day may have inflow
     */
    static SpellDays of(long[] demand, boolean[] wet) {
        int wetDays = 0;
        for (boolean day : wet) {
            wetDays += day ? 1 : 0;
        }
        long[] wetDemand = new long[wetDays];
        int[] dryFrom = new int[wetDays + 2];
        long[] dryDemand = new long[demand.length - wetDays];
        int dry = 0;
        int spell = 0;
        for (int day = 0; day < demand.length; day++) {
            if (wet[day]) {
                wetDemand[spell++] = demand[day];
                dryFrom[spell] = dry;
            } else if (demand[day] > 0) {
                dryDemand[dry++] = demand[day];
            }
        }
        dryFrom[wetDays + 1] = dry;
        long[] dryTotal = new long[wetDays + 1];
        long[] dryEach = new long[wetDays + 1];
        long[] drySums = new long[dry];
        double[] dryInverse = new double[wetDays + 1];
        for (spell = 0; spell <= wetDays; spell++) {
            long each = dryFrom[spell] < dryFrom[spell + 1] ? dryDemand[dryFrom[spell]] : 0;
            for (int i = dryFrom[spell]; i < dryFrom[spell + 1]; i++) {
                dryTotal[spell] += dryDemand[i];
                drySums[i] = dryTotal[spell];
                each = dryDemand[i] == each ? each : 0;
            }
            dryEach[spell] = each;
            dryInverse[spell] = 1.0 / each;
        }
        return new SpellDays(wetDemand, dryFrom, dryTotal, dryEach, drySums, dryInverse);
    }

    int wetDays() {
        return wetDemand.length;
    }

    /**
     * How many days of a spell a volume covers, one after another from its first; the volume is below the spell's
     * total, and known to cover some days already.
     */
    int daysCovered(int spell, int atLeast, long volume) {
        long each = dryEach[spell];
        if (each > 0) {
            // The product with the inverse is off by at most one, which the rest tells.
            int times = (int) (volume * dryInverse[spell]);
            long rest = volume - times * each;
            return times + (rest >= each ? 1 : 0) - (rest < 0 ? 1 : 0);
        }
        int first = dryFrom[spell];
        int covered = atLeast;
        while (drySums[first + covered] <= volume) {
            covered++;
        }
        return covered;
    }
}
