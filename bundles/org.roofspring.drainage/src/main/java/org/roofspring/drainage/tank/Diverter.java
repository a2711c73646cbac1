package org.roofspring.drainage.tank;

import org.roofspring.drainage.Source;
import org.roofspring.drainage.internal.Channel;
import org.roofspring.drainage.internal.Require;

/**
 * An upright chamber that fills with the first rain and drains through a small hole at its foot, so that it is empty
 * before the next one. Depth h over the hole falls as {@code A dh/dt = -Cd a sqrt(2 g h)}.
 *
 * @param chamberAreaM2  plan area A, from 1e-4 to 100 m2
 * @param heightM        of the water over the hole when full, from 0.01 to 20 m
 * @param holeM          diameter of the hole, from 0.0005 to 0.1 m
 * @param dischargeRatio Cd of the hole, from 0.1 to 1
 */
public record Diverter(double chamberAreaM2, double heightM, double holeM, double dischargeRatio) {
    /** Discharge coefficient of a sharp-edged hole, unless another is given. */
    public static final double DEFAULT_DISCHARGE_RATIO = 0.62;
    /** Source of {@link #DEFAULT_DISCHARGE_RATIO}. */
    public static final Source DISCHARGE_SOURCE = Source.fromMemory(
            "textbooks of hydraulics, sharp-edged orifice, 0.60 to 0.62");

    public Diverter {
        Require.range("chamberAreaM2", chamberAreaM2, 1e-4, 100, "a chamber area from 0.0001 to 100 m2");
        Require.range("heightM", heightM, 0.01, 20, "a height of water from 0.01 to 20 m");
        Require.range("holeM", holeM, 0.0005, 0.1, "a hole from 0.0005 to 0.1 m");
        Require.range("dischargeRatio", dischargeRatio, 0.1, 1, "a discharge coefficient from 0.1 to 1");
    }

    /** A standing pipe as chamber. */
    public static Diverter ofPipe(double boreM, double heightM, double holeM) {
        Require.range("boreM", boreM, 0.02, 10, "a bore from 0.02 to 10 m");
        return new Diverter(Math.PI / 4 * boreM * boreM, heightM, holeM, DEFAULT_DISCHARGE_RATIO);
    }

    /** Volume when full [m3]. */
    public double volumeM3() {
        return chamberAreaM2 * heightM;
    }

    private double effectiveHole() {
        return dischargeRatio * Math.PI / 4 * holeM * holeM;
    }

    /**
     * Flow out of the hole [m3/s] at a depth of water from 0 to {@link #heightM} [m]. When full, this is what the
     * diverter goes on wasting as long as it rains.
     */
    public double holeFlowM3PerS(double depthM) {
        Require.range("depthM", depthM, 0, heightM, "a depth from 0 to " + heightM + " m");
        return effectiveHole() * Math.sqrt(2 * Channel.GRAVITY * depthM);
    }

    /** Time to drain from full to empty with nothing coming in [s]. */
    public double drainDownS() {
        return 2 * chamberAreaM2 * Math.sqrt(heightM) / (effectiveHole() * Math.sqrt(2 * Channel.GRAVITY));
    }

    /**
     * Depth left [m] a time after the rain stopped with the chamber full.
     *
     * @param durationS since, from 0 to 1e9 s
     */
    public double depthAfterM(double durationS) {
        Require.range("durationS", durationS, 0, 1e9, "a duration from 0 to 1e9 s");
        double left = Math.max(0, 1 - durationS / drainDownS());
        return heightM * left * left;
    }

    /** Hole that drains the same chamber in a given time [m], from 1 to 1e7 s; it may lie outside what is accepted. */
    public double holeForDrainDownM(double durationS) {
        Require.range("durationS", durationS, 1, 1e7, "a duration from 1 to 10000000 s");
        return holeM * Math.sqrt(drainDownS() / durationS);
    }
}
