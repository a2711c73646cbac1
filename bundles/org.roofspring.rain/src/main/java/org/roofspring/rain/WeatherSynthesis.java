package org.roofspring.rain;

import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import org.hipparchus.random.RandomDataGenerator;
import org.hipparchus.random.Well19937c;

/**
 * Invents daily rain that resembles a record, so that a short one can drive a long simulation: wet and dry days by a
 * first-order Markov chain, depths of wet days from a gamma distribution, each with its own figures for every
 * calendar month. Source: Richardson (1981), "Stochastic simulation of daily precipitation, temperature, and solar
 * radiation", Water Resources Research 17(1), from memory.
 *
 * <p>Such a chain forgets yesterday but one, so its years are too much alike and its droughts too short;
 * {@link SynthesisComparison} measures by how much. The rain it makes stands beside a record, never in its place.
 */
public final class WeatherSynthesis {
    /** A month with fewer wet days takes its shape from all months together; common practice, no source. */
    private static final int WET_DAYS_FOR_SHAPE = 10;
    /** Longest simulation [years]. */
    private static final int MOST_YEARS = 10_000;
    /** A wet day has at least this [mm], so that it is one. */
    private static final double LEAST_WET_MM = 1e-3;

    private final List<MonthWeather> months;
    private final String basis;

    private WeatherSynthesis(List<MonthWeather> months, String basis) {
        this.months = List.copyOf(months);
        this.basis = basis;
    }

    /**
     * Fits the twelve months to a record. The shape is by {@link GammaFit#greenwoodDurandShape}; pairs of days count
     * in the month of the second day.
     *
     * @throws MissingRainException when a calendar month has no reading in any year, or it never rained
     */
    public static WeatherSynthesis fit(RainRecord record) {
        MonthSums[] sums = MonthSums.of(record);
        MonthSums all = MonthSums.all(sums);
        if (all.wet == 0) {
            throw new MissingRainException("it never rained in the record (" + record.span()
                    + "), so no weather can be fitted to it");
        }
        List<MonthWeather> months = new ArrayList<>();
        for (MonthSums month : sums) {
            if (month.days == 0) {
                throw new MissingRainException("the record (" + record.span() + ") has no reading in month "
                        + (months.size() + 1) + " of any year, so no weather can be fitted to it");
            }
            MonthSums shaped = month.wet >= WET_DAYS_FOR_SHAPE ? month : all;
            double shape = GammaFit.greenwoodDurandShape(shaped.logDeficit());
            double meanMm = month.wet > 0 ? month.sumMm / month.wet : all.sumMm / all.wet;
            months.add(new MonthWeather(month.p01(), month.p11(), GammaFit.ofMean(shape, meanMm)));
        }
        return new WeatherSynthesis(months, "fitted to the record " + record.span());
    }

    /**
     * From monthly normals with wet-day counts, where there is no record at all: the chances follow from the share f
     * of wet days, P01 = 0.75 f and P11 = 0.25 + P01, and the gamma scale from the mean depth m of a wet day,
     * b = 1.83 m - 2.16, but a is at most 1. Source: Geng, Penning de Vries and Supit (1986), "A simple method for
     * generating daily rainfall data", Agricultural and Forest Meteorology 36, from memory.
     *
     * @throws MissingRainException when the normals have no wet-day counts
     */
    public static WeatherSynthesis fromNormals(MonthlyNormals normals) {
        if (normals.wetDays().isEmpty()) {
            throw new MissingRainException("monthly normals alone do not say how often it rains; wet-day counts or "
                    + "the record of a donor station are needed");
        }
        List<MonthWeather> months = new ArrayList<>();
        for (Month month : Month.values()) {
            double wetDays = normals.wetDays(month).orElseThrow();
            double ratio = Math.min(1, wetDays / RainStatistics.DAYS_OF_MONTH[month.ordinal()]);
            double meanMm = wetDays > 0 ? normals.depthMm(month) / wetDays : 0;
            double p01 = 0.75 * ratio;
            months.add(weather(p01, ratio == 0 ? 0 : 0.25 + p01, 1.83 * meanMm - 2.16, meanMm));
        }
        return new WeatherSynthesis(months, "from monthly normals with wet-day counts and typical persistence");
    }

    private static MonthWeather weather(double p01, double p11, double scaleMm, double meanMm) {
        if (meanMm <= 0) {
            // wet days without rain are dry days
            return new MonthWeather(0, 0, new GammaFit(1, 1));
        }
        double shape = scaleMm > meanMm ? meanMm / scaleMm : 1;
        return new MonthWeather(p01, Math.min(1, p11), GammaFit.ofMean(shape, meanMm));
    }

    /**
     * From monthly normals and the record of a donor station: how often it rains, how days follow on, and the shape
     * of the amounts are the donor's; depths are scaled month by month to the normals.
     *
     * @param donorName named in the statement
     * @throws MissingRainException when the donor cannot be fitted, or has no rain in a month in which the normals
     *                              have some
     */
    public static WeatherSynthesis fromNormals(MonthlyNormals normals, RainRecord donor, String donorName) {
        WeatherSynthesis fitted = fit(donor);
        List<MonthWeather> months = new ArrayList<>();
        for (Month month : Month.values()) {
            MonthWeather weather = fitted.month(month);
            double wantedMm = normals.depthMm(month);
            double dailyMm = wantedMm / RainStatistics.DAYS_OF_MONTH[month.ordinal()];
            double donorMm = weather.meanDailyMm();
            if (wantedMm > 0 && donorMm == 0) {
                throw new MissingRainException("the donor record " + donorName + " has no rain in month "
                        + month.getValue() + ", but the normals have " + wantedMm + " mm");
            }
            months.add(wantedMm == 0 ? new MonthWeather(0, 0, weather.amount()) : new MonthWeather(weather.p01(),
                    weather.p11(), new GammaFit(weather.amount().shape(),
                            weather.amount().scaleMm() * dailyMm / donorMm)));
        }
        return new WeatherSynthesis(months, "from monthly normals, with the wet days of the donor record "
                + donorName + " (" + donor.span() + ")");
    }

    /** Figures of a month. */
    public MonthWeather month(Month month) {
        return months.get(month.getValue() - 1);
    }

    /** What it was fitted to, for a report. */
    public String basis() {
        return basis;
    }

    /**
     * Invents rain from a first day on.
     *
     * @param firstDay  first day
     * @param days      number of days, at least 1 and at most 10,000 years
     * @param seed      the same seed makes the same rain
     * @param cancelled polled once a simulated year
     * @return days marked {@link DayMark#SYNTHETIC}
     */
    public RainRecord generate(LocalDate firstDay, int days, long seed, BooleanSupplier cancelled) {
        if (days < 1 || days > MOST_YEARS * 366) {
            throw new IllegalArgumentException("days is " + days + "; 1 to " + MOST_YEARS * 366 + " is accepted");
        }
        RandomDataGenerator random = RandomDataGenerator.of(new Well19937c(seed));
        double[] depthMm = new double[days];
        boolean wet = random.nextUniform(0, 1) < month(firstDay.getMonth()).wetRatio();
        LocalDate monthStart = firstDay.withDayOfMonth(1);
        int day = 0;
        while (day < days) {
            if (monthStart.getMonth() == Month.JANUARY && cancelled.getAsBoolean()) {
                throw new CancellationException("the weather synthesis was cancelled");
            }
            MonthWeather weather = month(monthStart.getMonth());
            monthStart = monthStart.plusMonths(1);
            long end = Math.min(days, monthStart.toEpochDay() - firstDay.toEpochDay());
            for (; day < end; day++) {
                wet = random.nextUniform(0, 1) < (wet ? weather.p11() : weather.p01());
                if (wet) {
                    double mm = random.nextGamma(weather.amount().shape(), weather.amount().scaleMm());
                    depthMm[day] = Math.min(Math.max(mm, LEAST_WET_MM), RainRecord.MAX_DEPTH_MM);
                }
            }
        }
        return RainRecord.of(firstDay, depthMm, DayMark.SYNTHETIC);
    }

    /** Sums over the days of one calendar month in all years. */
    private static final class MonthSums {
        int days;
        int wet;
        double sumMm;
        double sumLog;
        final int[][] pairs = new int[2][2];

        static MonthSums[] of(RainRecord record) {
            MonthSums[] sums = new MonthSums[12];
            for (int month = 0; month < 12; month++) {
                sums[month] = new MonthSums();
            }
            LocalDate date = record.firstDay();
            for (int day = 0; day < record.days(); day++, date = date.plusDays(1)) {
                if (record.isMissing(day)) {
                    continue;
                }
                MonthSums month = sums[date.getMonthValue() - 1];
                double mm = record.depthMm(day);
                month.days++;
                if (mm > 0) {
                    month.wet++;
                    month.sumMm += mm;
                    month.sumLog += Math.log(mm);
                }
                if (day > 0 && !record.isMissing(day - 1)) {
                    month.pairs[record.depthMm(day - 1) > 0 ? 1 : 0][mm > 0 ? 1 : 0]++;
                }
            }
            return sums;
        }

        static MonthSums all(MonthSums[] months) {
            MonthSums all = new MonthSums();
            for (MonthSums month : months) {
                all.wet += month.wet;
                all.sumMm += month.sumMm;
                all.sumLog += month.sumLog;
            }
            return all;
        }

        /** Y = ln(mean) - mean(ln x); rounding must not make it negative. */
        double logDeficit() {
            return Math.max(0, Math.log(sumMm / wet) - sumLog / wet);
        }

        /** After a dry day; where none was seen, the share of wet days. */
        double p01() {
            int dry = pairs[0][0] + pairs[0][1];
            return dry == 0 ? (double) wet / days : (double) pairs[0][1] / dry;
        }

        /** After a wet day; where none was seen, as after a dry one. */
        double p11() {
            int wetBefore = pairs[1][0] + pairs[1][1];
            return wetBefore == 0 ? p01() : (double) pairs[1][1] / wetBefore;
        }
    }
}
