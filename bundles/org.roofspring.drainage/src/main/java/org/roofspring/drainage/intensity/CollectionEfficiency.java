package org.roofspring.drainage.intensity;

import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import org.roofspring.drainage.internal.Require;

/**
 * The share of a record's rain that gets past a gutter, or any other part of limited capacity, on its way to the tank.
 * It is found from every day of the daily record, spread within the day as stated, not from yearly maxima.
 *
 * @param limitMmPerH intensity that the limiting part just takes
 * @param days        of the record that have a depth
 * @param rainMm      on those days
 * @param caughtMm    of it
 */
public record CollectionEfficiency(double limitMmPerH, int days, double rainMm, double caughtMm) {
    private static final double DAYS_PER_YEAR = 365.2425;
    private static final double MM_PER_M = 1000;

    /**
     * The intensity [mm/h] that a part just takes.
     *
     * @param capacityM3PerS of the part, from 0 to 100 m3/s
     * @param areaM2         effective area that drains to it, from 0.01 to 1e6 m2
     * @param runoffRatio    share that runs off, above 0.01, up to 1
     */
    public static double limitMmPerH(double capacityM3PerS, double areaM2, double runoffRatio) {
        Require.range("capacityM3PerS", capacityM3PerS, 0, 100, "a flow from 0 to 100 m3/s");
        Require.range("areaM2", areaM2, 0.01, 1e6, "a roof area from 0.01 to 1000000 m2");
        Require.range("runoffRatio", runoffRatio, 0.01, 1, "a share from 0.01 to 1");
        return capacityM3PerS / (areaM2 * runoffRatio) * MM_PER_M * 3600;
    }

    /**
     * What is caught of each day's rain [mm].
     *
     * @param dailyMm     depth of each day, from 0 to 5000 mm; NaN where none was read, and NaN in the answer
     * @param limitMmPerH intensity that is taken, from 0 to 1e6 mm/h
     * @param spread      of rain within a day
     * @param cancelled   polled now and then
     * @throws CancellationException when cancelled
     */
    public static double[] caughtDepthsMm(double[] dailyMm, double limitMmPerH, WithinDayRain spread,
            BooleanSupplier cancelled) {
        Require.range("limitMmPerH", limitMmPerH, 0, 1e6, "an intensity from 0 to 1000000 mm/h");
        double[] caught = new double[dailyMm.length];
        for (int day = 0; day < dailyMm.length; day++) {
            if (day % 1024 == 0 && cancelled.getAsBoolean()) {
                throw new CancellationException();
            }
            double depth = dailyMm[day];
            caught[day] = Double.isNaN(depth) ? Double.NaN : depth - spread.excessMm(depth, limitMmPerH);
        }
        return caught;
    }

    /** The share over a whole record; arguments as in {@link #caughtDepthsMm}. */
    public static CollectionEfficiency of(double[] dailyMm, double limitMmPerH, WithinDayRain spread,
            BooleanSupplier cancelled) {
        double[] caughtDepths = caughtDepthsMm(dailyMm, limitMmPerH, spread, cancelled);
        int days = 0;
        double rain = 0;
        double caught = 0;
        for (int day = 0; day < dailyMm.length; day++) {
            if (!Double.isNaN(dailyMm[day])) {
                days++;
                rain += dailyMm[day];
                caught += caughtDepths[day];
            }
        }
        return new CollectionEfficiency(limitMmPerH, days, rain, caught);
    }

    /** Share of the rain that is caught; 1 for a record without rain, of which nothing is lost. */
    public double ratio() {
        return rainMm == 0 ? 1 : caughtMm / rainMm;
    }

    /**
     * Water lost in a mean year [m3].
     *
     * @param planAreaM2  of the roof, from 0 to 1e6 m2
     * @param runoffRatio share that runs off over the years, from 0 to 1
     */
    public double lostM3PerYear(double planAreaM2, double runoffRatio) {
        Require.range("planAreaM2", planAreaM2, 0, 1e6, "a roof area from 0 to 1000000 m2");
        Require.share("runoffRatio", runoffRatio);
        return days == 0 ? 0
                : (rainMm - caughtMm) / MM_PER_M * planAreaM2 * runoffRatio * (DAYS_PER_YEAR / days);
    }
}
