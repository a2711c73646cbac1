package org.roofspring.treatment.train;

import org.roofspring.treatment.internal.Checks;

/**
 * The water at a point of the train, measured or assumed.
 *
 * @param turbidityNtu          0 to 10,000 [NTU]
 * @param ph                    0 to 14
 * @param temperatureC          -5 to 100 [degC]
 * @param uvTransmittanceRatio  of 254 nm light through 10 mm, 0 to 1
 * @param freeChlorineMgPerL    0 to 100 [mg/L]
 */
public record WaterState(double turbidityNtu, double ph, double temperatureC, double uvTransmittanceRatio,
        double freeChlorineMgPerL) {
    public WaterState {
        Checks.within("turbidity (turbidityNtu)", turbidityNtu, 0, 10_000, "NTU");
        Checks.within("pH (ph)", ph, 0, 14, "");
        Checks.within("temperature (temperatureC)", temperatureC, -5, 100, "degC");
        Checks.within("UV transmittance (uvTransmittanceRatio)", uvTransmittanceRatio, 0, 1, "");
        Checks.within("free chlorine (freeChlorineMgPerL)", freeChlorineMgPerL, 0, 100, "mg/L");
    }

    /** Water without chlorine. */
    public static WaterState of(double turbidityNtu, double ph, double temperatureC, double uvTransmittanceRatio) {
        return new WaterState(turbidityNtu, ph, temperatureC, uvTransmittanceRatio, 0);
    }

    WaterState withTurbidity(double ntu) {
        return new WaterState(ntu, ph, temperatureC, uvTransmittanceRatio, freeChlorineMgPerL);
    }

    WaterState withFreeChlorine(double mgPerL) {
        return new WaterState(turbidityNtu, ph, temperatureC, uvTransmittanceRatio, mgPerL);
    }
}
