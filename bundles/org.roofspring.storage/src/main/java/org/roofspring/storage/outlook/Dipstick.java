package org.roofspring.storage.outlook;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;

/**
 * What a reading of the dipstick means on a given date: litres, and days.
 *
 * @param rows lowest first
 */
public record Dipstick(List<Row> rows) {

    private static final int MOST_ROWS = 1000;

    /**
     * One mark.
     *
     * @param heightM water above the floor [m]
     * @param volumeM3 in the gauged stage, dead volume included [m&sup3;]
     * @param withoutRain days left if no rain falls at all
     * @param cautious days left that one year in ten does not exceed
     * @param middle days left in the middle of the years
     * @param hopeful days left that nine years in ten do not exceed
     */
    public record Row(double heightM, double volumeM3, DaysLeft withoutRain, DaysLeft cautious, DaysLeft middle,
            DaysLeft hopeful) {
    }

    /** Copies the list. */
    public Dipstick {
        rows = List.copyOf(rows);
    }

    /**
     * Works the table out for the date of the question.
     *
     * @param question the system; the volume of the gauged stage is not used, the other stages hold what it names
     * @param gaugedStage index of the stage with the dipstick
     * @param gauge of that stage
     * @param stepM between two marks [m], such that there are at most 1000
     * @param cancelled polled while running
     * @throws CancellationException when cancelled
     */
    public static Dipstick of(OutlookQuestion question, int gaugedStage, TankGauge gauge, double stepM,
            BooleanSupplier cancelled) {
        GaugedStage stage = GaugedStage.of(question, gaugedStage);
        double fullM = gauge.heightM(stage.capacityM3());
        if (!(stepM > 0 && fullM / stepM <= MOST_ROWS)) {
            throw new IllegalArgumentException("stepM is " + stepM + " m; accepted is " + fullM / MOST_ROWS
                    + " m or more, the height when full over " + MOST_ROWS);
        }
        YearRuns years = new YearRuns(question, cancelled);
        YearRuns dry = new YearRuns(withoutRain(question), cancelled);
        List<Row> rows = new ArrayList<>();
        for (int mark = 0; mark * stepM <= fullM * (1 + 1e-12); mark++) {
            double heightM = mark * stepM;
            double volumeM3 = Math.min(stage.capacityM3(), gauge.volumeM3(heightM));
            double[] volumes = stage.volumes(volumeM3);
            int[] left = new int[years.years()];
            for (int year = 0; year < left.length; year++) {
                left[year] = years.run(year, volumes).daysLeft();
            }
            Arrays.sort(left);
            rows.add(new Row(heightM, volumeM3, days(dry.run(0, volumes).daysLeft(), question),
                    days(left[Shares.place(0.1, left.length)], question),
                    days(left[Shares.place(0.5, left.length)], question),
                    days(left[Shares.place(0.9, left.length)], question)));
        }
        return new Dipstick(rows);
    }

    /** The first year of the record without its rain. */
    private static OutlookQuestion withoutRain(OutlookQuestion question) {
        PastWeather weather = question.weather();
        PastWeather dry = new PastWeather(weather.firstDate(),
                weather.inflowM3().stream().map(series -> new double[series.length]).toList(),
                weather.evaporationMm());
        return new OutlookQuestion(question.system(), dry, question.demand(), question.watched(), question.today(),
                question.stageVolumeM3(), question.horizonDays());
    }

    private static DaysLeft days(int days, OutlookQuestion question) {
        return new DaysLeft(days, days == question.horizonDays());
    }
}
