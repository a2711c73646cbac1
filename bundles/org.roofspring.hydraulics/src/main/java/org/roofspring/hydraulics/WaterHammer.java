package org.roofspring.hydraulics;

import org.roofspring.hydraulics.internal.Require;

/**
 * The surge when the water in a pipe is brought to a stop by a valve or a check valve.
 *
 * <p>Wave speed a = sqrt(K/rho) / sqrt(1 + c (K/E) (D/e)) in thin-walled pipe held against moving lengthways, c = 1 -
 * mu^2 (Wylie and Streeter, Fluid Transients in Systems, 1993, from memory), K the bulk modulus of water (2.19e9 Pa at
 * 20 degC, from memory). Stopped within one return of the wave, 2L/a, the pressure rises by rho a V (Joukowsky 1898);
 * stopped evenly over a longer time t by about 2 rho L V / t (Michaud 1878, from memory), which is an upper bound of
 * what an even stop gives. Air, branches, column separation after a pump trip and a valve that shuts off only at the
 * end of its travel are outside this estimate.
 *
 * @param waveSpeedMPerS     [m/s]
 * @param returnTimeS        2L/a [s]
 * @param quick              whether the stop is within the return time
 * @param surgePressurePa    rise above the running pressure [Pa]
 */
public record WaterHammer(double waveSpeedMPerS, double returnTimeS, boolean quick, double surgePressurePa) {
    /** Bulk modulus of water at 20 degC [Pa]; it varies by 10 % between 0 and 60 degC. */
    public static final double BULK_MODULUS_PA = 2.19e9;

    /**
     * The surge in a run of catalogue pipe.
     *
     * @param pipe           size and material
     * @param lengthM        from the valve to the next open water [m], 0.01 to 1e6
     * @param velocityMPerS  before the stop [m/s], 0 to 100
     * @param stopS          time in which the flow is stopped [s], 0 to 1e6
     */
    public static WaterHammer of(PipeSize pipe, double lengthM, double velocityMPerS, double stopS,
            WaterProperties water) {
        Require.within("length of pipe", lengthM, 0.01, 1e6, "m");
        Require.within("velocity", velocityMPerS, 0, 100, "m/s");
        Require.within("time of stopping", stopS, 0, 1e6, "s");
        double waveMPerS = waveSpeedMPerS(pipe, water);
        double returnS = 2 * lengthM / waveMPerS;
        boolean quick = stopS <= returnS;
        double densityKgPerM3 = water.densityKgPerM3();
        double surgePa = quick ? densityKgPerM3 * waveMPerS * velocityMPerS
                : 2 * densityKgPerM3 * lengthM * velocityMPerS / stopS;
        return new WaterHammer(waveMPerS, returnS, quick, surgePa);
    }

    /** Speed of a pressure wave in this pipe full of water [m/s]. */
    public static double waveSpeedMPerS(PipeSize pipe, WaterProperties water) {
        Require.present("pipe", pipe);
        Require.present("water", water);
        double poisson = pipe.material().poissonRatio();
        double give = (1 - poisson * poisson) * BULK_MODULUS_PA / pipe.material().elasticModulusPa() * pipe.boreM()
                / pipe.wallM();
        return Math.sqrt(BULK_MODULUS_PA / water.densityKgPerM3() / (1 + give));
    }
}
