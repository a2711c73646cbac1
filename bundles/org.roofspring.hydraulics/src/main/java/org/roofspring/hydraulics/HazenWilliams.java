package org.roofspring.hydraulics;

import java.util.ArrayList;
import java.util.List;

import org.roofspring.hydraulics.internal.Require;

/**
 * The Hazen-Williams formula in SI, h = 10.67 L Q^1.852 / (C^1.852 D^4.8704): an empirical fit to cold water in
 * middling and large pipes, given for comparison only. Source: the standard form, from memory; verify against a current
 * AWWA manual.
 *
 * @param headM    head lost [m]
 * @param outsideRange reasons why the formula does not hold here; empty where it does
 */
public record HazenWilliams(double headM, List<String> outsideRange) {
    /** Smallest bore the formula is meant for [m]. */
    public static final double SMALLEST_BORE_M = 0.050;
    /** Slowest and fastest flow the formula is meant for [m/s]. */
    public static final double SLOWEST_M_PER_S = 1;
    public static final double FASTEST_M_PER_S = 3;

    public HazenWilliams {
        outsideRange = Require.list("reasons", outsideRange);
    }

    /**
     * Head lost by friction in a straight pipe.
     *
     * @param flowM3PerS   [m3/s], 0 to 1000
     * @param boreM        [m], 0.0001 to 10
     * @param lengthM      [m], 0 to 1e6
     * @param coefficient  C, 40 to 160 (new plastic about 150, worn galvanised steel about 100)
     * @param temperatureC of the water [degC], 0 to 60; only to judge validity, the formula does not know it
     */
    public static HazenWilliams of(double flowM3PerS, double boreM, double lengthM, double coefficient,
            double temperatureC) {
        PipeRun run = new PipeRun(boreM, lengthM, 0, 0);
        Require.within("flow", flowM3PerS, 0, PipeRun.HIGHEST_FLOW_M3_PER_S, "m3/s");
        Require.within("Hazen-Williams coefficient", coefficient, 40, 160, "");
        Require.within("water temperature", temperatureC, WaterProperties.LOWEST_TEMPERATURE_C,
                WaterProperties.HIGHEST_TEMPERATURE_C, "degC");
        double headM = 10.67 * lengthM * Math.pow(flowM3PerS / coefficient, 1.852) / Math.pow(boreM, 4.8704);
        return new HazenWilliams(headM, reasons(boreM, flowM3PerS / run.areaM2(), temperatureC));
    }

    private static List<String> reasons(double boreM, double velocityMPerS, double temperatureC) {
        List<String> reasons = new ArrayList<>();
        if (boreM < SMALLEST_BORE_M) {
            reasons.add("the bore is under 50 mm");
        }
        if (velocityMPerS < SLOWEST_M_PER_S || velocityMPerS > FASTEST_M_PER_S) {
            reasons.add("the water does not move at 1 to 3 m/s");
        }
        if (temperatureC < 5 || temperatureC > 25) {
            reasons.add("the water is far from 15 degC");
        }
        return reasons;
    }
}
