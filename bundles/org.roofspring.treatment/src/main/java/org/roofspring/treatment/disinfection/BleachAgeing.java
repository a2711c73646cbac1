package org.roofspring.treatment.disinfection;

import org.roofspring.treatment.Source;
import org.roofspring.treatment.internal.Checks;

/**
 * Hypochlorite solution loses strength, the faster the stronger and the warmer it is: S(t) = S0 / (1 + S0 t / (Sh th)),
 * second order, where a solution of strength Sh halves in th at 25 degC, and the rate grows by a factor for each
 * 10 degC. A rough model for planning: weak bleach usually keeps better than it says. Buy fresh and small, and measure
 * the residual.
 *
 * @param halvingStrengthRatio Sh, above 0 to 1
 * @param halvingS             th at 25 degC, above 0 to 1e10 [s]
 * @param factorPer10C         1 to 10
 */
public record BleachAgeing(double halvingStrengthRatio, double halvingS, double factorPer10C) {
    public static final Source SOURCE = Source.fromMemory("Gordon, Adam and Bubnis 1995, Minimizing Chlorate Ion "
            + "Formation, J. AWWA 87(6): 12.5 % halves in about 90 days at 25 degC, about 3.5 times faster for each "
            + "10 degC");
    public static final BleachAgeing DEFAULT = new BleachAgeing(0.125, 90 * 86_400.0, 3.5);

    public BleachAgeing {
        Checks.positive("halving strength (halvingStrengthRatio)", halvingStrengthRatio, 1, "");
        Checks.positive("halving time (halvingS)", halvingS, 1e10, "s");
        Checks.within("factor for 10 degC (factorPer10C)", factorPer10C, 1, 10, "");
    }

    /**
     * Strength after storage.
     *
     * @param freshRatio   S0, above 0 to 1
     * @param storedS      t, 0 to 1e9 [s]
     * @param temperatureC of the store, -10 to 60 [degC]
     * @return above 0 to {@code freshRatio}
     */
    public double strengthRatio(double freshRatio, double storedS, double temperatureC) {
        Checks.positive("fresh strength (freshRatio)", freshRatio, 1, "");
        Checks.within("storage (storedS)", storedS, 0, 1e9, "s");
        Checks.within("storage temperature (temperatureC)", temperatureC, -10, 60, "degC");
        double rate = Math.pow(factorPer10C, (temperatureC - 25) / 10) / (halvingStrengthRatio * halvingS);
        return freshRatio / (1 + freshRatio * rate * storedS);
    }
}
