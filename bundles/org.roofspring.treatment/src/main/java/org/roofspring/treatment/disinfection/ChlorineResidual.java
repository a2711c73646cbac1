package org.roofspring.treatment.disinfection;

import org.roofspring.treatment.Source;
import org.roofspring.treatment.internal.Checks;

/**
 * What is left of a chlorine dose: an immediate demand, then first-order decay, C(t) = (D - demand) exp(-k t). Demand
 * and decay differ from water to water: measure them in a bottle of the water ({@link #fit}).
 *
 * @param doseMgPerL   D, above 0 to 1000 [mg/L]
 * @param demandMgPerL used up at once, 0 to 1000 [mg/L]
 * @param decayPerS    k, 0 to 1 [1/s]
 */
public record ChlorineResidual(double doseMgPerL, double demandMgPerL, double decayPerS) {
    /** Bounds of a household dose, used by {@link #meetsHouseholdTargets}. */
    public static final Source HOUSEHOLD_SOURCE = Source.read("Journal of Water and Health 2018, 16(1), 112-125: at "
            + "most 2.0 mg/L an hour after dosing, at least 0.2 mg/L after 24 hours");
    /** Household dose for clear water, below 10 NTU [mg/L]; the same source. */
    public static final double CLEAR_DOSE_MG_PER_L = 1.88;
    /** Household dose for turbid water, to be used within 8 hours [mg/L]; the same source. */
    public static final double TURBID_DOSE_MG_PER_L = 3.75;

    private static final double HOUR_S = 3600;

    public ChlorineResidual {
        Checks.positive("dose (doseMgPerL)", doseMgPerL, ChlorineDose.MAX_DOSE_MG_PER_L, "mg/L");
        Checks.within("demand (demandMgPerL)", demandMgPerL, 0, ChlorineDose.MAX_DOSE_MG_PER_L, "mg/L");
        Checks.within("decay (decayPerS)", decayPerS, 0, 1, "1/s");
    }

    /** Residual after a time of 0 to 1e9 s [mg/L]. */
    public double afterMgPerL(double durationS) {
        Checks.within("time (durationS)", durationS, 0, 1e9, "s");
        return startMgPerL() * Math.exp(-decayPerS * durationS);
    }

    /**
     * Concentration summed over the contact [mg.min/L], for comparison: the credit takes the residual at the end times
     * the time, which is never more.
     */
    public double integratedContactMgMinPerL(double durationS) {
        Checks.within("time (durationS)", durationS, 0, 1e9, "s");
        double effectiveS = decayPerS == 0 ? durationS : -Math.expm1(-decayPerS * durationS) / decayPerS;
        return startMgPerL() * effectiveS / 60;
    }

    /** True where an hour after dosing at most 2.0 mg/L and after 24 hours at least 0.2 mg/L are left. */
    public boolean meetsHouseholdTargets() {
        return afterMgPerL(HOUR_S) <= 2.0 && afterMgPerL(24 * HOUR_S) >= 0.2;
    }

    private double startMgPerL() {
        return Math.max(0, doseMgPerL - demandMgPerL);
    }

    /** The household dose for a turbidity of 0 to 10,000 NTU [mg/L]. */
    public static double householdDoseMgPerL(double turbidityNtu) {
        Checks.within("turbidity (turbidityNtu)", turbidityNtu, 0, 10_000, "NTU");
        return turbidityNtu < 10 ? CLEAR_DOSE_MG_PER_L : TURBID_DOSE_MG_PER_L;
    }

    /**
     * Demand and decay from two residuals measured in a dosed bottle: the line through both in the logarithm, and what
     * is missing at the start.
     *
     * @param doseMgPerL   above 0 to 1000 [mg/L]
     * @param firstS       time of the first, 0 to 1e8 [s]
     * @param firstMgPerL  above 0 to the dose [mg/L]
     * @param secondS      time of the second, later, to 1e9 [s]
     * @param secondMgPerL above 0 to the first residual [mg/L]
     * @throws IllegalArgumentException where readings fall outside these ranges, or lead back to more than was dosed
     */
    public static ChlorineResidual fit(double doseMgPerL, double firstS, double firstMgPerL, double secondS,
            double secondMgPerL) {
        Checks.positive("dose (doseMgPerL)", doseMgPerL, ChlorineDose.MAX_DOSE_MG_PER_L, "mg/L");
        Checks.within("first time (firstS)", firstS, 0, 1e8, "s");
        Checks.positive("first residual (firstMgPerL)", firstMgPerL, doseMgPerL, "mg/L");
        Checks.within("second time (secondS)", secondS, firstS + 1, 1e9, "s");
        Checks.positive("second residual (secondMgPerL)", secondMgPerL, firstMgPerL, "mg/L");
        double decay = Math.log(firstMgPerL / secondMgPerL) / (secondS - firstS);
        double start = firstMgPerL * Math.exp(decay * firstS);
        if (start > doseMgPerL * (1 + 1e-9)) {
            throw new IllegalArgumentException("first residual (firstMgPerL) must lie below what decay alone leaves of "
                    + "the dose; the two readings lead back to " + Checks.plain(start)
                    + " mg/L at the start, above the " + Checks.plain(doseMgPerL) + " mg/L dosed");
        }
        return new ChlorineResidual(doseMgPerL, Math.max(0, doseMgPerL - start), decay);
    }

    /**
     * The dose that leaves a residual after a time.
     *
     * @param targetMgPerL above 0 to 100 [mg/L]
     * @param durationS    0 to 1e9 [s]
     * @param demandMgPerL 0 to 1000 [mg/L]
     * @param decayPerS    0 to 1 [1/s]
     * @return [mg/L]
     * @throws IllegalArgumentException also where the dose would pass 1000 mg/L: the chlorine does not last that long
     */
    public static double doseForMgPerL(double targetMgPerL, double durationS, double demandMgPerL, double decayPerS) {
        Checks.positive("target residual (targetMgPerL)", targetMgPerL, ChlorineContact.MAX_RESIDUAL_MG_PER_L, "mg/L");
        Checks.within("time (durationS)", durationS, 0, 1e9, "s");
        Checks.within("demand (demandMgPerL)", demandMgPerL, 0, ChlorineDose.MAX_DOSE_MG_PER_L, "mg/L");
        Checks.within("decay (decayPerS)", decayPerS, 0, 1, "1/s");
        double dose = demandMgPerL + targetMgPerL * Math.exp(decayPerS * durationS);
        if (!(dose <= ChlorineDose.MAX_DOSE_MG_PER_L)) {
            throw new IllegalArgumentException("time (durationS) must be short enough for a dose of at most 1000 mg/L "
                    + "to last; at this decay no chlorine is left after " + Checks.plain(durationS) + " s");
        }
        return dose;
    }
}
