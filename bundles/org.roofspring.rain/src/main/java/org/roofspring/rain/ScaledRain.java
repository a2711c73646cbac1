package org.roofspring.rain;

import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A distant or gridded series scaled to the monthly normals of the site, where no station is near.
 *
 * @param record  days with a depth are marked {@link DayMark#SCALED}; missing days stay missing
 * @param factors ratio by which each month was multiplied, January first
 */
public record ScaledRain(RainRecord record, List<Double> factors) {
    /** Beyond this ratio the series hardly stands for the site; common practice, no source. */
    private static final double LARGE_FACTOR = 2;

    public ScaledRain {
        factors = List.copyOf(factors);
    }

    /**
     * Multiplies every day by the ratio of the normal of its month to the mean of that month in the series.
     *
     * @throws MissingRainException when a month of the calendar has no reading in the series, or has no rain there
     *                              while the normals have some
     */
    public static ScaledRain scaledTo(RainRecord distant, MonthlyNormals normals) {
        double[] meansMm = RainStatistics.of(distant).monthlyMeansMm();
        List<Double> factors = new ArrayList<>();
        for (Month month : Month.values()) {
            double wantedMm = normals.depthMm(month);
            double meanMm = meansMm[month.ordinal()];
            if (wantedMm > 0 && meanMm == 0) {
                throw new MissingRainException("the series has no rain in month " + month.getValue()
                        + ", so it cannot be scaled to the normal of " + wantedMm + " mm");
            }
            factors.add(wantedMm == 0 ? 0 : wantedMm / meanMm);
        }
        return new ScaledRain(scaled(distant, factors), factors);
    }

    /** Each day times the factor of its month. */
    static RainRecord scaled(RainRecord record, List<Double> factors) {
        double[] depthMm = new double[record.days()];
        DayMark[] marks = new DayMark[record.days()];
        for (int day = 0; day < depthMm.length; day++) {
            double factor = factors.get(record.date(day).getMonthValue() - 1);
            depthMm[day] = record.isMissing(day) ? Double.NaN : record.depthMm(day) * factor;
            marks[day] = record.isMissing(day) || factor == 1 ? record.mark(day) : DayMark.SCALED;
            if (depthMm[day] > RainRecord.MAX_DEPTH_MM) {
                throw new IllegalArgumentException("the factor of month " + record.date(day).getMonthValue() + " is "
                        + factor + ", which makes " + depthMm[day] + " mm of the rain of " + record.date(day) + "; "
                        + "a smaller one is accepted");
            }
        }
        return RainRecord.of(record.firstDay(), depthMm, marks);
    }

    /** What was done and what it does not do, for a report. */
    public String statement() {
        double least = factors.stream().mapToDouble(Double::doubleValue).min().orElseThrow();
        double most = factors.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
        String text = String.format(Locale.ROOT, "Rain of another place, scaled month by month to local normals by "
                + "factors from %.2f to %.2f; wet days and dry spells are those of the other place.", least, most);
        return most > LARGE_FACTOR || least < 1 / LARGE_FACTOR
                ? text + " A factor beyond two either way means that the places differ much." : text;
    }
}
