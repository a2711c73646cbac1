package org.roofspring.drainage.intensity;

import java.util.List;
import org.roofspring.drainage.Source;
import org.roofspring.drainage.internal.Require;

/**
 * What share of the depth of the wettest 24 hours falls in the wettest shorter time, for storms of the same return
 * period. Between the points a power of the duration; below the shortest none is given.
 *
 * @param points from the shortest duration to 24 hours, where the ratio is 1; with the duration the ratio grows, and
 *               the mean intensity falls
 * @param source of the ratios
 */
public record DurationRatios(List<Point> points, Source source) {
    /** A day. */
    public static final double DAY_S = 86400;

    /**
     * One duration.
     *
     * @param durationS above 0, up to a day
     * @param ratio     of the depth to that of 24 hours, above 0, up to 1
     */
    public record Point(double durationS, double ratio) {
        public Point {
            Require.range("durationS", durationS, 60, DAY_S, "a duration from 1 minute to 24 hours");
            Require.range("ratio", ratio, 1e-6, 1, "a share from 0.000001 to 1");
        }
    }

    public DurationRatios {
        points = List.copyOf(Require.given("points", points));
        Require.given("source", source);
        if (points.size() < 2 || points.getLast().durationS() != DAY_S || points.getLast().ratio() != 1) {
            throw new IllegalArgumentException("points is " + points
                    + "; at least two are needed, the last for 24 hours with the ratio 1");
        }
        for (int i = 1; i < points.size(); i++) {
            Point shorter = points.get(i - 1);
            Point longer = points.get(i);
            if (!(longer.durationS() > shorter.durationS() && longer.ratio() > shorter.ratio()
                    && longer.ratio() / longer.durationS() < shorter.ratio() / shorter.durationS())) {
                throw new IllegalArgumentException("points has " + longer + " after " + shorter
                        + "; with the duration the depth must grow and the mean intensity must fall");
            }
        }
    }

    /**
     * The one-third power of the duration, from 5 minutes to 24 hours, as used for short storms in India and, as a
     * power of intensity, in Japan and Indonesia.
     */
    public static DurationRatios thirdPower() {
        return new DurationRatios(List.of(new Point(300, Math.cbrt(300 / DAY_S)), new Point(DAY_S, 1)),
                Source.fromMemory("the one-third rule of the India Meteorological Department, the same as the Mononobe"
                        + " formula"));
    }

    /** Ratios in use in Brazil, chained from 5 minutes through half an hour and an hour to 24 hours. */
    public static DurationRatios brazilian() {
        double hour = 0.42;
        double halfHour = 0.74 * hour;
        return new DurationRatios(List.of(new Point(300, 0.34 * halfHour), new Point(600, 0.54 * halfHour),
                new Point(900, 0.70 * halfHour), new Point(1200, 0.81 * halfHour), new Point(1500, 0.91 * halfHour),
                new Point(1800, halfHour), new Point(3600, hour), new Point(6 * 3600, 0.72), new Point(8 * 3600, 0.78),
                new Point(10 * 3600, 0.82), new Point(12 * 3600, 0.85), new Point(DAY_S, 1)),
                Source.fromMemory("DAEE/CETESB, Drenagem urbana: manual de projeto, São Paulo 1979"));
    }

    /**
     * Share of the 24-hour depth that falls in the wettest part of a given length.
     *
     * @param durationS from the shortest point to 24 hours
     */
    public double ratio(double durationS) {
        double shortest = points.getFirst().durationS();
        Require.range("durationS", durationS, shortest, DAY_S,
                "a duration from " + shortest + " s, the shortest with a ratio, to 86400 s");
        int above = 1;
        while (points.get(above).durationS() < durationS) {
            above++;
        }
        Point from = points.get(above - 1);
        return from.ratio() * Math.pow(durationS / from.durationS(), exponent(above));
    }

    /** The power of the duration between the point before {@code above} and that point. */
    double exponent(int above) {
        Point from = points.get(above - 1);
        Point to = points.get(above);
        return Math.log(to.ratio() / from.ratio()) / Math.log(to.durationS() / from.durationS());
    }
}
