package org.roofspring.rain;

import java.time.Month;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Mean rain of the twelve calendar months, perhaps with the mean number of wet days.
 *
 * @param depthMm mean rain of each month [mm], January first, 0 to 30 times {@link RainRecord#MAX_DEPTH_MM}
 * @param wetDays mean wet days of each month [d], 0 to 31; empty list where not known
 */
public record MonthlyNormals(List<Double> depthMm, List<Double> wetDays) {
    private static final double MAX_MONTH_MM = 30 * RainRecord.MAX_DEPTH_MM;

    public MonthlyNormals {
        depthMm = List.copyOf(depthMm);
        wetDays = List.copyOf(wetDays);
        requireTwelve("depthMm", depthMm, MAX_MONTH_MM);
        if (!wetDays.isEmpty()) {
            requireTwelve("wetDays", wetDays, 31);
            for (int month = 0; month < 12; month++) {
                if (wetDays.get(month) > Month.of(month + 1).maxLength()) {
                    throw new IllegalArgumentException("wetDays of month " + (month + 1) + " is "
                            + wetDays.get(month) + "; 0 to " + Month.of(month + 1).maxLength() + " is accepted");
                }
                if (wetDays.get(month) == 0 && depthMm.get(month) > 0) {
                    throw new IllegalArgumentException("wetDays of month " + (month + 1) + " is 0 but depthMm is "
                            + depthMm.get(month) + "; rain needs wet days");
                }
            }
        }
    }

    private static void requireTwelve(String name, List<Double> values, double most) {
        if (values.size() != 12) {
            throw new IllegalArgumentException(name + " has " + values.size() + " months; 12 are accepted");
        }
        for (int month = 0; month < 12; month++) {
            double value = values.get(month);
            if (!(value >= 0 && value <= most)) {
                throw new IllegalArgumentException(name + " of month " + (month + 1) + " is " + value + "; 0 to "
                        + most + " is accepted");
            }
        }
    }

    /**
     * The monthly means of a record, with its wet days.
     *
     * @throws MissingRainException when a calendar month has no reading in any year
     */
    public static MonthlyNormals of(RainRecord record) {
        RainStatistics statistics = RainStatistics.of(record);
        return new MonthlyNormals(Arrays.stream(statistics.monthlyMeansMm()).boxed().toList(),
                Arrays.stream(statistics.meanWetDaysByMonth()).boxed().toList());
    }

    /** Mean rain of a month [mm]. */
    public double depthMm(Month month) {
        return depthMm.get(month.getValue() - 1);
    }

    /** Mean wet days of a month [d]; empty where not known. */
    public Optional<Double> wetDays(Month month) {
        return wetDays.isEmpty() ? Optional.empty() : Optional.of(wetDays.get(month.getValue() - 1));
    }

    /** Mean rain of a year [mm]. */
    public double annualMm() {
        return depthMm.stream().mapToDouble(Double::doubleValue).sum();
    }
}
