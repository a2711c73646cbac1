package org.roofspring.hydraulics.gravity;

import java.util.OptionalInt;

import org.roofspring.hydraulics.internal.Require;

/**
 * Pupils at the taps in a break: they come evenly over a while, queue, and the first free tap serves the first in line.
 *
 * @param pupils         who want water, 1 to 100 000
 * @param breakS         length of the break [s], 1 to 86 400
 * @param arrivalS       time over which they come [s], 0 (all at once) to the break
 * @param volumeM3       that each takes [m3], 1e-6 to 1
 * @param tapFlowM3PerS  of each tap with all of them running [m3/s], 1e-6 to 1
 * @param changeOverS    lost between one pupil and the next [s], 0 to 600
 */
public record SchoolBreak(int pupils, double breakS, double arrivalS, double volumeM3, double tapFlowM3PerS,
        double changeOverS) {

    /**
     * How a break goes.
     *
     * @param served       pupils who have their water before the break ends
     * @param longestQueue most pupils who wait at once, not counting those at a tap
     * @param longestWaitS longest time from coming to getting to a tap, of all pupils, the break ended or not [s]
     */
    public record Course(int served, int longestQueue, double longestWaitS) {
    }

    public SchoolBreak {
        Require.within("number of pupils", pupils, 1, 100_000);
        Require.within("length of the break", breakS, 1, 86_400, "s");
        Require.within("time over which pupils come", arrivalS, 0, breakS, "s");
        Require.within("water for each pupil", volumeM3, 1e-6, 1, "m3");
        Require.within("flow of a tap", tapFlowM3PerS, 1e-6, 1, "m3/s");
        Require.within("time between one pupil and the next", changeOverS, 0, 600, "s");
    }

    /** Time that a pupil holds a tap [s]. */
    public double serviceS() {
        return volumeM3 / tapFlowM3PerS + changeOverS;
    }

    /**
     * How the break goes with a number of taps.
     *
     * @param taps 1 to 10 000
     */
    public Course course(int taps) {
        Require.within("number of taps", taps, 1, 10_000);
        double serviceS = serviceS();
        double[] starts = new double[pupils];
        int served = 0;
        int longestQueue = 0;
        double longestWaitS = 0;
        int firstWaiting = 0;
        for (int k = 0; k < pupils; k++) {
            double comes = comesS(k);
            starts[k] = k < taps ? comes : Math.max(comes, starts[k - taps] + serviceS);
            served += starts[k] + serviceS <= breakS * (1 + 1e-12) ? 1 : 0;
            longestWaitS = Math.max(longestWaitS, starts[k] - comes);
            while (starts[firstWaiting] <= comes && firstWaiting < k) {
                firstWaiting++;
            }
            longestQueue = Math.max(longestQueue, starts[k] > comes ? k - firstWaiting + 1 : 0);
        }
        return new Course(served, longestQueue, longestWaitS);
    }

    /** When the pupil with this number, from 0, comes [s]. */
    private double comesS(int number) {
        return pupils == 1 ? 0 : arrivalS * number / (pupils - 1);
    }

    /** Fewest taps that serve every pupil within the break; absent where 10 000 would not do. */
    public OptionalInt tapsNeeded() {
        if (course(10_000).served() < pupils) {
            return OptionalInt.empty();
        }
        int tooFew = 0;
        int enough = 10_000;
        while (enough - tooFew > 1) {
            int middle = (tooFew + enough) / 2;
            if (course(middle).served() == pupils) {
                enough = middle;
            } else {
                tooFew = middle;
            }
        }
        return OptionalInt.of(enough);
    }
}
