package org.roofspring.storage;

import java.util.Arrays;

/**
 * Rules that size a tank without running a record, to be shown beside the simulation as cross-checks. They know
 * nothing of when the rain falls: the first two were made for places where it rains all year, and there give about
 * three weeks of water; where months stay dry they are far too small, and only the last looks at the dry season. None
 * of them says how sure the water is.
 */
public final class SimpleRules {

    private static final double FIVE_PERCENT = 0.05;
    private static final double SIX_PERCENT = 0.06;
    private static final double DAYS_A_YEAR = 365;

    private SimpleRules() {
    }

    /**
     * Yield of a roof in a year: A x (R - B) x roof.
     *
     * <p>Source: enHealth, <i>Guidance on use of rainwater tanks</i>, Appendix B; there A = 0.8 to 0.85 and B = 24 mm
     * (2 mm a month).
     *
     * @param areaM2 plan area [m&sup2;]
     * @param annualMm R, rain in a year [mm]
     * @param efficiencyRatio A, share that is collected [-], 0 to 1
     * @param lossMm B, depth lost in a year [mm]
     * @return [m&sup3; a year], 0 when the loss takes it all
     */
    public static double annualYieldM3(double areaM2, double annualMm, double efficiencyRatio, double lossMm) {
        check(areaM2, "areaM2");
        check(annualMm, "annualMm");
        check(lossMm, "lossMm");
        if (!(efficiencyRatio >= 0 && efficiencyRatio <= 1)) {
            throw new IllegalArgumentException("efficiencyRatio is " + efficiencyRatio + "; accepted is 0 to 1");
        }
        return efficiencyRatio * (Math.max(0, annualMm - lossMm) / 1000) * areaM2;
    }

    /**
     * Five per cent of the year's yield or of the year's demand, whichever is less.
     *
     * <p>Source: BS 8515, <i>Rainwater harvesting systems</i>, intermediate approach (from memory, verify against the
     * standard).
     *
     * @param annualYieldM3 collected in a year, filter losses taken off [m&sup3;]
     * @param demandM3PerDay [m&sup3; a day]
     * @return [m&sup3;]
     */
    public static double fivePercentM3(double annualYieldM3, double demandM3PerDay) {
        check(annualYieldM3, "annualYieldM3");
        check(demandM3PerDay, "demandM3PerDay");
        return FIVE_PERCENT * Math.min(annualYieldM3, demandM3PerDay * DAYS_A_YEAR);
    }

    /**
     * Six per cent, about three weeks, of the year's yield or of the year's demand, whichever is less.
     *
     * <p>Source: DIN 1989-1, <i>Regenwassernutzungsanlagen</i>, simplified method, as quoted by a trade guide (verify
     * against the standard).
     *
     * @param annualYieldM3 collected in a year [m&sup3;]
     * @param annualDemandM3 asked for in a year [m&sup3;]
     * @return [m&sup3;]
     */
    public static double sixPercentM3(double annualYieldM3, double annualDemandM3) {
        check(annualYieldM3, "annualYieldM3");
        check(annualDemandM3, "annualDemandM3");
        return SIX_PERCENT * Math.min(annualYieldM3, annualDemandM3);
    }

    /**
     * What is drawn in the driest stretch that is to be bridged, if no rain comes.
     *
     * <p>Common practice, no source. A household's cistern is often made twice that, as a reserve against a tap left
     * open or a bad season.
     *
     * @param demandM3 of each day of the stretch [m&sup3;]
     * @return [m&sup3;]
     */
    public static double demandSideM3(double[] demandM3) {
        Arrays.stream(demandM3).forEach(demand -> check(demand, "demandM3"));
        return Arrays.stream(demandM3).sum();
    }

    private static void check(double value, String name) {
        if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(name + " is " + value + "; accepted is 0 or more");
        }
    }
}
