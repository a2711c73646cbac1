package org.roofspring.storage.withinday;

import java.util.List;

/**
 * Outcome of a run. It closes: {@code pumped = supplied + (end - start)}, to rounding.
 *
 * @param durationS length of the run [s]
 * @param startVolumeM3 in the tank as it begins [m&sup3;]
 * @param endVolumeM3 as it ends [m&sup3;]
 * @param askedM3 asked for at the taps [m&sup3;]
 * @param suppliedM3 given [m&sup3;]
 * @param pumpedM3 lifted [m&sup3;]
 * @param dryS time in which the taps gave less than was asked for [s]
 * @param pumpRunS time in which the pump ran [s]
 * @param pumpStartsS moments at which it started [s]
 * @param lowestVolumeM3 least volume [m&sup3;]
 * @param lowestS first moment of it [s]
 * @param trace corners of the chain of straight lines that the volume follows
 */
public record OverheadResult(double durationS, double startVolumeM3, double endVolumeM3, double askedM3,
        double suppliedM3, double pumpedM3, double dryS, double pumpRunS, List<Double> pumpStartsS,
        double lowestVolumeM3, double lowestS, List<Corner> trace) {

    /**
     * A corner of the volume's course.
     *
     * @param timeS moment [s]
     * @param volumeM3 in the tank [m&sup3;]
     * @param pumping whether the pump runs on the way to it
     */
    public record Corner(double timeS, double volumeM3, boolean pumping) {
    }

    /** Copies the lists. */
    public OverheadResult {
        pumpStartsS = List.copyOf(pumpStartsS);
        trace = List.copyOf(trace);
    }

    /** Asked for and not given [m&sup3;]. */
    public double missingM3() {
        return askedM3 - suppliedM3;
    }

    /** What is left over when the balance is drawn up [m&sup3;]; rounding only. */
    public double residualM3() {
        return pumpedM3 - suppliedM3 - (endVolumeM3 - startVolumeM3);
    }

    /** Starts of the pump over the days of the run. */
    public double pumpStartsPerDay() {
        return pumpStartsS.size() / (durationS / DayPattern.DAY_S);
    }

    /** Most starts of the pump within any stretch of time, which motors bear only so many of. */
    public int mostStartsWithin(double windowS) {
        if (!(windowS > 0)) {
            throw new IllegalArgumentException("windowS is " + windowS + " s; accepted is above 0");
        }
        int most = 0;
        int first = 0;
        for (int last = 0; last < pumpStartsS.size(); last++) {
            while (pumpStartsS.get(last) - pumpStartsS.get(first) >= windowS) {
                first++;
            }
            most = Math.max(most, last - first + 1);
        }
        return most;
    }
}
