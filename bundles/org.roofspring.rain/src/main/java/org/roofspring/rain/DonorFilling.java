package org.roofspring.rain;

import java.time.LocalDate;
import java.time.Month;
import java.time.format.TextStyle;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.Locale;
import java.util.Objects;

/**
 * A record whose missing days are taken from another station's, multiplied month by month by the ratio of both stations'
 * rain on the days that both have read (normal-ratio method: J. L. H. Paulhus and M. A. Kohler 1952, Interpolation of
 * missing precipitation records, Monthly Weather Review 80, from memory; here with the days in common for normals).
 *
 * @param record     without missing days; filled days are marked {@link DayMark#FILLED}
 * @param donorName  of the other station
 * @param ratios     of this station's rain to the donor's, January first; NaN for a month in which nothing was filled
 * @param filledDays how many days
 * @param addedMm    rain added by filling, in all [mm]
 */
public record DonorFilling(RainRecord record, String donorName, double[] ratios, int filledDays, double addedMm) {
    /** Days that both stations must have read in a calendar month, over all years, before it can be filled. */
    public static final int LEAST_COMMON_DAYS = 60;

    /**
     * Fills the missing days of a record.
     *
     * @throws MissingRainException naming the first day that cannot be filled: the donor has no reading on it, or both
     *                              have too few days in common in its month, or the donor never had rain on those
     */
    public static DonorFilling fill(RainRecord record, RainRecord donor, String donorName) {
        Objects.requireNonNull(donorName, "donorName");
        Months months = new Months(record, donor);
        double[] depthMm = new double[record.days()];
        DayMark[] marks = new DayMark[record.days()];
        double[] ratios = new double[12];
        Arrays.fill(ratios, Double.NaN);
        int filled = 0;
        double addedMm = 0;
        for (int day = 0; day < depthMm.length; day++) {
            if (!record.isMissing(day)) {
                depthMm[day] = record.depthMm(day);
                marks[day] = record.mark(day);
                continue;
            }
            LocalDate date = record.date(day);
            long other = place(donor, date);
            if (other < 0 || donor.isMissing((int) other)) {
                throw new MissingRainException("the rain of " + date + " cannot be filled: " + donorName
                        + " has no reading of that day either");
            }
            int month = date.getMonthValue() - 1;
            ratios[month] = months.ratio(date.getMonth(), donorName);
            depthMm[day] = donor.depthMm((int) other) * ratios[month];
            marks[day] = DayMark.FILLED;
            filled++;
            addedMm += depthMm[day];
        }
        return new DonorFilling(RainRecord.of(record.firstDay(), depthMm, marks), donorName, ratios, filled, addedMm);
    }

    /** Index of a date in a record, or less than 0 where it lies outside. */
    private static long place(RainRecord record, LocalDate date) {
        long place = ChronoUnit.DAYS.between(record.firstDay(), date);
        return place < record.days() ? place : -1;
    }

    /** One sentence for a report. */
    public String statement() {
        if (filledDays == 0) {
            return "No day is missing.";
        }
        return String.format(Locale.ROOT, "%d of %d days (%.1f %%) are filled, %.1f mm in all: missing days get the depth "
                + "read at %s, scaled by the ratio of both stations' rain in that month of the year.", filledDays,
                record.days(), 100.0 * filledDays / record.days(), addedMm, donorName);
    }

    /** A copy. */
    @Override
    public double[] ratios() {
        return ratios.clone();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof DonorFilling filling && record.equals(filling.record)
                && donorName.equals(filling.donorName) && Arrays.equals(ratios, filling.ratios)
                && filledDays == filling.filledDays && addedMm == filling.addedMm;
    }

    @Override
    public int hashCode() {
        return Objects.hash(record, donorName, filledDays);
    }

    /** Rain of both stations on the days that both have read. */
    private static final class Months {
        private final double[] ownMm = new double[12];
        private final double[] donorMm = new double[12];
        private final int[] days = new int[12];

        Months(RainRecord record, RainRecord donor) {
            for (int day = 0; day < record.days(); day++) {
                long other = place(donor, record.date(day));
                if (other >= 0 && !record.isMissing(day) && !donor.isMissing((int) other)) {
                    int month = record.date(day).getMonthValue() - 1;
                    ownMm[month] += record.depthMm(day);
                    donorMm[month] += donor.depthMm((int) other);
                    days[month]++;
                }
            }
        }

        double ratio(Month month, String donorName) {
            int i = month.ordinal();
            String name = month.getDisplayName(TextStyle.FULL, Locale.ENGLISH);
            if (days[i] < LEAST_COMMON_DAYS) {
                throw new MissingRainException("missing days of " + name + " cannot be filled from " + donorName + ": both have "
                        + days[i] + " days of that month in common, and " + LEAST_COMMON_DAYS + " are needed");
            }
            if (donorMm[i] == 0 && ownMm[i] > 0) {
                throw new MissingRainException("missing days of " + name + " cannot be filled from " + donorName
                        + ": it had no rain in that month on the days in common, while this station had some");
            }
            return donorMm[i] == 0 ? 0 : ownMm[i] / donorMm[i];
        }
    }
}
