package org.roofspring.treatment.disinfection;

import org.roofspring.treatment.internal.Checks;

/**
 * Water that stands or flows with a free chlorine residual.
 *
 * @param residualMgPerL free chlorine measured or modelled at the end of the contact, 0 to 100 [mg/L]; 0 also where
 *                       nobody has measured it: a dose is not a residual
 * @param durationS      contact, 0 to 1e8 [s]; for a flowing tank its volume over the peak flow
 * @param baffling       share of that time which nearly all the water stays
 * @param ph             0 to 14
 * @param temperatureC   -5 to 100 [degC]
 */
public record ChlorineContact(double residualMgPerL, double durationS, Baffling baffling, double ph,
        double temperatureC) {
    /** Largest residual accepted [mg/L]. */
    public static final double MAX_RESIDUAL_MG_PER_L = 100;

    public ChlorineContact {
        Checks.within("residual (residualMgPerL)", residualMgPerL, 0, MAX_RESIDUAL_MG_PER_L, "mg/L");
        Checks.within("contact (durationS)", durationS, 0, 1e8, "s");
        Checks.present("baffling", baffling);
        Checks.within("pH (ph)", ph, 0, 14, "");
        Checks.within("temperature (temperatureC)", temperatureC, -5, 100, "degC");
    }

    /** Water that stands, so that all of it has the whole time. */
    public static ChlorineContact standing(double residualMgPerL, double durationS, double ph, double temperatureC) {
        return new ChlorineContact(residualMgPerL, durationS, Baffling.STANDING, ph, temperatureC);
    }

    /** Residual times effective contact [mg.min/L]. */
    public double contactMgMinPerL() {
        return residualMgPerL * durationS / 60 * baffling.ratio();
    }
}
