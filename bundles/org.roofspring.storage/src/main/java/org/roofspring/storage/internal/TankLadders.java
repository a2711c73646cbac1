package org.roofspring.storage.internal;

import java.util.Arrays;

/**
 * All tanks of one roof at once, for several roofs side by side, under yield after spillage or yield before spillage;
 * exact.
 *
 * <h2>Why one pass is enough</h2>
 *
 * <p>Let V(S) be the volume in a tank of capacity S, all tanks on the same inflow and demand. By induction over the
 * days, for S &lt; S': 0 &le; V(S') - V(S) &le; S' - S. So the tanks form a ladder: with capacities S1 &lt; S2 &lt; ...
 * the rung j from S(j-1) to S(j) holds V(S(j)) - V(S(j-1)) of water, and the rest of the rung is room. In every tank,
 * <ul>
 * <li>drawing b leaves max(V - b, 0): b is taken from the lowest water on the ladder, going up;</li>
 * <li>filling with q leaves min(V + q, S): q goes into the lowest room, going up.</li>
 * </ul>
 * What was drawn in tank j is what was drawn from the rungs up to j, and tank j met a draw in full if the draw ended
 * on a rung not above j. Yield before spillage fills with Q - D or draws D - Q. Yield after spillage, with E = S - V,
 * is E' = max(E - Q, 0) + min(D, V): it draws from the water and fills the room of the morning.
 *
 * <p>A day touches the few rungs where water or room begins, however many tanks there are; a dry spell is one draw,
 * whose days are counted on the rungs where they end. The sums are whole numbers, so the results are those of
 * {@link PlainTank} to the last unit.
 *
 * <p>The roofs are run day by day side by side, because on one day neighbouring roofs take the same branches, which
 * the processor then foresees. Which rungs hold water, and which have room, is kept in the bits of two longs, so there
 * are up to 64 tanks. Serves one run, on one thread.
 */
final class TankLadders {

    /** Most tanks on a ladder. */
    static final int MOST_TANKS = 64;

    /** Most roofs side by side, so that their ladders stay in the processor's nearest cache. */
    static final int MOST_ROOFS = 32;

    private static final long ABOVE_GROUND = -2L;

    private final int roofs;
    private final int tanks;

    /** Height of each rung, the same for every roof. */
    private final long[] size = new long[MOST_TANKS];

    /** Water on the lowest rung of each roof: nearly every day begins here, so it is kept close together. */
    private final long[] ground;
    private final long[] groundDrawn;
    private final int[] groundMet;
    private final long groundSize;

    /** For each roof and rung but the lowest, its water, then what was drawn from it. */
    private final long[] rungs;

    /** For each roof and rung, days that were met in full in the tanks from this one up and in none below. */
    private final int[] metFrom;
    private final long[] holdsWater;
    private final long[] hasRoom;

    /** Yield before spillage: what the day's inflow itself supplied, in every tank alike. */
    private final long[] passedOn;
    private final long[] inflowTotal;
    private final long solid;

    /**
     * @param capacity of each tank in units, ascending, at most 64; equal ones are allowed
     * @param roofs how many, at most 32
     */
    TankLadders(long[] capacity, int roofs) {
        this.roofs = roofs;
        tanks = capacity.length;
        long below = 0;
        long bits = 0;
        for (int rung = 0; rung < tanks; rung++) {
            size[rung] = capacity[rung] - below;
            below = capacity[rung];
            bits |= size[rung] > 0 ? 1L << rung : 0;
        }
        solid = bits & ABOVE_GROUND;
        groundSize = size[0];
        ground = new long[roofs];
        groundDrawn = new long[roofs];
        groundMet = new int[roofs];
        rungs = new long[2 * MOST_TANKS * roofs];
        metFrom = new int[MOST_TANKS * roofs];
        holdsWater = new long[roofs];
        hasRoom = new long[roofs];
        passedOn = new long[roofs];
        inflowTotal = new long[roofs];
        Arrays.fill(hasRoom, solid);
    }

    /** Pours the same volume into every tank, as far as it goes. */
    void pour(long volume) {
        for (int roof = 0; roof < roofs && volume > 0; roof++) {
            fill(roof, volume);
        }
    }

    /** Forgets what was drawn and met, and keeps the water. */
    void forget() {
        for (int i = 1; i < rungs.length; i += 2) {
            rungs[i] = 0;
        }
        Arrays.fill(metFrom, 0);
        Arrays.fill(groundDrawn, 0);
        Arrays.fill(groundMet, 0);
        Arrays.fill(passedOn, 0);
        Arrays.fill(inflowTotal, 0);
    }

    /** Runs a record. */
    void run(SpellDays days, WetDayInflow inflow, int firstRoof, boolean yieldAfterSpillage) {
        long[] wetInflow = new long[roofs];
        int wetDays = days.wetDays();
        for (int spell = 0; spell < wetDays; spell++) {
            drySpell(days, spell);
            inflow.write(spell, firstRoof, wetInflow);
            wetDay(wetInflow, days.wetDemand()[spell], yieldAfterSpillage);
        }
        drySpell(days, wetDays);
    }

    /** Writes, for each tank of a roof, what it supplied, the days it met in full, and what is in it. */
    void read(int roof, int at, TankSweep.Row row, long[] volume) {
        long given = passedOn[roof] + groundDrawn[roof];
        int met = groundMet[roof];
        long held = ground[roof];
        for (int tank = 0; tank < tanks; tank++) {
            given += rungs[place(roof) + 2 * tank + 1];
            met += metFrom[MOST_TANKS * roof + tank];
            held += rungs[place(roof) + 2 * tank];
            row.supplied()[at + tank] = given;
            row.fullDays()[at + tank] = met;
            volume[at + tank] = held;
        }
    }

    long inflowTotal(int roof) {
        return inflowTotal[roof];
    }

    private void wetDay(long[] inflow, long demand, boolean yieldAfterSpillage) {
        for (int roof = 0; roof < roofs; roof++) {
            inflowTotal[roof] += inflow[roof];
        }
        if (demand == 0) {
            for (int roof = 0; roof < roofs; roof++) {
                fill(roof, inflow[roof]);
            }
        } else if (yieldAfterSpillage) {
            for (int roof = 0; roof < roofs; roof++) {
                drawAndFill(roof, inflow[roof], demand);
            }
        } else {
            for (int roof = 0; roof < roofs; roof++) {
                net(roof, inflow[roof], demand);
            }
        }
    }

    /** A wet day under yield before spillage. */
    private void net(int roof, long inflow, long demand) {
        if (inflow >= demand) {
            passedOn[roof] += demand;
            groundMet[roof]++;
            fill(roof, inflow - demand);
        } else {
            passedOn[roof] += inflow;
            long wanted = demand - inflow;
            long out = Math.min(ground[roof], wanted);
            ground[roof] -= out;
            groundDrawn[roof] += out;
            if (out == wanted) {
                groundMet[roof]++;
            } else {
                draw(roof, ABOVE_GROUND, wanted - out);
            }
        }
    }

    /** Fills the lowest room, going up. */
    private void fill(int roof, long inflow) {
        long in = Math.min(groundSize - ground[roof], inflow);
        ground[roof] += in;
        if (in < inflow) {
            fill(roof, ABOVE_GROUND, inflow - in);
        }
    }

    /** A wet day under yield after spillage: the water and the room of the morning, up from the lowest rung. */
    private void drawAndFill(int roof, long inflow, long demand) {
        long held = ground[roof];
        long out = Math.min(held, demand);
        long in = Math.min(groundSize - held, inflow);
        ground[roof] = held + in - out;
        groundDrawn[roof] += out;
        if (out == demand) {
            groundMet[roof]++;
            if (in < inflow) {
                fill(roof, ABOVE_GROUND, inflow - in);
            }
        } else if (in == inflow) {
            draw(roof, ABOVE_GROUND, demand - out);
        } else {
            drawAndFillAbove(roof, inflow - in, demand - out);
        }
    }

    private void drawAndFillAbove(int roof, long inflow, long demand) {
        long toDraw = demand;
        long toFill = inflow;
        int at = place(roof);
        int rung = 0;
        while (toDraw > 0 && toFill > 0 && rung + 1 < tanks) {
            rung++;
            at += 2;
            long held = rungs[at];
            long out = Math.min(held, toDraw);
            long in = Math.min(size[rung] - held, toFill);
            toDraw -= out;
            toFill -= in;
            rungs[at] = held + in - out;
            rungs[at + 1] += out;
        }
        // These bits only say "look here": a rung without water or room is passed by.
        long passed = upTo(rung) & solid;
        holdsWater[roof] |= passed;
        hasRoom[roof] |= passed;
        // One of the two is spent, or both ran off the ladder; what is left goes on where the morning still stands.
        long above = ~upTo(rung);
        if (toDraw == 0) {
            metFrom[MOST_TANKS * roof + rung]++;
            fill(roof, above, toFill);
        } else {
            draw(roof, above, toDraw);
        }
    }

    /** Fills room among the given rungs, lowest first. */
    private void fill(int roof, long among, long inflow) {
        long bits = hasRoom[roof] & among;
        if (bits == 0 || inflow == 0) {
            return;
        }
        long left = inflow;
        int rung;
        do {
            rung = Long.numberOfTrailingZeros(bits);
            int at = place(roof) + 2 * rung;
            long room = size[rung] - rungs[at];
            if (room > left) {
                rungs[at] += left;
                break;
            }
            left -= room;
            rungs[at] = size[rung];
            bits &= bits - 1;
        } while (bits != 0);
        hasRoom[roof] = hasRoom[roof] & ~among | bits;
        holdsWater[roof] |= upTo(rung) & among & solid;
    }

    /** Draws one day's demand from water among the given rungs, lowest first. */
    private void draw(int roof, long among, long demand) {
        long bits = holdsWater[roof] & among;
        if (bits == 0) {
            return;
        }
        long left = demand;
        int rung;
        do {
            rung = Long.numberOfTrailingZeros(bits);
            int at = place(roof) + 2 * rung;
            long held = rungs[at];
            if (held >= left) {
                rungs[at] = held - left;
                rungs[at + 1] += left;
                metFrom[MOST_TANKS * roof + rung]++;
                break;
            }
            left -= held;
            rungs[at] = 0;
            rungs[at + 1] += held;
            bits &= bits - 1;
        } while (bits != 0);
        holdsWater[roof] = holdsWater[roof] & ~among | bits;
        hasRoom[roof] |= upTo(rung) & among & solid;
    }

    /** The dry days of a spell, in one draw. */
    private void drySpell(SpellDays days, int spell) {
        long total = days.dryTotal()[spell];
        if (total == 0) {
            return;
        }
        int count = days.dryFrom()[spell + 1] - days.dryFrom()[spell];
        for (int roof = 0; roof < roofs; roof++) {
            long held = ground[roof];
            if (held >= total) {
                ground[roof] = held - total;
                groundDrawn[roof] += total;
                groundMet[roof] += count;
            } else {
                int met = days.daysCovered(spell, 0, held);
                ground[roof] = 0;
                groundDrawn[roof] += held;
                groundMet[roof] += met;
                drySpellAbove(roof, days, spell, met, held);
            }
        }
    }

    /** The same above the lowest rung, which gave out after some days. */
    private void drySpellAbove(int roof, SpellDays days, int spell, int metBelow, long drawnBelow) {
        long bits = holdsWater[roof];
        if (bits == 0) {
            return;
        }
        long total = days.dryTotal()[spell];
        int count = days.dryFrom()[spell + 1] - days.dryFrom()[spell];
        long passed = drawnBelow;
        int met = metBelow;
        int rung;
        do {
            rung = Long.numberOfTrailingZeros(bits);
            int at = place(roof) + 2 * rung;
            long held = rungs[at];
            int before = met;
            if (passed + held >= total) {
                long out = total - passed;
                rungs[at] = held - out;
                rungs[at + 1] += out;
                metFrom[MOST_TANKS * roof + rung] += count - before;
                break;
            }
            passed += held;
            met = days.daysCovered(spell, before, passed);
            metFrom[MOST_TANKS * roof + rung] += met - before;
            rungs[at] = 0;
            rungs[at + 1] += held;
            bits &= bits - 1;
        } while (bits != 0);
        holdsWater[roof] = bits;
        hasRoom[roof] |= upTo(rung) & solid;
    }

    private static int place(int roof) {
        return 2 * MOST_TANKS * roof;
    }

    /** Bits of the rungs up to this one. */
    private static long upTo(int rung) {
        return -1L >>> 63 - rung;
    }
}
