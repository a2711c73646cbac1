package org.roofspring.hydraulics.pump;

import java.util.OptionalDouble;

import org.roofspring.hydraulics.internal.Require;

/**
 * Equal pumps working together at one speed.
 *
 * <p>Affinity laws: at the speed ratio n flow goes with n, head and NPSH required with n^2, power with n^3, and the
 * efficiency stays with its point. They are close for moderate changes of speed and get worse below about half speed.
 * Pumps in series carry the same flow and add heads; pumps in parallel see the same head and add flows.
 *
 * @param curve    one pump at its measured speed
 * @param speed    speed over measured speed, 0.2 to 1.5
 * @param series   number in series, 1 to 100
 * @param parallel number of such lines in parallel, 1 to 100
 * @param motorEfficiency supply to shaft, 0.01 to 1, taken as the same at all loads; absent where not known
 */
public record PumpSet(PumpCurve curve, double speed, int series, int parallel, OptionalDouble motorEfficiency) {
    private static final double HIGHEST_FLOW_M3_PER_S = 1e6;

    public PumpSet {
        Require.present("pump curve", curve);
        Require.within("speed over measured speed", speed, 0.2, 1.5, "");
        Require.within("number of pumps in series", series, 1, 100);
        Require.within("number of pumps in parallel", parallel, 1, 100);
        Require.present("motor efficiency", motorEfficiency)
                .ifPresent(value -> Require.within("motor efficiency", value, 0.01, 1, ""));
    }

    /** One pump at its measured speed. */
    public static PumpSet single(PumpCurve curve) {
        return new PumpSet(curve, 1, 1, 1, OptionalDouble.empty());
    }

    /** The same pumps at another speed. */
    public PumpSet atSpeed(double otherSpeed) {
        return new PumpSet(curve, otherSpeed, series, parallel, motorEfficiency);
    }

    /** A number of the same pumps in series. */
    public PumpSet inSeries(int number) {
        return new PumpSet(curve, speed, number, parallel, motorEfficiency);
    }

    /** A number of such lines in parallel. */
    public PumpSet inParallel(int number) {
        return new PumpSet(curve, speed, series, number, motorEfficiency);
    }

    /** The same pumps with motors of a known efficiency. */
    public PumpSet withMotorEfficiency(double ratio) {
        return new PumpSet(curve, speed, series, parallel, OptionalDouble.of(ratio));
    }

    /** Number of pumps in all. */
    public int pumps() {
        return series * parallel;
    }

    /** The flow on the measured curve [m3/s] of each pump when the set carries a flow. */
    public double measuredFlowM3PerS(double flowM3PerS) {
        return Require.within("flow", flowM3PerS, 0, HIGHEST_FLOW_M3_PER_S, "m3/s") / (parallel * speed);
    }

    /** The flow of the set [m3/s] when each pump is at a flow of its measured curve. */
    public double setFlowM3PerS(double measuredFlowM3PerS) {
        return Require.within("measured flow", measuredFlowM3PerS, 0, HIGHEST_FLOW_M3_PER_S, "m3/s") * parallel * speed;
    }

    /** Lowest known flow of the set [m3/s]. */
    public double lowestFlowM3PerS() {
        return setFlowM3PerS(curve.lowestFlowM3PerS());
    }

    /** Highest known flow of the set [m3/s]. */
    public double highestFlowM3PerS() {
        return setFlowM3PerS(curve.highestFlowM3PerS());
    }

    /** Head of the set against a closed valve [m]; absent where the lowest measured flow is not nil. */
    public OptionalDouble shutOffHeadM() {
        OptionalDouble measured = curve.shutOffHeadM();
        return measured.isEmpty() ? measured : OptionalDouble.of(setHeadM(measured.getAsDouble()));
    }

    /**
     * Head of the set [m].
     *
     * @param flowM3PerS from {@link #lowestFlowM3PerS} to {@link #highestFlowM3PerS}
     */
    public double headM(double flowM3PerS) {
        return setHeadM(curve.headM(clamped(flowM3PerS)));
    }

    /** Head of the set [m] for a head of the measured curve. */
    double setHeadM(double measuredHeadM) {
        return measuredHeadM * series * speed * speed;
    }

    /** Efficiency of each pump, 0 to 1; absent where not measured. */
    public OptionalDouble efficiency(double flowM3PerS) {
        return curve.efficiency(clamped(flowM3PerS));
    }

    /** NPSH required by the first pump of each line [m]; absent where not measured. */
    public OptionalDouble npshRequiredM(double flowM3PerS) {
        return scaled(curve.npshRequiredM(clamped(flowM3PerS)), speed * speed);
    }

    /** Power that all motors take [W], their efficiency taken as unchanged by speed; absent where not measured. */
    public OptionalDouble inputPowerW(double flowM3PerS) {
        return scaled(curve.inputPowerW(clamped(flowM3PerS)), pumps() * speed * speed * speed);
    }

    /** Flow of the set at the best measured efficiency [m3/s]; absent without efficiencies. */
    public OptionalDouble bestEfficiencyFlowM3PerS() {
        return scaled(curve.bestEfficiencyFlowM3PerS(), parallel * speed);
    }

    /** Measured flow, kept on the curve where a division rounds it a last digit off an end. */
    private double clamped(double flowM3PerS) {
        double measured = measuredFlowM3PerS(flowM3PerS);
        if (flowM3PerS >= lowestFlowM3PerS() && flowM3PerS <= highestFlowM3PerS()) {
            return Math.min(Math.max(measured, curve.lowestFlowM3PerS()), curve.highestFlowM3PerS());
        }
        return measured;
    }

    private static OptionalDouble scaled(OptionalDouble value, double factor) {
        return value.isEmpty() ? value : OptionalDouble.of(value.getAsDouble() * factor);
    }
}
