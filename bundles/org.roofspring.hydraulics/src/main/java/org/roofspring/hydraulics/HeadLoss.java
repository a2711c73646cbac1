package org.roofspring.hydraulics;

import org.roofspring.hydraulics.internal.Require;

/**
 * Head that something in the way of the water takes, as a function of flow: a run of pipe, a filter clean or fouled, a
 * meter. It is nil at rest and must not fall as the flow rises; the solvers rely on that.
 */
@FunctionalInterface
public interface HeadLoss {
    /**
     * Head lost [m], nil or more.
     *
     * @param flowM3PerS flow [m3/s], nil or more
     */
    double headM(double flowM3PerS);

    /** Nothing in the way. */
    static HeadLoss none() {
        return flowM3PerS -> 0;
    }

    /**
     * A loss known at one flow that goes with a power of the flow, h = H (Q / Q0)^n: 2 for taps, meters and orifices, 1
     * for flow through a fine bed or membrane, between them for most cartridges in a housing.
     *
     * @param ratedFlowM3PerS flow it is known at [m3/s], 1e-9 to 1000
     * @param ratedHeadM      head it takes there [m], 0 to 10 000
     * @param exponent        1 to 2
     */
    static HeadLoss rated(double ratedFlowM3PerS, double ratedHeadM, double exponent) {
        Require.within("rated flow", ratedFlowM3PerS, 1e-9, PipeRun.HIGHEST_FLOW_M3_PER_S, "m3/s");
        Require.within("head at the rated flow", ratedHeadM, 0, 10_000, "m");
        Require.within("exponent of the head loss", exponent, 1, 2, "");
        return flowM3PerS -> {
            Require.within("flow", flowM3PerS, 0, PipeRun.HIGHEST_FLOW_M3_PER_S, "m3/s");
            double share = flowM3PerS / ratedFlowM3PerS;
            return ratedHeadM * (exponent == 2 ? share * share : Math.pow(share, exponent));
        };
    }

    /**
     * An orifice or an open tap, h = (Q / (Cd A))^2 / 2g.
     *
     * @param diameterM            of the opening [m], 0.0005 to 1
     * @param dischargeCoefficient Cd, 0.3 to 1; 0.60 to 0.62 for a sharp edge (textbook, from memory)
     */
    static HeadLoss orifice(double diameterM, double dischargeCoefficient) {
        Require.within("diameter of the opening", diameterM, 0.0005, 1, "m");
        Require.within("discharge coefficient", dischargeCoefficient, 0.3, 1, "");
        double flowAtOneMetre = dischargeCoefficient * Math.PI / 4 * diameterM * diameterM
                * Math.sqrt(2 * PhysicalConstants.GRAVITY_M_PER_S2);
        return rated(flowAtOneMetre, 1, 2);
    }

    /**
     * The same loss grown by a factor, such as that of a fouled filter.
     *
     * @param factor 0 to 1000
     */
    default HeadLoss times(double factor) {
        Require.within("factor on a head loss", factor, 0, 1000, "");
        return flowM3PerS -> factor * headM(flowM3PerS);
    }

    /** This and another one after it: the same flow passes both, their heads add. */
    default HeadLoss then(HeadLoss other) {
        return flowM3PerS -> headM(flowM3PerS) + other.headM(flowM3PerS);
    }

    /** A number of the same in parallel: each passes its share of the flow. */
    default HeadLoss inParallel(int count) {
        Require.within("number in parallel", count, 1, 10_000);
        return flowM3PerS -> headM(flowM3PerS / count);
    }
}
