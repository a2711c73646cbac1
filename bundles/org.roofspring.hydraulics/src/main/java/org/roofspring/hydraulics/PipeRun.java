package org.roofspring.hydraulics;

import org.roofspring.hydraulics.internal.Require;

/**
 * A run of pipe of one bore with its fittings.
 *
 * @param boreM      true inside diameter [m], 0.0001 to 10
 * @param lengthM    [m], 0 to 1e6
 * @param roughnessM equivalent sand roughness [m], 0 to 0.05 of the bore (the range of the Colebrook-White formula)
 * @param fittingsK  sum of the loss coefficients of its fittings, each against this bore, 0 to 1e6
 */
public record PipeRun(double boreM, double lengthM, double roughnessM, double fittingsK) {
    /** Highest flow accepted anywhere in this kernel [m3/s]; keeps every result finite. */
    public static final double HIGHEST_FLOW_M3_PER_S = 1000;

    public PipeRun {
        Require.within("bore", boreM, 1e-4, 10, "m");
        Require.within("length of pipe", lengthM, 0, 1e6, "m");
        Require.within("roughness of a pipe of " + Require.show(boreM, "m") + " bore", roughnessM, 0,
                PipeFriction.ROUGHEST * boreM, "m");
        Require.within("sum of fitting coefficients K", fittingsK, 0, 1e6, "");
    }

    /** Area of the bore [m2]. */
    public double areaM2() {
        return Math.PI / 4 * boreM * boreM;
    }

    /** Water held in the run [m3]. */
    public double volumeM3() {
        return areaM2() * lengthM;
    }

    /** The same run with other fittings. */
    public PipeRun withFittingsK(double otherK) {
        return new PipeRun(boreM, lengthM, roughnessM, otherK);
    }

    /** The same run with another roughness, such as that of aged pipe. */
    public PipeRun withRoughnessM(double otherRoughnessM) {
        return new PipeRun(boreM, lengthM, otherRoughnessM, fittingsK);
    }

    /**
     * Velocity, Reynolds number, friction factor and heads lost at a flow.
     *
     * @param flowM3PerS [m3/s], 0 to 1000
     */
    public PipeLoss lossAt(double flowM3PerS, WaterProperties water) {
        return new PipeResistance(this, Require.present("water", water)).lossAt(flowM3PerS);
    }

    /** The head this run takes from water of a given temperature, as a function of flow. */
    public HeadLoss carrying(WaterProperties water) {
        return new PipeResistance(this, Require.present("water", water));
    }
}
