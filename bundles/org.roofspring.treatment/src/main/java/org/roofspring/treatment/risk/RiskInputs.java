package org.roofspring.treatment.risk;

import org.roofspring.treatment.internal.Checks;

/**
 * Uncertain inputs of the risk chain.
 *
 * @param pathogen     with its dose response
 * @param rawPerL      organisms in raw water [1/L]; the user's assumption
 * @param logReduction of the train while it works
 * @param outageRatio  share of the time in which the water passes untreated, 0 to 1
 * @param litresPerDay unboiled water swallowed [L]
 * @param daysPerYear  1 to 366
 * @param targetDaly   burden to compare with, for a person and year, 1e-12 to 1
 */
public record RiskInputs(Pathogen pathogen, Spread rawPerL, Spread logReduction, double outageRatio,
        Spread litresPerDay, int daysPerYear, double targetDaly) {
    public RiskInputs {
        Checks.present("pathogen", pathogen);
        bounded("raw concentration (rawPerL)", rawPerL, RiskChain.MAX_RAW_PER_L, "1/L");
        bounded("log reduction (logReduction)", logReduction, 20, "");
        Checks.within("share of time out (outageRatio)", outageRatio, 0, 1, "");
        bounded("water swallowed (litresPerDay)", litresPerDay, RiskChain.MAX_LITRES_PER_DAY, "L/d");
        Checks.within("days of use (daysPerYear)", daysPerYear, 1, 366, "");
        Checks.within("target burden (targetDaly)", targetDaly, 1e-12, 1, "DALY");
    }

    private static void bounded(String name, Spread spread, double high, String unit) {
        Checks.within("least " + name, Checks.present(name, spread).least(), 0, high, unit);
        Checks.within("middle " + name, spread.quantile(0.5), 0, high, unit);
        Checks.within("largest usual " + name, spread.quantile(0.999), 0, high, unit);
    }
}
