package org.roofspring.economy.readings;

import org.roofspring.economy.internal.Checks;

/**
 * How far things may be off, each as a standard deviation. All are assumptions of the usual order, no source; who knows
 * better enters better.
 *
 * @param dipstickM3  of one reading of the tank, 1e-6 to 1e6 [m3]
 * @param stormRatio  of the inflow of one day, 0 to 2 [-]
 * @param runoffRatio of all inflow together, as a wrong runoff coefficient makes it, 0 to 2 [-]
 * @param useDayRatio of the use of one day, 0 to 2 [-]
 * @param useRatio    of all planned use together, 0 to 2 [-]; of no weight while a meter is read
 * @param meterRatio  of the meter, 0 to 2 [-]
 */
public record Doubt(double dipstickM3, double stormRatio, double runoffRatio, double useDayRatio, double useRatio,
        double meterRatio) {
    public Doubt {
        Checks.within("error of the dipstick (dipstickM3)", dipstickM3, 1e-6, 1e6);
        ratio("error of a day's inflow (stormRatio)", stormRatio);
        ratio("error of all inflow (runoffRatio)", runoffRatio);
        ratio("error of a day's use (useDayRatio)", useDayRatio);
        ratio("error of all planned use (useRatio)", useRatio);
        ratio("error of the meter (meterRatio)", meterRatio);
    }

    private static void ratio(String name, double value) {
        Checks.within(name, value, 0, 2);
    }

    /** The usual order of errors, with that of the dipstick as given. */
    public static Doubt usual(double dipstickM3) {
        return new Doubt(dipstickM3, 0.2, 0.08, 0.3, 0.15, 0.02);
    }
}
