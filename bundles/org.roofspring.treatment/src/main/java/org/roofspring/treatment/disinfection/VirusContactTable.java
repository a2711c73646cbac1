package org.roofspring.treatment.disinfection;

import org.roofspring.treatment.Source;
import org.roofspring.treatment.internal.Checks;

/**
 * Free chlorine contact time that inactivates 2, 3 and 4 log of viruses at pH 6 to 9 [mg.min/L], by temperature.
 * Rounded, the temperature goes down to a row (above 25 degC the row of 25) and the credit is the largest tabulated one
 * that is reached, 0 below the first. Outside pH 6 to 9 and below 0.5 degC there is no credit.
 */
public final class VirusContactTable {
    public static final Source SOURCE = Source.fromMemory("US EPA 1991, Guidance Manual for Compliance with the "
            + "Filtration and Disinfection Requirements for Public Water Systems, Table E-7");
    /** Largest log reduction that is credited. */
    public static final double LOG = 4;

    private static final double[] TEMPERATURE_C = {0.5, 5, 10, 15, 20, 25};
    private static final double[] LOGS = {2, 3, 4};
    private static final double[][] CT = {{6, 9, 12}, {4, 6, 8}, {3, 4, 6}, {2, 3, 4}, {1, 2, 3}, {1, 1, 2}};

    private VirusContactTable() {
    }

    public static boolean covers(double ph, double temperatureC) {
        return ph >= 6 - TableRows.SLACK && ph <= 9 + TableRows.SLACK
                && temperatureC >= TEMPERATURE_C[0] - TableRows.SLACK;
    }

    /**
     * The largest tabulated credit that a contact time reaches.
     *
     * @param contactMgMinPerL 0 or more [mg.min/L]
     * @param temperatureC     0.5 to 100 [degC]
     * @return 0, 2, 3 or 4
     */
    public static double rounded(double contactMgMinPerL, double temperatureC) {
        check(contactMgMinPerL, temperatureC);
        double[] needed = CT[TableRows.atOrBelow(TEMPERATURE_C, temperatureC)];
        double credit = 0;
        for (int i = 0; i < LOGS.length; i++) {
            if (contactMgMinPerL >= needed[i] - TableRows.SLACK) {
                credit = LOGS[i];
            }
        }
        return credit;
    }

    /** The same, linear between temperatures, between credits, and from nothing to the first credit. */
    public static double interpolated(double contactMgMinPerL, double temperatureC) {
        check(contactMgMinPerL, temperatureC);
        double contact = 0;
        double log = 0;
        for (int i = 0; i < LOGS.length; i++) {
            double next = needed(i, temperatureC);
            if (contactMgMinPerL < next) {
                return log + (LOGS[i] - log) * (contactMgMinPerL - contact) / (next - contact);
            }
            contact = next;
            log = LOGS[i];
        }
        return log;
    }

    private static double needed(int log, double temperatureC) {
        double[] column = new double[TEMPERATURE_C.length];
        for (int t = 0; t < column.length; t++) {
            column[t] = CT[t][log];
        }
        return TableRows.linear(TEMPERATURE_C, column, temperatureC);
    }

    /** Contact time for 2, 3 or 4 log at the temperature's row [mg.min/L]. */
    public static double contactMgMinPerL(int log, double temperatureC) {
        if (log < 2 || log > 4) {
            throw new IllegalArgumentException("log must be 2, 3 or 4, not " + log);
        }
        check(0, temperatureC);
        return CT[TableRows.atOrBelow(TEMPERATURE_C, temperatureC)][log - 2];
    }

    private static void check(double contactMgMinPerL, double temperatureC) {
        Checks.within("contact time (contactMgMinPerL)", contactMgMinPerL, 0, 1e9, "mg.min/L");
        Checks.within("temperature (temperatureC)", temperatureC, TEMPERATURE_C[0] - TableRows.SLACK, 100, "degC");
    }
}
