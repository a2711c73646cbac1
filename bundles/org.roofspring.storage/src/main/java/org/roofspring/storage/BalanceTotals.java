package org.roofspring.storage;

import java.util.OptionalDouble;

/**
 * Where the water of a run came from and went, all in m&sup3;. It closes:
 * {@code inflow + toppedUp = supplied + spilled + evaporated + leaked + dumped + (end - start)}.
 *
 * @param inflowM3 from the roofs
 * @param toppedUpM3 bought or carried in from outside
 * @param demandM3 asked for
 * @param suppliedM3 drawn to meet demand
 * @param spilledM3 over the top
 * @param evaporatedM3 lost from an open surface
 * @param leakedM3 lost through leaks, bursts and taps left open
 * @param dumpedM3 let out on purpose, because it was contaminated or the tank had to be emptied
 * @param startVolumeM3 in store before the first day
 * @param endVolumeM3 in store after the last day
 */
public record BalanceTotals(double inflowM3, double toppedUpM3, double demandM3, double suppliedM3, double spilledM3,
        double evaporatedM3, double leakedM3, double dumpedM3, double startVolumeM3, double endVolumeM3) {

    /** Supplied over demand [-]; empty when nothing was asked for. */
    public OptionalDouble volumetricReliability() {
        return demandM3 > 0 ? OptionalDouble.of(suppliedM3 / demandM3) : OptionalDouble.empty();
    }

    /**
     * What is left over when the balance is drawn up [m&sup3;]. The runs are exact, so this is no more than the
     * rounding of these ten doubles.
     */
    public double residualM3() {
        return inflowM3 + toppedUpM3 - suppliedM3 - spilledM3 - evaporatedM3 - leakedM3 - dumpedM3
                - (endVolumeM3 - startVolumeM3);
    }
}
