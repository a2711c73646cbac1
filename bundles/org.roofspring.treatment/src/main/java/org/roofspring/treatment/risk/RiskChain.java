package org.roofspring.treatment.risk;

import org.roofspring.treatment.Source;
import org.roofspring.treatment.internal.Checks;

/**
 * From raw water to disease burden, one figure after another. C = C_raw 10^-L; d = C V; P_day by dose response;
 * P_year = 1 - (1 - P_day)^n; illness = P_year x share that falls ill; burden = illness x DALY a case x susceptible
 * share.
 *
 * @param rawPerL            organisms in raw water, C_raw [1/L]
 * @param logReduction       L
 * @param treatedPerL        organisms behind the train, C [1/L]
 * @param dailyDose          organisms swallowed in a day, d
 * @param dailyInfection     probability P_day
 * @param yearlyInfection    probability P_year
 * @param yearlyIllness      probability, of those who can be infected
 * @param yearlyDaly         healthy years lost, for a person and year
 */
public record RiskChain(double rawPerL, double logReduction, double treatedPerL, double dailyDose,
        double dailyInfection, double yearlyInfection, double yearlyIllness, double yearlyDaly) {

    /** Usual target: a millionth of a healthy year for a person and year. Seen also in NHMRC guideline A3.4. */
    public static final double TARGET_DALY = 1e-6;
    public static final Source TARGET_SOURCE = Source.read("Australian Drinking Water Guidelines A3.4; also WHO "
            + "Guidelines for Drinking-water Quality");
    /** Days of the year on which the water is drunk. */
    public static final int DAYS = 365;

    /** Most litres accepted for a day. */
    public static final double MAX_LITRES_PER_DAY = 100;
    /** Largest raw concentration accepted [1/L]. */
    public static final double MAX_RAW_PER_L = 1e12;

    /**
     * @param rawPerL       0 to 1e12 [1/L]
     * @param logReduction  0 to 20
     * @param litresPerDay  unboiled water swallowed, above 0 to 100 [L]
     * @param daysPerYear   1 to 366
     * @throws IllegalArgumentException outside these ranges
     */
    public static RiskChain forward(Pathogen pathogen, double rawPerL, double logReduction, double litresPerDay,
            int daysPerYear) {
        Checks.present("pathogen", pathogen);
        Checks.within("raw concentration (rawPerL)", rawPerL, 0, MAX_RAW_PER_L, "1/L");
        Checks.within("log reduction (logReduction)", logReduction, 0, 20, "");
        check(litresPerDay, daysPerYear);
        double treated = rawPerL * Math.pow(10, -logReduction);
        double dose = treated * litresPerDay;
        double day = pathogen.doseResponse().infection(dose);
        double year = yearly(day, daysPerYear);
        double ill = year * pathogen.illnessRatio();
        return new RiskChain(rawPerL, logReduction, treated, dose, day, year, ill,
                ill * pathogen.dalyPerCase() * pathogen.susceptibleRatio());
    }

    /**
     * The chain backwards: the log reduction that just meets a target burden.
     *
     * @param rawPerL    above 0 to 1e12 [1/L]
     * @param targetDaly for a person and year, 1e-12 to 1
     * @return 0 where the raw water meets it already
     */
    public static double neededLog(Pathogen pathogen, double rawPerL, double litresPerDay, int daysPerYear,
            double targetDaly) {
        Checks.present("pathogen", pathogen);
        Checks.positive("raw concentration (rawPerL)", rawPerL, MAX_RAW_PER_L, "1/L");
        check(litresPerDay, daysPerYear);
        Checks.within("target burden (targetDaly)", targetDaly, 1e-12, 1, "DALY");
        double year = targetDaly / pathogen.dalyPerCase() / pathogen.susceptibleRatio() / pathogen.illnessRatio();
        if (year >= 1) {
            return 0;
        }
        double day = -Math.expm1(Math.log1p(-year) / daysPerYear);
        double allowedPerL = pathogen.doseResponse().dose(day) / litresPerDay;
        return Math.max(0, Math.log10(rawPerL / allowedPerL));
    }

    static double yearly(double daily, int days) {
        return daily >= 1 ? 1 : -Math.expm1(days * Math.log1p(-daily));
    }

    private static void check(double litresPerDay, int daysPerYear) {
        Checks.positive("water swallowed (litresPerDay)", litresPerDay, MAX_LITRES_PER_DAY, "L/d");
        Checks.within("days of use (daysPerYear)", daysPerYear, 1, 366, "");
    }
}
