package org.roofspring.treatment.disinfection;

import org.roofspring.treatment.Source;
import org.roofspring.treatment.internal.Checks;

/**
 * Ultraviolet dose needed for a log credit [mJ/cm2]. The credit is the largest tabulated one that the dose reaches, 0
 * below the first. The doses hold for validated reactors: a household lamp needs its own validated dose, at its flow
 * and at the water's transmittance.
 */
public enum UvDoseTable {
    CRYPTOSPORIDIUM(1.6, 2.5, 3.9, 5.8, 8.5, 12, 15, 22),
    GIARDIA(1.5, 2.1, 3.0, 5.2, 7.7, 11, 15, 22),
    VIRUS(39, 58, 79, 100, 121, 143, 163, 186);

    public static final Source SOURCE = Source.asQuoted("US EPA 2006, Ultraviolet Disinfection Guidance Manual, "
            + "required doses (also 40 CFR 141.720(d))");
    /** Step between the tabulated credits [log]. */
    public static final double LOG_STEP = 0.5;
    /** Largest dose accepted [mJ/cm2]. */
    public static final double MAX_DOSE_MJ_PER_CM2 = 1e6;

    private final double[] doseMjPerCm2;

    UvDoseTable(double... doseMjPerCm2) {
        this.doseMjPerCm2 = doseMjPerCm2;
    }

    /**
     * @param uvDoseMjPerCm2 validated dose, 0 to 1e6 [mJ/cm2]
     * @return log credit, 0 to 4 in steps of 0.5
     */
    public double credit(double uvDoseMjPerCm2) {
        Checks.within("UV dose (uvDoseMjPerCm2)", uvDoseMjPerCm2, 0, MAX_DOSE_MJ_PER_CM2, "mJ/cm2");
        double credit = 0;
        for (int i = 0; i < doseMjPerCm2.length; i++) {
            if (uvDoseMjPerCm2 >= doseMjPerCm2[i] - TableRows.SLACK) {
                credit = LOG_STEP * (i + 1);
            }
        }
        return credit;
    }

    /**
     * The dose that a credit needs.
     *
     * @param logCredit above 0 to 4; between two steps the higher one is meant
     * @return [mJ/cm2]
     */
    public double neededMjPerCm2(double logCredit) {
        Checks.positive("log credit (logCredit)", logCredit, LOG_STEP * doseMjPerCm2.length, "");
        return doseMjPerCm2[(int) Math.max(1, Math.ceil(logCredit / LOG_STEP - TableRows.SLACK)) - 1];
    }
}
