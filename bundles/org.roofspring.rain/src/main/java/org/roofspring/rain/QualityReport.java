package org.roofspring.rain;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedMap;
import java.util.stream.Collectors;

/**
 * What is to be known about a rain record before a number is drawn from it.
 *
 * @param firstDay           first day of the record
 * @param lastDay            last day of the record
 * @param days               days from first to last
 * @param missingDays        of these, the days without a depth
 * @param gaps               runs of missing days, in order
 * @param repeats            runs of the same depth on days in a row
 * @param copiedMonths       months whose days equal those of another month
 * @param multiDayTotals     totals that the source declares to be of several days
 * @param suspectTotals      first readings after a gap that are so large that they may be totals of the gap
 * @param impossibleDepths   depths that cannot be, taken as missing
 * @param failedQuality      readings that failed the quality control of the source, by its flag; taken as missing
 * @param traces             readings of a trace, taken as 0 mm
 * @param presumedZeroDays   days that the source presumes dry though nothing was reported
 * @param duplicateRows      rows that repeat a date with the same depth
 * @param rowsOutOfOrder     rows whose date is earlier than that of the row before; put in order
 * @param homogeneity        test of the yearly totals for a shift; empty with fewer than ten complete years
 * @param notes              what the reader found or assumed, a sentence each
 */
public record QualityReport(LocalDate firstDay, LocalDate lastDay, int days, int missingDays, List<Gap> gaps,
        List<Repeat> repeats, List<CopiedMonth> copiedMonths, List<MultiDayTotal> multiDayTotals,
        List<DayDepth> suspectTotals, List<ImpossibleDepth> impossibleDepths,
        SortedMap<Character, Integer> failedQuality, int traces, int presumedZeroDays, int duplicateRows,
        int rowsOutOfOrder, Optional<Homogeneity> homogeneity, List<String> notes) {

    /** Consecutive missing days. */
    public record Gap(LocalDate firstDay, int days) {
    }

    /** The same depth [mm] on consecutive days. */
    public record Repeat(LocalDate firstDay, int days, double depthMm) {
    }

    /** A month whose days equal those of an earlier month. */
    public record CopiedMonth(YearMonth month, YearMonth earlier) {
    }

    /**
     * A total of several days.
     *
     * @param lastDay day on which it was read
     * @param days    days it covers; 0 where the source does not say
     * @param totalMm rain of these days [mm]
     * @param spread  whether its days were given equal shares; else they are missing
     */
    public record MultiDayTotal(LocalDate lastDay, int days, double totalMm, boolean spread) {
    }

    /** A depth [mm] that cannot be, and the line it stands in. */
    public record ImpossibleDepth(LocalDate date, double depthMm, long line) {
    }

    /**
     * A hint whether the yearly totals shift, as they do when a gauge is moved: the test of Pettitt (1979), "A
     * non-parametric approach to the change-point problem", Applied Statistics 28(2), from memory.
     *
     * @param years         complete years tested
     * @param lastYearBefore the last year before the most likely shift
     * @param meanBeforeMm  mean yearly rain up to it [mm]
     * @param meanAfterMm   mean yearly rain after it [mm]
     * @param probability   chance of so large a statistic without a shift (approximate)
     */
    public record Homogeneity(int years, int lastYearBefore, double meanBeforeMm, double meanAfterMm,
            double probability) {
        /** Whether a shift is likely, at the usual level of 5 %. */
        public boolean isSuspect() {
            return probability < 0.05;
        }
    }

    /** What was found, a sentence each; the first states the span. */
    public List<String> sentences() {
        List<String> all = new ArrayList<>();
        all.add(firstDay + " to " + lastDay + ", " + days + " days"
                + (missingDays == 0 ? ", none missing." : ", " + missingDays + " missing."));
        if (!gaps.isEmpty()) {
            Gap longest = gaps.stream().reduce((a, b) -> b.days > a.days ? b : a).orElseThrow();
            all.add(count(gaps.size(), "gap") + ", the longest of " + count(longest.days, "day") + " from "
                    + longest.firstDay + ".");
        }
        if (!failedQuality.isEmpty()) {
            all.add("Taken as missing because they failed the source's quality control: " + failedQuality.entrySet()
                    .stream().map(e -> e.getValue() + " with flag " + e.getKey()).collect(Collectors.joining(", "))
                    + ".");
        }
        if (!impossibleDepths.isEmpty()) {
            ImpossibleDepth first = impossibleDepths.get(0);
            all.add(count(impossibleDepths.size(), "impossible depth") + " taken as missing, the first on "
                    + first.date + " (" + first.depthMm + " mm, line " + first.line + ").");
        }
        addMultiDay(all);
        if (!suspectTotals.isEmpty()) {
            all.add(count(suspectTotals.size(), "large reading") + " right after a gap may be a total of several "
                    + "days, the first on " + suspectTotals.get(0).date() + ".");
        }
        if (!repeats.isEmpty()) {
            Repeat first = repeats.get(0);
            all.add("The same depth stands on days in a row " + count(repeats.size(), "time") + ", first "
                    + first.depthMm + " mm on " + first.days + " days from " + first.firstDay + ".");
        }
        if (!copiedMonths.isEmpty()) {
            CopiedMonth first = copiedMonths.get(0);
            all.add(count(copiedMonths.size(), "month") + " repeat an earlier month day by day, the first "
                    + first.month + " (as " + first.earlier + ").");
        }
        addCount(all, traces, "reading", "of a trace taken as 0 mm");
        addCount(all, presumedZeroDays, "day", "presumed dry by the source though nothing was reported");
        addCount(all, duplicateRows, "row", "repeating a date with the same depth, left out");
        addCount(all, rowsOutOfOrder, "row", "out of date order, put in order");
        homogeneity.filter(Homogeneity::isSuspect).ifPresent(h -> all.add(String.format(Locale.ROOT,
                "Yearly totals shift after %d, from %.0f mm to %.0f mm on average (chance %.3f): the gauge may have "
                        + "been moved or the record joined from two.",
                h.lastYearBefore, h.meanBeforeMm, h.meanAfterMm, h.probability)));
        all.addAll(notes);
        return List.copyOf(all);
    }

    private void addMultiDay(List<String> all) {
        long spread = multiDayTotals.stream().filter(MultiDayTotal::spread).count();
        if (spread > 0) {
            all.add(count((int) spread, "total") + " of several days spread evenly, which hides dry days.");
        }
        if (spread < multiDayTotals.size()) {
            all.add(count((int) (multiDayTotals.size() - spread), "total") + " of several days not used; their days "
                    + "are missing.");
        }
    }

    private static void addCount(List<String> all, int number, String noun, String rest) {
        if (number > 0) {
            all.add(count(number, noun) + " " + rest + ".");
        }
    }

    private static String count(int number, String noun) {
        return number + " " + noun + (number == 1 ? "" : "s");
    }
}
