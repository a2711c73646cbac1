package org.roofspring.hydraulics;

import org.roofspring.hydraulics.internal.Require;

/**
 * What a pipe is made of, as far as the water feels it.
 *
 * @param name                     in words
 * @param roughnessM               equivalent sand roughness when new [m], 0 to 0.01
 * @param roughnessGrowthMPerYear  yearly growth of the roughness by scale, rust or slime [m/yr], 0 to 0.001
 * @param elasticModulusPa         [Pa], 1e8 to 1e12; for plastics at the short loading of a surge, 20 degC
 * @param poissonRatio             0 to 0.5
 * @param hazenWilliams            coefficient C when new, 40 to 160
 * @param source                   where the numbers are from
 */
public record PipeMaterial(String name, double roughnessM, double roughnessGrowthMPerYear, double elasticModulusPa,
        double poissonRatio, double hazenWilliams, String source) {
    public PipeMaterial {
        Require.text("name of the pipe material", name);
        Require.within("roughness", roughnessM, 0, 0.01, "m");
        Require.within("yearly growth of roughness", roughnessGrowthMPerYear, 0, 1e-3, "m");
        Require.within("elastic modulus", elasticModulusPa, 1e8, 1e12, "Pa");
        Require.within("Poisson's ratio", poissonRatio, 0, 0.5, "");
        Require.within("Hazen-Williams coefficient", hazenWilliams, 40, 160, "");
        Require.text("source of the pipe material", source);
    }

    /**
     * Roughness after some years, k = k0 + a t: the linear law of Colebrook and White (J. Inst. Civ. Eng. 7, 1937, from
     * memory). Real growth depends on the water; the yearly rate of the catalogue is a planning figure.
     *
     * @param years 0 to 100
     */
    public double agedRoughnessM(double years) {
        Require.within("age of the pipe in years", years, 0, 100, "");
        return roughnessM + roughnessGrowthMPerYear * years;
    }
}
