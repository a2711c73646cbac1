package org.roofspring.hydraulics;

import java.util.List;

import org.roofspring.hydraulics.internal.LinearTable;
import org.roofspring.hydraulics.internal.Require;

/** Loss coefficients of fittings, K of h = K V^2 / 2g, and what they amount to in other measures. */
public final class Fittings {
    /** Smallest and largest bore that fittings are reckoned for [m]. */
    public static final double SMALLEST_BORE_M = 0.005;
    public static final double LARGEST_BORE_M = 1;

    /** Clean commercial steel, 0.0018 in, which Crane TP 410 tables fT for. */
    private static final double COMMERCIAL_STEEL_ROUGHNESS_M = 0.0018 * 0.0254;
    private static final LinearTable ROUNDED_K = new LinearTable(0, 0.5, 0.02, 0.28, 0.04, 0.24, 0.06, 0.15, 0.10, 0.09,
            0.15, 0.04);

    private Fittings() {
    }

    /**
     * fT, the friction factor of fully rough flow in clean commercial steel of this bore (Crane TP 410: 0.026 for 1/2
     * in down to 0.016 for 4 in), from the fully rough limit of Colebrook-White.
     *
     * @param boreM [m], 0.005 to 1
     */
    public static double turbulentFactor(double boreM) {
        Require.within("bore of a fitting", boreM, SMALLEST_BORE_M, LARGEST_BORE_M, "m");
        return PipeFriction.fullyRough(COMMERCIAL_STEEL_ROUGHNESS_M / boreM);
    }

    /** Sum of K of fittings in a pipe of one bore [m], 0.005 to 1. */
    public static double sumK(List<FittingCount> fittings, double boreM) {
        Require.within("bore of a fitting", boreM, SMALLEST_BORE_M, LARGEST_BORE_M, "m");
        return Require.list("fittings", fittings).stream().mapToDouble(each -> each.count() * each.type().k(boreM))
                .sum();
    }

    /**
     * K of an entrance whose edge is rounded; between the tabled radii by straight lines. Source: Crane TP 410 (2009),
     * as quoted by the source of the open library "fluids".
     *
     * @param radiusOverBore radius of the edge over bore, 0 (sharp) to 10; from 0.15 on K stays 0.04
     */
    public static double roundedEntranceK(double radiusOverBore) {
        Require.within("radius of the edge over bore", radiusOverBore, 0, 10, "");
        return ROUNDED_K.value(Math.min(radiusOverBore, ROUNDED_K.high()));
    }

    /**
     * K of a sudden widening, (1 - (d/D)^2)^2 against the velocity in the narrower pipe (Borda-Carnot, textbook).
     *
     * @param narrowBoreM d [m], 0.0001 to D
     * @param wideBoreM   D [m], to 10
     */
    public static double suddenWideningK(double narrowBoreM, double wideBoreM) {
        double areas = areaRatio(narrowBoreM, wideBoreM);
        return (1 - areas) * (1 - areas);
    }

    /**
     * K of a sudden narrowing, 0.5 (1 - (d/D)^2) against the velocity in the narrower pipe (Crane TP 410, from memory).
     *
     * @param wideBoreM   D [m], to 10
     * @param narrowBoreM d [m], 0.0001 to D
     */
    public static double suddenNarrowingK(double wideBoreM, double narrowBoreM) {
        return 0.5 * (1 - areaRatio(narrowBoreM, wideBoreM));
    }

    /**
     * A coefficient against the velocity in one bore, restated against that in another: the head stays, so K goes with
     * the fourth power of the bore.
     *
     * @param k      coefficient, 0 to 1e6
     * @param fromM  bore it is against [m], 0.0001 to 10
     * @param toM    bore to restate it against [m], 0.0001 to 10
     */
    public static double restatedK(double k, double fromM, double toM) {
        Require.within("loss coefficient K", k, 0, 1e6, "");
        Require.within("bore", fromM, 1e-4, 10, "m");
        Require.within("bore", toM, 1e-4, 10, "m");
        return k * Math.pow(toM / fromM, 4);
    }

    /**
     * K of a valve from its metric flow coefficient: Kv m3/h of water at 1000 kg/m3 pass at a pressure drop of 1 bar.
     *
     * @param kvM3PerH Kv [m3/h], 0.001 to 1e6
     * @param boreM    bore whose velocity K is against [m], 0.0001 to 10
     */
    public static double kFromKv(double kvM3PerH, double boreM) {
        Require.within("flow coefficient Kv", kvM3PerH, 1e-3, 1e6, "m3/h");
        Require.within("bore", boreM, 1e-4, 10, "m");
        double velocityMPerS = kvM3PerH / 3600 / (Math.PI / 4 * boreM * boreM);
        return 2 * 1e5 / 1000 / (velocityMPerS * velocityMPerS);
    }

    /**
     * Length of straight pipe that takes the same head, L = K D / f.
     *
     * @param k              coefficient, 0 to 1e6
     * @param boreM          [m], 0.0001 to 10
     * @param frictionFactor Darcy friction factor of the pipe at the flow in question, 0.001 to 1e6
     */
    public static double equivalentLengthM(double k, double boreM, double frictionFactor) {
        Require.within("loss coefficient K", k, 0, 1e6, "");
        Require.within("bore", boreM, 1e-4, 10, "m");
        Require.within("friction factor", frictionFactor, 1e-3, 1e6, "");
        return k * boreM / frictionFactor;
    }

    private static double areaRatio(double narrowBoreM, double wideBoreM) {
        Require.within("wider bore", wideBoreM, 1e-4, 10, "m");
        Require.within("narrower bore", narrowBoreM, 1e-4, wideBoreM, "m");
        return narrowBoreM * narrowBoreM / (wideBoreM * wideBoreM);
    }
}
