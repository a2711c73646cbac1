package org.roofspring.rain;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Figures of a rain record. A day is wet when its depth is above the wet-day threshold (0 mm unless told), else dry;
 * a missing day is neither, and is left out of every figure.
 *
 * <p>A figure that the record is too short for is empty, never NaN.
 */
public final class RainStatistics {
    /** Mean length of a calendar year [d], Gregorian. */
    public static final double DAYS_PER_YEAR = 365.2425;
    static final double[] DAYS_OF_MONTH = {31, 28.2425, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};

    private static final int ABSENT = -1;

    private final RainRecord record;
    private final double wetAboveMm;
    private final List<MonthTotal> monthlyTotals;
    private final List<YearTotal> yearlyTotals;
    private final double totalMm;
    private final int wetDays;
    private final int dryThenAny;
    private final int dryThenWet;
    private final int wetThenAny;
    private final int wetThenWet;
    private final int wettestIndex;

    private RainStatistics(RainRecord record, double wetAboveMm) {
        this.record = record;
        this.wetAboveMm = wetAboveMm;
        double[] depthMm = record.rawDepthsMm();
        double sumMm = 0;
        int wet = 0;
        int wettest = -1;
        double mostMm = -1;
        int[] pairs = new int[4];
        int before = ABSENT;
        for (int day = 0; day < depthMm.length; day++) {
            double depth = depthMm[day];
            if (Double.isNaN(depth)) {
                before = ABSENT;
                continue;
            }
            sumMm += depth;
            int state = depth > wetAboveMm ? 1 : 0;
            wet += state;
            if (depth > mostMm) {
                mostMm = depth;
                wettest = day;
            }
            if (before != ABSENT) {
                pairs[2 * before + state]++;
            }
            before = state;
        }
        this.totalMm = sumMm;
        this.wetDays = wet;
        this.wettestIndex = wettest;
        this.dryThenWet = pairs[1];
        this.dryThenAny = pairs[0] + pairs[1];
        this.wetThenWet = pairs[3];
        this.wetThenAny = pairs[2] + pairs[3];
        this.monthlyTotals = sumMonths();
        this.yearlyTotals = sumYears();
    }

    /** Figures with every day above 0 mm taken as wet. */
    public static RainStatistics of(RainRecord record) {
        return of(record, 0);
    }

    /**
     * Figures with a stated wet-day threshold.
     *
     * @param wetAboveMm a day with more than this is wet [mm], finite and at least 0
     */
    public static RainStatistics of(RainRecord record, double wetAboveMm) {
        Objects.requireNonNull(record, "record");
        if (!(wetAboveMm >= 0 && wetAboveMm < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("wetAboveMm is " + wetAboveMm
                    + "; a finite depth of at least 0 mm is accepted");
        }
        return new RainStatistics(record, wetAboveMm);
    }

    private int wetState(int day) {
        return record.rawDepthsMm()[day] > wetAboveMm ? 1 : 0;
    }

    private List<MonthTotal> sumMonths() {
        double[] depthMm = record.rawDepthsMm();
        List<MonthTotal> months = new ArrayList<>();
        YearMonth month = YearMonth.from(record.firstDay());
        long end = 1L - record.firstDay().getDayOfMonth();
        int day = 0;
        while (day < depthMm.length) {
            end += month.lengthOfMonth();
            double sumMm = 0;
            int present = 0;
            int wet = 0;
            for (; day < Math.min(end, depthMm.length); day++) {
                if (!Double.isNaN(depthMm[day])) {
                    sumMm += depthMm[day];
                    present++;
                    wet += wetState(day);
                }
            }
            months.add(new MonthTotal(month, sumMm, present, wet, present == month.lengthOfMonth()));
            month = month.plusMonths(1);
        }
        return List.copyOf(months);
    }

    private List<YearTotal> sumYears() {
        List<YearTotal> years = new ArrayList<>();
        int index = 0;
        while (index < monthlyTotals.size()) {
            int year = monthlyTotals.get(index).month().getYear();
            double sumMm = 0;
            int present = 0;
            for (; index < monthlyTotals.size() && monthlyTotals.get(index).month().getYear() == year; index++) {
                sumMm += monthlyTotals.get(index).totalMm();
                present += monthlyTotals.get(index).presentDays();
            }
            boolean complete = present == LocalDate.of(year, 1, 1).lengthOfYear();
            years.add(new YearTotal(year, sumMm, present, complete));
        }
        return List.copyOf(years);
    }

    /** The record the figures are of. */
    public RainRecord record() {
        return record;
    }

    /** The wet-day threshold [mm]. */
    public double wetAboveMm() {
        return wetAboveMm;
    }

    /** Days of the record, missing ones included. */
    public int days() {
        return record.days();
    }

    /** Days without a depth. */
    public int missingDays() {
        return record.missingDays();
    }

    /** Days with a depth. */
    public int presentDays() {
        return record.days() - record.missingDays();
    }

    /** Rain of all days present [mm]. */
    public double totalMm() {
        return totalMm;
    }

    /** Every calendar year that the record touches, in order. */
    public List<YearTotal> yearlyTotals() {
        return yearlyTotals;
    }

    /** Every month that the record touches, in order. */
    public List<MonthTotal> monthlyTotals() {
        return monthlyTotals;
    }

    /** Calendar years with no day missing. */
    public List<YearTotal> completeYears() {
        return yearlyTotals.stream().filter(YearTotal::complete).toList();
    }

    /**
     * Mean rain of a year [mm]: the mean of the complete calendar years where there is at least one, else the mean
     * of the days present times {@link #DAYS_PER_YEAR}. Empty when no day is present.
     *
     * @see #annualMeanIsScaled()
     */
    public OptionalDouble annualMeanMm() {
        if (presentDays() == 0) {
            return OptionalDouble.empty();
        }
        if (annualMeanIsScaled()) {
            return OptionalDouble.of(totalMm / presentDays() * DAYS_PER_YEAR);
        }
        return completeYears().stream().mapToDouble(YearTotal::totalMm).average();
    }

    /** Whether the annual mean is scaled from part years, since no calendar year is complete. */
    public boolean annualMeanIsScaled() {
        return completeYears().isEmpty();
    }

    /** The complete calendar year with the least rain, the earliest of equal ones; empty when none is complete. */
    public Optional<YearTotal> driestYear() {
        return completeYears().stream().min(Comparator.comparingDouble(YearTotal::totalMm));
    }

    /** The complete calendar year with the most rain; empty when none is complete. */
    public Optional<YearTotal> wettestYear() {
        return completeYears().stream().max(Comparator.comparingDouble(YearTotal::totalMm));
    }

    /** Sample standard deviation of the totals of complete years [mm]; empty with fewer than two. */
    public OptionalDouble annualSpreadMm() {
        List<YearTotal> years = completeYears();
        if (years.size() < 2) {
            return OptionalDouble.empty();
        }
        double mean = years.stream().mapToDouble(YearTotal::totalMm).average().orElseThrow();
        double squares = years.stream().mapToDouble(year -> (year.totalMm() - mean) * (year.totalMm() - mean)).sum();
        return OptionalDouble.of(Math.sqrt(squares / (years.size() - 1)));
    }

    /** The day with the most rain, the earliest of equal ones; empty when no day is present. */
    public Optional<DayDepth> wettestDay() {
        return wettestIndex < 0 ? Optional.empty()
                : Optional.of(new DayDepth(record.date(wettestIndex), record.depthMm(wettestIndex)));
    }

    /** Number of wet days. */
    public int wetDays() {
        return wetDays;
    }

    /** Wet days over days present; empty when no day is present. */
    public OptionalDouble wetDayRatio() {
        return ratio(wetDays, presentDays());
    }

    /** Chance that a wet day follows a dry one (P01), from pairs of consecutive days that are both present. */
    public OptionalDouble p01() {
        return ratio(dryThenWet, dryThenAny);
    }

    /** Chance that a wet day follows a wet one (P11), from pairs of consecutive days that are both present. */
    public OptionalDouble p11() {
        return ratio(wetThenWet, wetThenAny);
    }

    private static OptionalDouble ratio(int part, int whole) {
        return whole == 0 ? OptionalDouble.empty() : OptionalDouble.of((double) part / whole);
    }

    /**
     * Mean rain of a day in each calendar month [mm], January first.
     *
     * @throws MissingRainException when a calendar month has no reading in any year
     */
    public double[] meanDailyMmByMonth() {
        int[] present = presentDaysByMonth();
        double[] mm = new double[12];
        for (MonthTotal month : monthlyTotals) {
            mm[month.month().getMonthValue() - 1] += month.totalMm();
        }
        for (int month = 0; month < 12; month++) {
            mm[month] /= present[month];
        }
        return mm;
    }

    /**
     * Mean rain of each calendar month [mm], January first: mean of the days present times the mean length of the
     * month (February 28.2425 d), so that their sum is the mean of a year.
     *
     * @throws MissingRainException when a calendar month has no reading in any year
     */
    public double[] monthlyMeansMm() {
        double[] mm = meanDailyMmByMonth();
        for (int month = 0; month < 12; month++) {
            mm[month] *= DAYS_OF_MONTH[month];
        }
        return mm;
    }

    /**
     * Mean number of wet days of each calendar month [d], January first: share of the days present times the mean
     * length of the month.
     *
     * @throws MissingRainException when a calendar month has no reading in any year
     */
    public double[] meanWetDaysByMonth() {
        int[] present = presentDaysByMonth();
        double[] days = new double[12];
        for (MonthTotal month : monthlyTotals) {
            days[month.month().getMonthValue() - 1] += month.wetDays();
        }
        for (int month = 0; month < 12; month++) {
            days[month] *= DAYS_OF_MONTH[month] / present[month];
        }
        return days;
    }

    private int[] presentDaysByMonth() {
        int[] present = new int[12];
        for (MonthTotal month : monthlyTotals) {
            present[month.month().getMonthValue() - 1] += month.presentDays();
        }
        for (int month = 0; month < 12; month++) {
            if (present[month] == 0) {
                throw new MissingRainException("the record (" + record.span() + ") has no reading in month "
                        + (month + 1) + " of any year");
            }
        }
        return present;
    }

    /** Every dry spell in order. A missing day ends a spell, and the spell is then not bounded. */
    public List<DrySpell> drySpells() {
        List<DrySpell> spells = new ArrayList<>();
        int start = -1;
        for (int day = 0; day <= record.days(); day++) {
            boolean dry = day < record.days() && !record.isMissing(day) && wetState(day) == 0;
            if (dry && start < 0) {
                start = day;
            } else if (!dry && start >= 0) {
                boolean bounded = isPresent(start - 1) && isPresent(day);
                spells.add(new DrySpell(record.date(start), day - start, bounded));
                start = -1;
            }
        }
        return List.copyOf(spells);
    }

    private boolean isPresent(int day) {
        return day >= 0 && day < record.days() && !record.isMissing(day);
    }

    /** The longest dry spell, the earliest of equal ones; empty when no day is dry. */
    public Optional<DrySpell> longestDrySpell() {
        return drySpells().stream().max(Comparator.comparingInt(DrySpell::days)
                .thenComparing(DrySpell::firstDay, Comparator.reverseOrder()));
    }

    /**
     * The least rain of any run of consecutive days, all of them present.
     *
     * @param days length of the run, at least 1
     * @return empty when the record has no such run
     */
    public Optional<WindowMinimum> minimumOver(int days) {
        if (days < 1) {
            throw new IllegalArgumentException("days is " + days + "; at least 1 is accepted");
        }
        // differences of running sums are exactly 0 over a dry run
        double[] before = new double[record.days() + 1];
        double leastMm = Double.POSITIVE_INFINITY;
        int least = -1;
        int run = 0;
        for (int day = 0; day < record.days(); day++) {
            before[day + 1] = before[day] + record.depthMmOr(day, 0);
            run = record.isMissing(day) ? 0 : run + 1;
            if (run >= days && before[day + 1] - before[day + 1 - days] < leastMm) {
                leastMm = before[day + 1] - before[day + 1 - days];
                least = day + 1 - days;
            }
        }
        if (least < 0) {
            return Optional.empty();
        }
        double depthMm = 0;
        for (int day = least; day < least + days; day++) {
            depthMm += record.depthMm(day);
        }
        return Optional.of(new WindowMinimum(days, record.date(least), depthMm));
    }

    /** The wettest day of each complete calendar year, in order, for a design intensity. */
    public List<DayDepth> annualMaxima() {
        List<DayDepth> maxima = new ArrayList<>();
        for (YearTotal year : completeYears()) {
            int first = record.indexOf(LocalDate.of(year.year(), 1, 1));
            int wettest = first;
            for (int day = first; day < first + year.presentDays(); day++) {
                wettest = record.depthMm(day) > record.depthMm(wettest) ? day : wettest;
            }
            maxima.add(new DayDepth(record.date(wettest), record.depthMm(wettest)));
        }
        return List.copyOf(maxima);
    }
}
