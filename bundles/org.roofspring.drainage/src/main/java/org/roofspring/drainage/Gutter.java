package org.roofspring.drainage;

import org.roofspring.drainage.internal.Require;

/**
 * A straight gutter that takes roof water evenly along its length and lets it out at one end.
 *
 * @param section    the cross-section
 * @param lengthM    from the closed end (or from the water-parting, midway between two outlets) to the outlet,
 *                   from 0.1 to 500 m
 * @param slopeRatio fall towards the outlet per length, from 0 (level) to 0.1
 * @param manningN   Manning's roughness [s/m^(1/3)], from 0.001 to 0.1; 0.01 to 0.015 for gutters (Development
 *                   Technology Unit, University of Warwick, web pages on guttering)
 */
public record Gutter(GutterSection section, double lengthM, double slopeRatio, double manningN) {
    /** Roughness that is used unless another is given: the middle of the range quoted for gutters. */
    public static final double DEFAULT_MANNING_N = 0.012;

    public Gutter {
        Require.given("section", section);
        Require.range("lengthM", lengthM, 0.1, 500, "a gutter length from 0.1 to 500 m");
        Require.range("slopeRatio", slopeRatio, 0, 0.1, "a slope towards the outlet from 0 to 0.1 (100 mm per metre)");
        Require.range("manningN", manningN, 0.001, 0.1, "Manning's roughness from 0.001 to 0.1");
    }

    /** A gutter of ordinary roughness. */
    public Gutter(GutterSection section, double lengthM, double slopeRatio) {
        this(section, lengthM, slopeRatio, DEFAULT_MANNING_N);
    }
}
