package org.roofspring.rain;

import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;

/**
 * A what-if of a harsher or milder climate, applied to a record: depths scaled by season, and a dry season that
 * begins earlier or ends later, in which no rain falls. Not a forecast; the ratios are the user's.
 *
 * @param depthRatios ratio for the depth of each month, January first, 0 to 5
 * @param drySeason   the dry season that is lengthened; may be null when the days are 0
 * @param earlierDays days by which it begins earlier [d], 0 to 120
 * @param laterDays   days by which it ends later [d], 0 to 120
 */
public record ClimateStress(List<Double> depthRatios, DrySeason drySeason, int earlierDays, int laterDays) {
    /** No change. */
    public static final ClimateStress NONE = new ClimateStress(Collections.nCopies(12, 1.0), null, 0, 0);
    private static final double LARGEST_RATIO = 5;
    private static final int MOST_DAYS = 120;

    public ClimateStress {
        depthRatios = List.copyOf(depthRatios);
        if (depthRatios.size() != 12) {
            throw new IllegalArgumentException("depthRatios has " + depthRatios.size() + " months; 12 are accepted");
        }
        for (double ratio : depthRatios) {
            if (!(ratio >= 0 && ratio <= LARGEST_RATIO)) {
                throw new IllegalArgumentException("depthRatios has " + ratio + "; 0 to 5 is accepted");
            }
        }
        requireDays("earlierDays", earlierDays);
        requireDays("laterDays", laterDays);
        if (earlierDays + laterDays > 0) {
            Objects.requireNonNull(drySeason, "drySeason is null; the season to lengthen is accepted");
        }
    }

    private static void requireDays(String name, int days) {
        if (days < 0 || days > MOST_DAYS) {
            throw new IllegalArgumentException(name + " is " + days + "; 0 to 120 days are accepted");
        }
    }

    /** The same with other depths in some months. */
    public ClimateStress withDepthRatio(Set<Month> months, double ratio) {
        List<Double> ratios = new ArrayList<>(depthRatios);
        months.forEach(month -> ratios.set(month.ordinal(), ratio));
        return new ClimateStress(ratios, drySeason, earlierDays, laterDays);
    }

    /** The same with a longer dry season. */
    public ClimateStress withLongerDrySeason(DrySeason season, int earlier, int later) {
        return new ClimateStress(depthRatios, season, earlier, later);
    }

    /**
     * A record under this stress. Days whose depth is changed are marked {@link DayMark#SCALED}; missing days stay
     * missing.
     */
    public RainRecord applyTo(RainRecord record) {
        RainRecord scaled = ScaledRain.scaled(record, depthRatios);
        if (earlierDays + laterDays == 0) {
            return scaled;
        }
        double[] depthMm = new double[record.days()];
        DayMark[] marks = new DayMark[record.days()];
        for (int day = 0; day < depthMm.length; day++) {
            boolean dried = !record.isMissing(day) && isDried(record.date(day));
            depthMm[day] = dried ? 0 : scaled.depthMmOr(day, Double.NaN);
            marks[day] = dried ? DayMark.SCALED : scaled.mark(day);
        }
        return RainRecord.of(record.firstDay(), depthMm, marks);
    }

    /** Whether a date lies in the days by which the dry season is longer. */
    private boolean isDried(LocalDate date) {
        LocalDate begin = LocalDate.of(date.getYear(), drySeason.first(), 1);
        begin = begin.isAfter(date) ? begin : begin.plusYears(1);
        LocalDate end = LocalDate.of(date.getYear(), drySeason.last(), 1).plusMonths(1);
        end = end.isAfter(date) ? end.minusYears(1) : end;
        long untilDrySeason = begin.toEpochDay() - date.toEpochDay();
        long sinceDrySeason = date.toEpochDay() - end.toEpochDay();
        boolean inDrySeason = drySeason.months().contains(date.getMonth());
        return !inDrySeason && (untilDrySeason <= earlierDays || sinceDrySeason < laterDays);
    }

    /** What is changed, for a report. */
    public String statement() {
        List<String> parts = new ArrayList<>();
        double least = Collections.min(depthRatios);
        double most = Collections.max(depthRatios);
        if (least != 1 || most != 1) {
            parts.add(least == most ? String.format(Locale.ROOT, "depths times %.2f", least)
                    : String.format(Locale.ROOT, "depths times %.2f to %.2f by month", least, most));
        }
        if (earlierDays > 0) {
            parts.add("the dry season begins " + earlierDays + " days earlier");
        }
        if (laterDays > 0) {
            parts.add("the dry season ends " + laterDays + " days later");
        }
        return parts.isEmpty() ? "No climate stress." : "What if: " + String.join(", ", parts)
                + ". Rain that would have fallen then is lost.";
    }
}
