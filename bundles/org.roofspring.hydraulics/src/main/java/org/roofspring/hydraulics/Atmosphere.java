package org.roofspring.hydraulics;

import org.roofspring.hydraulics.internal.Require;

/**
 * Air pressure by altitude after the US Standard Atmosphere 1976 (NOAA, NASA and USAF, 1976), lowest layer: a lapse of
 * 6.5 K each geopotential kilometre from 288.15 K and 101 325 Pa at sea level.
 */
public final class Atmosphere {
    /** Lowest altitude accepted [m]. */
    public static final double LOWEST_ALTITUDE_M = -500;
    /** Highest altitude accepted [m]. */
    public static final double HIGHEST_ALTITUDE_M = 9000;

    private static final double EARTH_RADIUS_M = 6_356_766;
    private static final double SEA_LEVEL_TEMPERATURE_K = 288.15;
    private static final double LAPSE_K_PER_M = 0.0065;
    /** g0 M / (R* L) with g0 = 9.80665, M = 28.9644 kg/kmol and R* = 8314.32 J/(kmol K) of the 1976 standard. */
    private static final double EXPONENT = 9.80665 * 28.9644 / (8314.32 * LAPSE_K_PER_M);

    private Atmosphere() {
    }

    /**
     * Mean air pressure at a place [Pa].
     *
     * @param altitudeM geometric altitude above sea level [m], -500 to 9000
     * @throws IllegalArgumentException outside that range
     */
    public static double pressurePa(double altitudeM) {
        Require.within("altitude", altitudeM, LOWEST_ALTITUDE_M, HIGHEST_ALTITUDE_M, "m");
        double geopotentialM = EARTH_RADIUS_M * altitudeM / (EARTH_RADIUS_M + altitudeM);
        return PhysicalConstants.STANDARD_ATMOSPHERE_PA
                * Math.pow(1 - LAPSE_K_PER_M * geopotentialM / SEA_LEVEL_TEMPERATURE_K, EXPONENT);
    }
}
