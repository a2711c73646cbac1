package org.roofspring.treatment.disinfection;

import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.roofspring.treatment.Source;
import org.roofspring.treatment.internal.Checks;

/**
 * How hot and how long: the boiling point falls with altitude, so the time is longer high up.
 *
 * @param boilingPointC at the altitude in standard air [degC]
 * @param durationS     rolling boil asked for by the agency [s]
 */
public record Boiling(double boilingPointC, double durationS) {

    /** Whose rule on the altitude is followed. */
    public enum Agency {
        /** 3 minutes above 6,500 feet (1981.2 m). */
        CDC(1981.2, Source.read("US Centers for Disease Control and Prevention, boil water advice: 3 minutes above "
                + "6,500 feet")),
        /** 3 minutes above 5,000 feet (1524 m; the "1,000 meters" printed beside it is a slip of that text). */
        EPA(1524, Source.read("US EPA, Emergency Disinfection of Drinking Water: 3 minutes above 5,000 feet"));

        private final double thresholdM;
        private final Source source;

        Agency(double thresholdM, Source source) {
            this.thresholdM = thresholdM;
            this.source = source;
        }

        /** Altitude above which the longer time holds [m]. */
        public double thresholdM() {
            return thresholdM;
        }

        public Source source() {
            return source;
        }
    }

    public static final Source BOILING_POINT_SOURCE = Source.fromMemory("US Standard Atmosphere 1976 for the air "
            + "pressure and IAPWS SR1-86(1992) for the vapour pressure of water");

    private static final double MIN_ALTITUDE_M = -450;
    private static final double MAX_ALTITUDE_M = 9000;

    /**
     * @param altitudeM above sea level, -450 to 9000 [m]
     * @throws IllegalArgumentException outside this range
     */
    public static Boiling at(double altitudeM, Agency agency) {
        Checks.within("altitude (altitudeM)", altitudeM, MIN_ALTITUDE_M, MAX_ALTITUDE_M, "m");
        boolean high = altitudeM > Checks.present("agency", agency).thresholdM() + TableRows.SLACK;
        return new Boiling(boilingPointC(airPressurePa(altitudeM)), high ? 180 : 60);
    }

    /**
     * Pressure of standard air [Pa]. US Standard Atmosphere 1976, lowest layer: p = p0 (T / T0)^(g M / (R L)) with
     * T = T0 - L H and geopotential altitude H = r z / (r + z).
     *
     * @param altitudeM z, geometric altitude [m]
     */
    static double airPressurePa(double altitudeM) {
        double geopotentialM = 6_356_766 * altitudeM / (6_356_766 + altitudeM);
        double ratio = (288.15 - 0.0065 * geopotentialM) / 288.15;
        return 101_325 * Math.pow(ratio, 9.80665 * 0.0289644 / (8.31432 * 0.0065));
    }

    /**
     * Saturation pressure of water [Pa]. IAPWS SR1-86(1992), Wagner and Pruss 1993.
     *
     * @param temperatureC 0.01 to 373.9 [degC]
     */
    static double vapourPressurePa(double temperatureC) {
        double kelvin = temperatureC + 273.15;
        double theta = 1 - kelvin / 647.096;
        double sum = -7.85951783 * theta + 1.84408259 * Math.pow(theta, 1.5) - 11.7866497 * Math.pow(theta, 3)
                + 22.6807411 * Math.pow(theta, 3.5) - 15.9618719 * Math.pow(theta, 4)
                + 1.80122502 * Math.pow(theta, 7.5);
        return 22.064e6 * Math.exp(647.096 / kelvin * sum);
    }

    /** The temperature at which the vapour pressure is the air pressure [degC]. */
    private static double boilingPointC(double pressurePa) {
        return new BracketingNthOrderBrentSolver(1e-10, 5)
                .solve(100, temperature -> vapourPressurePa(temperature) - pressurePa, 1, 200);
    }
}
