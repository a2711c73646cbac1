package org.roofspring.drainage.tank;

import org.roofspring.drainage.Source;
import org.roofspring.drainage.internal.Require;

/**
 * How much of the first rain to turn away. What washes off a roof falls by half with each half-depth of rain:
 * {@code C = C0 0.5^(depth / half)}.
 */
public final class FirstFlush {
    /** Rain that halves the contamination [mm]. */
    public static final double DEFAULT_HALF_DEPTH_MM = 1;
    /** Source of {@link #DEFAULT_HALF_DEPTH_MM}. */
    public static final Source HALF_DEPTH_SOURCE = Source.read(
            "D. B. Martinson, T. Thomas 2005, Quantifying the first-flush phenomenon: halves with each mm flushed");
    /** Depths in use, lower end [mm]: 10 US gallons from 1000 square feet. */
    public static final double LEAST_DEPTH_MM = 0.41;
    /** Depths in use, upper end [mm]: 50 US gallons from 1000 square feet. */
    public static final double GREATEST_DEPTH_MM = 2.04;
    /** Source of {@link #LEAST_DEPTH_MM} and {@link #GREATEST_DEPTH_MM}. */
    public static final Source DEPTH_SOURCE = Source.fromMemory(
            "Texas Water Development Board, The Texas Manual on Rainwater Harvesting, 3rd edition 2005");
    /** Volume in use for an ordinary house, lower end [m3]. */
    public static final double LEAST_HOUSE_VOLUME_M3 = 0.020;
    /** Volume in use for an ordinary house, upper end [m3]. */
    public static final double GREATEST_HOUSE_VOLUME_M3 = 0.025;
    /** Source of {@link #LEAST_HOUSE_VOLUME_M3} and {@link #GREATEST_HOUSE_VOLUME_M3}. */
    public static final Source HOUSE_VOLUME_SOURCE = Source.fromMemory(
            "enHealth, Guidance on use of rainwater tanks, 2010");

    private FirstFlush() {
    }

    /**
     * Volume to divert [m3].
     *
     * @param planAreaM2 of the roof, from 0 to 1e6 m2
     * @param depthMm    to turn away, from 0 to 50 mm
     */
    public static double volumeM3(double planAreaM2, double depthMm) {
        Require.range("planAreaM2", planAreaM2, 0, 1e6, "a roof area from 0 to 1000000 m2");
        return planAreaM2 * depth(depthMm) / 1000;
    }

    /** Depth that a volume turns away [mm]; arguments as in {@link #volumeM3}, the volume from 0 to 1e5 m3. */
    public static double depthMm(double planAreaM2, double volumeM3) {
        Require.range("planAreaM2", planAreaM2, 0.1, 1e6, "a roof area from 0.1 to 1000000 m2");
        Require.range("volumeM3", volumeM3, 0, 1e5, "a volume from 0 to 100000 m3");
        return volumeM3 / planAreaM2 * 1000;
    }

    /**
     * Share of the first contamination that still comes off the roof after a depth of rain.
     *
     * @param depthMm     fallen, from 0 to 50 mm
     * @param halfDepthMm that halves it, from 0.1 to 50 mm
     */
    public static double shareLeft(double depthMm, double halfDepthMm) {
        return Math.exp(-depth(depthMm) * rate(halfDepthMm));
    }

    /**
     * Depth to turn away so that what comes next carries a given share of the first contamination [mm].
     *
     * @param share       from 1e-6 to 1
     * @param halfDepthMm that halves it, from 0.1 to 50 mm
     */
    public static double depthForShareMm(double share, double halfDepthMm) {
        Require.range("share", share, 1e-6, 1, "a share from 0.000001 to 1");
        return -Math.log(share) / rate(halfDepthMm);
    }

    /**
     * Mean contamination of what gets past the diverter in one rain, over the first contamination; 0 when nothing
     * gets past.
     *
     * @param depthMm     turned away, from 0 to 50 mm
     * @param rainMm      of the whole rain, from 0 to 5000 mm
     * @param halfDepthMm that halves it, from 0.1 to 50 mm
     */
    public static double meanSharePast(double depthMm, double rainMm, double halfDepthMm) {
        Require.range("rainMm", rainMm, 0, 5000, "a rain from 0 to 5000 mm");
        double past = rainMm - depth(depthMm);
        double rate = rate(halfDepthMm);
        return past <= 0 ? 0 : shareLeft(depthMm, halfDepthMm) * -Math.expm1(-rate * past) / (rate * past);
    }

    private static double depth(double depthMm) {
        return Require.range("depthMm", depthMm, 0, 50, "a depth from 0 to 50 mm");
    }

    private static double rate(double halfDepthMm) {
        return Math.log(2) / Require.range("halfDepthMm", halfDepthMm, 0.1, 50, "a half-depth from 0.1 to 50 mm");
    }
}
