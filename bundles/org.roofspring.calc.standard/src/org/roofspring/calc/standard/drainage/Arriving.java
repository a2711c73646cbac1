package org.roofspring.calc.standard.drainage;

/**
 * What roofs send to a part of the way, as areas.
 *
 * @param planM2      seen from above
 * @param effectiveM2 that counts in the design storm
 * @param peakM2      of it, what the peak runoff leaves: flow in the storm is this times the intensity
 * @param yearM2      of the plan area, what the yearly runoff leaves
 */
record Arriving(double planM2, double effectiveM2, double peakM2, double yearM2) {
    static final Arriving NOTHING = new Arriving(0, 0, 0, 0);
    private static final double MM_PER_H_TO_M_PER_S = 1e-3 / 3600;

    static Arriving of(RoofArea roof) {
        return new Arriving(roof.planM2(), roof.effectiveM2(), roof.effectiveM2() * roof.peakRatio(),
                roof.planM2() * roof.yearRatio());
    }

    Arriving times(double share) {
        return new Arriving(planM2 * share, effectiveM2 * share, peakM2 * share, yearM2 * share);
    }

    /** The same over the years; in the design storm, a share of it. */
    Arriving inStorm(double share) {
        return new Arriving(planM2, effectiveM2 * share, peakM2 * share, yearM2);
    }

    Arriving plus(Arriving other) {
        return new Arriving(planM2 + other.planM2, effectiveM2 + other.effectiveM2, peakM2 + other.peakM2,
                yearM2 + other.yearM2);
    }

    /** Mean share that runs off at the peak. */
    double peakRatio() {
        return effectiveM2 > 0 ? Math.min(1, peakM2 / effectiveM2) : 1;
    }

    double flowM3PerS(double intensityMmPerH) {
        return peakM2 * intensityMmPerH * MM_PER_H_TO_M_PER_S;
    }
}
