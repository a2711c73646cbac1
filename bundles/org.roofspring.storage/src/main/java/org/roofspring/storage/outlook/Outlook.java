package org.roofspring.storage.outlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;

/** Every year of the record run forward from today: when the water ends, and the fan of levels on the way. */
public final class Outlook {

    private final LocalDate today;
    private final List<YearRun> runs;
    private final int[] sortedDaysLeft;
    private final double[][] sortedUsableM3;

    private Outlook(LocalDate today, List<YearRun> runs, double[][] usableM3) {
        this.today = today;
        this.runs = List.copyOf(runs);
        sortedDaysLeft = runs.stream().mapToInt(YearRun::daysLeft).sorted().toArray();
        sortedUsableM3 = new double[usableM3[0].length][runs.size()];
        for (int day = 0; day < sortedUsableM3.length; day++) {
            for (int year = 0; year < usableM3.length; year++) {
                sortedUsableM3[day][year] = usableM3[year][day];
            }
            Arrays.sort(sortedUsableM3[day]);
        }
    }

    /**
     * Runs every year.
     *
     * @throws IllegalArgumentException when the parts of the question do not fit together or a value is out of range
     * @throws CancellationException when cancelled
     */
    public static Outlook of(OutlookQuestion question, BooleanSupplier cancelled) {
        YearRuns years = new YearRuns(question, cancelled);
        double[][] usableM3 = new double[years.years()][question.horizonDays()];
        List<YearRun> runs = new ArrayList<>();
        for (int year = 0; year < years.years(); year++) {
            runs.add(years.run(year, question.stageVolumeM3(), usableM3[year]));
        }
        return new Outlook(question.today(), runs, usableM3);
    }

    /** First day of the look ahead. */
    public LocalDate today() {
        return today;
    }

    /** Days looked ahead [d]. */
    public int horizonDays() {
        return sortedUsableM3.length;
    }

    /** Year by year, in the order of the record. */
    public List<YearRun> runs() {
        return runs;
    }

    /**
     * Years that went short on or before a day.
     *
     * @param days days from today, 1 is today itself [d], 0 to the look ahead
     */
    public Chance chanceDryWithin(int days) {
        if (days < 0 || days > horizonDays()) {
            throw new IllegalArgumentException("days is " + days + "; accepted is 0 to " + horizonDays());
        }
        return new Chance((int) runs.stream().filter(run -> run.dry() && run.daysLeft() < days).count(), runs.size());
    }

    /** Years that went short within the look ahead. */
    public Chance chanceDry() {
        return chanceDryWithin(horizonDays());
    }

    /**
     * Days of water left that the share of years does not exceed.
     *
     * @param yearsRatio share of the years [-], 0 to 1: 0.1 is cautious, one year in ten has no more
     */
    public DaysLeft daysLeft(double yearsRatio) {
        Shares.check(yearsRatio, "yearsRatio");
        int days = sortedDaysLeft[Shares.place(yearsRatio, sortedDaysLeft.length)];
        return new DaysLeft(days, days == horizonDays());
    }

    /**
     * Volume that can be drawn, as each day ends, that the share of years does not exceed [m&sup3;]; day by day, so not
     * the course of any one year.
     *
     * @param yearsRatio share of the years [-], 0 to 1
     */
    public double[] fanM3(double yearsRatio) {
        Shares.check(yearsRatio, "yearsRatio");
        int place = Shares.place(yearsRatio, runs.size());
        return Arrays.stream(sortedUsableM3).mapToDouble(years -> years[place]).toArray();
    }
}
