package org.roofspring.economy.readings;

import org.roofspring.economy.internal.Checks;

/**
 * What is reckoned with, day by day. The arrays are not copied and must not be written to.
 *
 * @param inflowM3    that roofs should send, 0 or more [m3]
 * @param plannedM3   that uses should take, 0 or more [m3]
 * @param knownLossM3 that is known to have gone, by evaporation or a noted incident, 0 or more [m3]
 * @param capacityM3  at which the tank spills, above 0 to 1e6 [m3]
 */
public record WaterCourse(double[] inflowM3, double[] plannedM3, double[] knownLossM3, double capacityM3) {
    private static final double MOST_M3 = 1e6;

    public WaterCourse {
        Checks.within("capacity (capacityM3)", capacityM3, 1e-6, MOST_M3);
        int days = Checks.present("inflow (inflowM3)", inflowM3).length;
        series("inflow of a day (inflowM3)", inflowM3, days);
        series("planned use of a day (plannedM3)", plannedM3, days);
        series("known loss of a day (knownLossM3)", knownLossM3, days);
    }

    private static void series(String name, double[] valuesM3, int days) {
        if (Checks.present(name, valuesM3).length != days) {
            throw new IllegalArgumentException(name + " must be given for " + days + " days, not for "
                    + valuesM3.length);
        }
        for (double value : valuesM3) {
            Checks.within(name, value, 0, MOST_M3);
        }
    }

    /** Days of the series. */
    public int days() {
        return inflowM3.length;
    }
}
