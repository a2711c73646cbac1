package org.roofspring.treatment.disinfection;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

import org.roofspring.treatment.internal.Checks;

/**
 * What a chlorine contact earns. {@link #logGiardia} and {@link #logVirus} are the credits: the EPA tables read with
 * their rounding rule, at most 3 and 4 log. The interpolated and formula values stand beside them for comparison.
 * Cryptosporidium is never credited. Without a residual there is no credit, whatever was dosed.
 *
 * @param contactMgMinPerL       residual times effective contact [mg.min/L]
 * @param logGiardia             3 CT / CT of the rounded 3 log row, at most 3
 * @param logVirus               largest tabulated credit that the contact reaches, at most 4
 * @param logGiardiaInterpolated the same with the table interpolated; empty outside the table
 * @param logVirusInterpolated   the same with the table interpolated; empty outside the table
 * @param logGiardiaFormula      by {@link GiardiaFormula#REGRESSION_1995}; empty outside its range
 * @param neededGiardiaMgMinPerL contact time of the rounded row for 3 log; empty outside the table
 * @param neededVirusMgMinPerL   contact time of the rounded row for 4 log; empty outside the table
 * @param notes                  why something earns nothing, in plain sentences
 */
public record ChlorineCredit(double contactMgMinPerL, double logGiardia, double logVirus,
        OptionalDouble logGiardiaInterpolated, OptionalDouble logVirusInterpolated, OptionalDouble logGiardiaFormula,
        OptionalDouble neededGiardiaMgMinPerL, OptionalDouble neededVirusMgMinPerL, List<String> notes) {

    public static final double LOG_CRYPTOSPORIDIUM = 0;

    public ChlorineCredit {
        notes = Checks.list("notes", notes);
    }

    /** The credit where nobody measured or modelled a residual: none. */
    public static ChlorineCredit withoutResidual() {
        return new ChlorineCredit(0, 0, 0, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(),
                OptionalDouble.empty(), OptionalDouble.empty(), List.of("No free chlorine residual was measured or "
                        + "modelled; a dose is not a residual and earns no credit."));
    }

    public static ChlorineCredit of(ChlorineContact contact) {
        if (Checks.present("contact", contact).residualMgPerL() == 0) {
            return withoutResidual();
        }
        double ct = contact.contactMgMinPerL();
        double residual = contact.residualMgPerL();
        double ph = contact.ph();
        double temperature = contact.temperatureC();
        List<String> notes = new ArrayList<>();
        double logGiardia = 0;
        OptionalDouble giardiaBetween = OptionalDouble.empty();
        OptionalDouble neededGiardia = OptionalDouble.empty();
        if (GiardiaContactTable.covers(ph, temperature)) {
            double needed = GiardiaContactTable.rounded(residual, ph, temperature);
            neededGiardia = OptionalDouble.of(needed);
            logGiardia = giardia(ct, needed);
            giardiaBetween = OptionalDouble.of(
                    giardia(ct, GiardiaContactTable.interpolated(residual, ph, temperature)));
        } else {
            notes.add("Giardia earns no credit at pH " + Checks.shown(ph) + " and " + Checks.shown(temperature)
                    + " degC: the contact-time tables end at pH 9 and 0.5 degC.");
        }
        double logVirus = 0;
        OptionalDouble virusBetween = OptionalDouble.empty();
        OptionalDouble neededVirus = OptionalDouble.empty();
        if (VirusContactTable.covers(ph, temperature)) {
            logVirus = VirusContactTable.rounded(ct, temperature);
            virusBetween = OptionalDouble.of(VirusContactTable.interpolated(ct, temperature));
            neededVirus = OptionalDouble.of(VirusContactTable.contactMgMinPerL(4, temperature));
        } else {
            notes.add("Viruses earn no credit at pH " + Checks.shown(ph) + " and " + Checks.shown(temperature)
                    + " degC: the contact-time table covers pH 6 to 9 from 0.5 degC.");
        }
        return new ChlorineCredit(ct, logGiardia, logVirus, giardiaBetween, virusBetween,
                formula(ct, residual, ph, temperature), neededGiardia, neededVirus, notes);
    }

    private static double giardia(double ct, double neededForThree) {
        return Math.min(GiardiaContactTable.LOG, GiardiaContactTable.LOG * ct / neededForThree);
    }

    private static OptionalDouble formula(double ct, double residual, double ph, double temperature) {
        if (residual < 0.1 || residual > 4 || ph < 6 || ph > 9 || temperature < 0.5 || temperature > 25) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(giardia(ct, GiardiaFormula.REGRESSION_1995.contactMgMinPerL(GiardiaContactTable.LOG,
                residual, ph, temperature)));
    }
}
