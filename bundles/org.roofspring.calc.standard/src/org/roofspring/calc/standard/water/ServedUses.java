package org.roofspring.calc.standard.water;

import java.time.LocalDate;
import java.util.List;

import org.roofspring.hydraulics.pump.PumpOperation;
import org.roofspring.site.PipeNode;
import org.roofspring.site.Pump;
import org.roofspring.site.Site;
import org.roofspring.site.Use;

/**
 * The uses whose water a pump lifts, and how much they ask for.
 *
 * @param uses           in the order of the site
 * @param yearlyM3       in a mean year [m3]
 * @param busiestDayM3   on the day on which they ask for most [m3]
 * @param essentialDayM3 the part of that day's demand with priority 1 or 2 [m3]
 */
public record ServedUses(List<Use> uses, double yearlyM3, double busiestDayM3, double essentialDayM3) {
    /** Common years that begin on each day of the week, so that a calendar of weekdays meets every date. */
    private static final int[] YEARS = {2001, 2002, 2003, 2009, 2010, 2005, 2006};
    private static final int DAYS = 365;
    private static final int ESSENTIAL_PRIORITY = 2;

    public ServedUses {
        uses = List.copyOf(uses);
    }

    /**
     * The uses beyond a pump: those that draw from a tank or tap to which pipes lead from it, and those that say
     * neither tank nor tap.
     */
    public static ServedUses of(Site site, Pump pump) {
        PipePaths paths = new PipePaths(site);
        List<Use> served = site.getUses().stream()
                .filter(use -> use.isInUse() && use.getAmountEach() != null && isServed(use, pump, paths)).toList();
        double yearM3 = 0;
        double busiestM3 = 0;
        double essentialM3 = 0;
        for (int year : YEARS) {
            double[] allM3 = new double[DAYS];
            double[] urgentM3 = new double[DAYS];
            for (Use use : served) {
                double[] demandM3 = UseDemand.seriesM3(use, LocalDate.of(year, 1, 1), DAYS);
                for (int day = 0; day < DAYS; day++) {
                    allM3[day] += demandM3[day];
                    urgentM3[day] += use.getPriority() <= ESSENTIAL_PRIORITY ? demandM3[day] : 0;
                }
            }
            for (int day = 0; day < DAYS; day++) {
                yearM3 += allM3[day] / YEARS.length;
                busiestM3 = Math.max(busiestM3, allM3[day]);
                essentialM3 = Math.max(essentialM3, urgentM3[day]);
            }
        }
        return new ServedUses(served, yearM3 * PumpOperation.DAYS_PER_YEAR / DAYS, busiestM3, essentialM3);
    }

    private static boolean isServed(Use use, Pump pump, PipePaths paths) {
        if (use.getTank() != null) {
            return leads(paths, pump, use.getTank());
        }
        return use.getTaps().isEmpty() || use.getTaps().stream().anyMatch(tap -> leads(paths, pump, tap));
    }

    private static boolean leads(PipePaths paths, Pump pump, PipeNode to) {
        return paths.downstream(pump, node -> node == to).isPresent();
    }
}
