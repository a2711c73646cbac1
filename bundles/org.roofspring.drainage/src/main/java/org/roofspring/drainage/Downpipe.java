package org.roofspring.drainage;

import org.roofspring.drainage.internal.Require;

/**
 * An upright downpipe, in which water clings to the wall around a core of air. The Wyly-Eaton formula,
 * {@code Q = 2.5e-4 kb^-0.167 d^2.667 f^1.667} [L/s, mm] (EN 12056-3:2000, from memory). Fuller than a third, the flow
 * turns noisy and uneven, and the formula ends.
 *
 * @param diameterM   inside, from 0.02 to 0.5 m
 * @param fillRatio   share of the bore filled with water, from 0.05 to 0.33
 * @param roughnessMm of the wall, from 0.01 to 5 mm
 */
public record Downpipe(double diameterM, double fillRatio, double roughnessMm) {
    /** Fill unless another is given: the most that the standard allows. */
    public static final double DEFAULT_FILL_RATIO = 0.33;
    /** Roughness unless another is given [mm]. */
    public static final double DEFAULT_ROUGHNESS_MM = 0.25;

    public Downpipe {
        Require.range("diameterM", diameterM, 0.02, 0.5, "a downpipe bore from 0.02 to 0.5 m");
        Require.range("fillRatio", fillRatio, 0.05, 0.33, "a fill from 0.05 to 0.33");
        Require.range("roughnessMm", roughnessMm, 0.01, 5, "a roughness from 0.01 to 5 mm");
    }

    /** Of ordinary roughness, filled to a third. */
    public Downpipe(double diameterM) {
        this(diameterM, DEFAULT_FILL_RATIO, DEFAULT_ROUGHNESS_MM);
    }

    /** What it carries [m3/s]. */
    public double capacityM3PerS() {
        return 2.5e-4 * Math.pow(roughnessMm, -0.167) * Math.pow(diameterM * 1000, 2.667) * Math.pow(fillRatio, 1.667)
                / 1000;
    }
}
