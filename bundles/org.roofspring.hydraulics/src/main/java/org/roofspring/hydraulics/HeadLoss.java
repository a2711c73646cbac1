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
