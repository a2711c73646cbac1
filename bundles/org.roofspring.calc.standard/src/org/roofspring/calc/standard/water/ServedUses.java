package org.roofspring.calc.standard.water;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.roofspring.hydraulics.pump.PumpOperation;
import org.roofspring.site.PipeNode;
import org.roofspring.site.Pump;
import org.roofspring.site.Site;
import org.roofspring.site.Use;
import org.roofspring.site.UseCalendar;

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
        double[] allM3 = new double[YEARS.length * DAYS];
        double[] essentialM3 = new double[allM3.length];
        Map<UseCalendar, double[]> factors = new HashMap<>();
        for (Use use : served) {
            double fullM3 = UseDemand.fullM3PerDay(use);
            double[] factor = factors.computeIfAbsent(use.getCalendar(), ServedUses::factors);
            for (int day = 0; day < allM3.length; day++) {
                allM3[day] += fullM3 * factor[day];
                essentialM3[day] += use.getPriority() <= ESSENTIAL_PRIORITY ? fullM3 * factor[day] : 0;
            }
        }
        return new ServedUses(served, Arrays.stream(allM3).sum() / allM3.length * PumpOperation.DAYS_PER_YEAR,
                Arrays.stream(allM3).max().orElse(0), Arrays.stream(essentialM3).max().orElse(0));
    }

    /** Share of the full amount on every day of the years. */
    private static double[] factors(UseCalendar calendar) {
        double[] factors = new double[YEARS.length * DAYS];
        CalendarFactors ofCalendar = CalendarFactors.of(calendar);
        for (int year = 0; year < YEARS.length; year++) {
            LocalDate first = LocalDate.of(YEARS[year], 1, 1);
            for (int day = 0; day < DAYS; day++) {
                factors[year * DAYS + day] = ofCalendar.on(first.plusDays(day));
            }
        }
        return factors;
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
