package org.roofspring.hydraulics.pump;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

import org.roofspring.hydraulics.PipeRun;
import org.roofspring.hydraulics.internal.Require;

/** Running a pump: time to fill, starts, hours and energy. Definitions, unless a source is named. */
public final class PumpOperation {
    /** Seconds of a day and mean days of a year. */
    public static final double DAY_S = 86_400;
    public static final double DAYS_PER_YEAR = 365.2425;

    private static final double LARGEST_VOLUME_M3 = 1e9;
    private static final int FILL_STEPS = 200;

    private PumpOperation() {
    }

    /**
     * Time to bring in a volume at a steady flow while water is drawn off [s]; absent where as much or more is drawn
     * than comes.
     *
     * @param volumeM3         [m3], 0 to 1e9
     * @param flowM3PerS       of the pump [m3/s], 1e-9 to 1000
     * @param drawnM3PerS      drawn meanwhile [m3/s], 0 to 1000
     */
    public static OptionalDouble timeToFillS(double volumeM3, double flowM3PerS, double drawnM3PerS) {
        requireVolume("volume", volumeM3);
        requirePumpFlow(flowM3PerS);
        Require.within("flow drawn", drawnM3PerS, 0, PipeRun.HIGHEST_FLOW_M3_PER_S, "m3/s");
        return flowM3PerS > drawnM3PerS ? OptionalDouble.of(volumeM3 / (flowM3PerS - drawnM3PerS))
                : OptionalDouble.empty();
    }

    /**
     * Time to raise the level of an upright tank that is filled from below, where the pump slows as the level rises
     * [s]: the integral of A dh / Q(h) by Simpson's rule.
     *
     * @param areaM2         of the water surface [m2], 1e-6 to 1e6
     * @param fromM          level at the start [m]
     * @param toM            level at the end [m], not below the start, at most 1000 m above it
     * @param flowAtLevel    flow [m3/s] of the pump at a level; above nil all the way
     */
    public static double timeToRiseS(double areaM2, double fromM, double toM, DoubleUnaryOperator flowAtLevel) {
        Require.within("area of the water", areaM2, 1e-6, 1e6, "m2");
        Require.within("level at the start", fromM, -1000, 10_000, "m");
        Require.within("level at the end", toM, fromM, fromM + 1000, "m");
        Require.present("flow at a level", flowAtLevel);
        double step = (toM - fromM) / FILL_STEPS;
        double sum = 0;
        for (int i = 0; i <= FILL_STEPS; i++) {
            double flow = flowAtLevel.applyAsDouble(fromM + i * step);
            requirePumpFlow(flow);
            sum += (i == 0 || i == FILL_STEPS ? 1 : i % 2 == 1 ? 4 : 2) / flow;
        }
        return areaM2 * sum * step / 3;
    }

    /**
     * Starts of a pump that fills a volume between two switch levels while water is drawn off steadily [1/s]: one over
     * V/q + V/(Q - q). Nil where nothing is drawn, and where as much or more is drawn than comes, since the pump then
     * runs through.
     *
     * @param flowM3PerS     of the pump, Q [m3/s], 1e-9 to 1000
     * @param drawnM3PerS    q [m3/s], 0 to 1000
     * @param switchVolumeM3 between the switch levels, V [m3], 1e-6 to 1e9
     */
    public static double startsPerS(double flowM3PerS, double drawnM3PerS, double switchVolumeM3) {
        requirePumpFlow(flowM3PerS);
        Require.within("flow drawn", drawnM3PerS, 0, PipeRun.HIGHEST_FLOW_M3_PER_S, "m3/s");
        requireSwitchVolume(switchVolumeM3);
        return drawnM3PerS >= flowM3PerS ? 0
                : drawnM3PerS * (flowM3PerS - drawnM3PerS) / (flowM3PerS * switchVolumeM3);
    }

    /** Most starts that any draw-off can cause [1/s], Q/(4 V): when half the flow of the pump is drawn. */
    public static double mostStartsPerS(double flowM3PerS, double switchVolumeM3) {
        requirePumpFlow(flowM3PerS);
        requireSwitchVolume(switchVolumeM3);
        return flowM3PerS / (4 * switchVolumeM3);
    }

    /**
     * Volume between the switch levels that keeps the starts within a limit whatever is drawn [m3].
     *
     * @param flowM3PerS       of the pump [m3/s], 1e-9 to 1000
     * @param allowedStartsPerS [1/s], 1e-9 to 1; makers state it by the hour
     */
    public static double leastSwitchVolumeM3(double flowM3PerS, double allowedStartsPerS) {
        requirePumpFlow(flowM3PerS);
        Require.within("allowed starts", allowedStartsPerS, 1e-9, 1, "1/s");
        return flowM3PerS / (4 * allowedStartsPerS);
    }

    /**
     * Running time for a volume [s].
     *
     * @param volumeM3   [m3], 0 to 1e9
     * @param flowM3PerS [m3/s], 1e-9 to 1000
     */
    public static double runningTimeS(double volumeM3, double flowM3PerS) {
        requireVolume("volume", volumeM3);
        requirePumpFlow(flowM3PerS);
        return volumeM3 / flowM3PerS;
    }

    /**
     * Energy for a volume [J].
     *
     * @param volumeM3             [m3], 0 to 1e9
     * @param specificEnergyJPerM3 [J/m3], 0 to 1e12
     */
    public static double energyJ(double volumeM3, double specificEnergyJPerM3) {
        requireVolume("volume", volumeM3);
        return volumeM3 * Require.within("energy per volume", specificEnergyJPerM3, 0, 1e12, "J/m3");
    }

    /**
     * Peak power of solar panels that gives an energy in a day [W].
     *
     * @param energyPerDayJ    [J], 0 to 1e12
     * @param fullSunSPerDay   daily sum of sun as a time at 1000 W/m2 [s], 60 to 43 200; take the poorest month
     * @param performanceRatio share that reaches the pump after heat, dirt, cable and converter, 0.1 to 1; 0.7 is
     *                         common practice, no source
     */
    public static double solarPanelPowerW(double energyPerDayJ, double fullSunSPerDay, double performanceRatio) {
        Require.within("energy of a day", energyPerDayJ, 0, 1e12, "J");
        Require.within("full sun of a day", fullSunSPerDay, 60, 43_200, "s");
        Require.within("performance ratio", performanceRatio, 0.1, 1, "");
        return energyPerDayJ / (fullSunSPerDay * performanceRatio);
    }

    /**
     * Power of a generator that starts the motor [W].
     *
     * @param inputPowerW    that the motor takes when running [W], 0 to 1e8
     * @param startingFactor over running power, 1 to 10; 3 for a motor started direct is common practice, no source
     */
    public static double generatorPowerW(double inputPowerW, double startingFactor) {
        return Require.within("input power", inputPowerW, 0, 1e8, "W")
                * Require.within("starting factor", startingFactor, 1, 10, "");
    }

    private static void requirePumpFlow(double flowM3PerS) {
        Require.within("flow of the pump", flowM3PerS, 1e-9, PipeRun.HIGHEST_FLOW_M3_PER_S, "m3/s");
    }

    private static void requireVolume(String what, double volumeM3) {
        Require.within(what, volumeM3, 0, LARGEST_VOLUME_M3, "m3");
    }

    private static void requireSwitchVolume(double switchVolumeM3) {
        Require.within("volume between the switch levels", switchVolumeM3, 1e-6, LARGEST_VOLUME_M3, "m3");
    }
}
