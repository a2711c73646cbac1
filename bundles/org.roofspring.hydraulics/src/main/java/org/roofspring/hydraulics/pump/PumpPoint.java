package org.roofspring.hydraulics.pump;

import java.util.OptionalDouble;

import org.roofspring.hydraulics.PipeRun;
import org.roofspring.hydraulics.internal.Require;

/**
 * One measured point of a pump.
 *
 * @param flowM3PerS    [m3/s], 0 to 1000
 * @param headM         total head [m], 0 to 10 000
 * @param efficiency    shaft to water, 0 to 1; above 0 where there is flow; absent where not measured
 * @param npshRequiredM net positive suction head required [m], 0 to 100; absent where not measured
 * @param inputPowerW   power that the motor takes from the supply [W], above 0 to 1e8; absent where not measured
 */
public record PumpPoint(double flowM3PerS, double headM, OptionalDouble efficiency, OptionalDouble npshRequiredM,
        OptionalDouble inputPowerW) {
    public PumpPoint {
        Require.within("flow of a pump point", flowM3PerS, 0, PipeRun.HIGHEST_FLOW_M3_PER_S, "m3/s");
        Require.within("head of a pump point", headM, 0, 10_000, "m");
        Require.present("efficiency", efficiency).ifPresent(value -> requireEfficiency(value, flowM3PerS));
        Require.present("NPSH required", npshRequiredM)
                .ifPresent(value -> Require.within("NPSH required of a pump point", value, 0, 100, "m"));
        Require.present("input power", inputPowerW)
                .ifPresent(value -> Require.within("input power of a pump point", value, 1e-3, 1e8, "W"));
    }

    /** A point with flow and head alone. */
    public static PumpPoint of(double flowM3PerS, double headM) {
        return new PumpPoint(flowM3PerS, headM, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
    }

    private static void requireEfficiency(double efficiency, double flowM3PerS) {
        if (!(efficiency >= 0 && efficiency <= 1)) {
            throw new IllegalArgumentException("efficiency of a pump point must be from 0 % to 100 %, not "
                    + Require.show(efficiency * 100, "%"));
        }
        if (efficiency == 0 && flowM3PerS > 0) {
            throw new IllegalArgumentException("efficiency of a pump point must be above 0 % where water flows,"
                    + " not 0 % at " + Require.show(flowM3PerS, "m3/s"));
        }
    }
}
