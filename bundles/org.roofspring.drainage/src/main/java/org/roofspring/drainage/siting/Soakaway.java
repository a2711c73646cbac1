package org.roofspring.drainage.siting;

import java.util.List;
import org.roofspring.drainage.Source;
import org.roofspring.drainage.intensity.IntensityRelation;
import org.roofspring.drainage.internal.Require;

/**
 * A soakaway pit for overflow and tap drains. For a storm of each duration what comes in less what soaks away must fit
 * in the pit; water soaks away through the sides only, taken half wet, because the bottom silts up
 * ({@code S = I - O}, {@code O = a50 f D}; BRE Digest 365, Soakaway design, from memory).
 *
 * @param lengthM           inside, from 0.2 to 100 m
 * @param widthM            inside, from 0.2 to 100 m
 * @param depthM            below the incoming pipe, from 0.2 to 20 m
 * @param voidRatio         share of the pit that water can fill: 1 when hollow, about 0.3 in rubble, from 0.05 to 1
 * @param infiltrationMPerS of the soil, found by a trial pit, from 1e-9 to 0.01 m/s
 */
public record Soakaway(double lengthM, double widthM, double depthM, double voidRatio, double infiltrationMPerS) {
    /** Time in which a full pit should be half empty again [s]. */
    public static final double HALF_EMPTY_S = 86400;
    /** Distance to keep from any foundation [m]. */
    public static final double FOUNDATION_DISTANCE_M = 5;
    /** Source of {@link #HALF_EMPTY_S} and {@link #FOUNDATION_DISTANCE_M}. */
    public static final Source SOURCE = Source.fromMemory(
            "BRE Digest 365, Soakaway design, and UK Approved Document H3");
    /** Durations that are tried unless others are given [s]: 5 minutes to 48 hours. */
    public static final List<Double> DURATIONS_S = List.of(300.0, 600.0, 900.0, 1800.0, 3600.0, 7200.0, 14400.0,
            21600.0, 36000.0, 86400.0, 172800.0);

    /**
     * What the worst storm asks of a pit.
     *
     * @param durationS  of the storm that needs most room
     * @param inflowM3   in that time
     * @param outflowM3  soaked away in that time
     * @param neededM3   room for the rest
     * @param roomM3     of the pit
     * @param halfEmptyS time in which the needed volume soaks half away
     */
    public record Check(double durationS, double inflowM3, double outflowM3, double neededM3, double roomM3,
            double halfEmptyS) {
        /** Needed room over the pit's. */
        public double utilisation() {
            return neededM3 / roomM3;
        }

        /** Whether the pit holds the storm and is ready for the next within a day. */
        public boolean suffices() {
            return neededM3 <= roomM3 && halfEmptyS <= HALF_EMPTY_S;
        }
    }

    /**
     * A storm.
     *
     * @param durationS from 60 to 604800 s
     * @param depthMm   from 0 to 100000 mm
     */
    public record Storm(double durationS, double depthMm) {
        public Storm {
            Require.range("durationS", durationS, 60, 604800, "a duration from 60 to 604800 s (1 minute to 7 days)");
            Require.range("depthMm", depthMm, 0, 1e5, "a depth from 0 to 100000 mm");
        }
    }

    public Soakaway {
        Require.range("lengthM", lengthM, 0.2, 100, "a length from 0.2 to 100 m");
        Require.range("widthM", widthM, 0.2, 100, "a width from 0.2 to 100 m");
        Require.range("depthM", depthM, 0.2, 20, "a depth from 0.2 to 20 m");
        Require.range("voidRatio", voidRatio, 0.05, 1, "a share from 0.05 to 1");
        Require.range("infiltrationMPerS", infiltrationMPerS, 1e-9, 0.01, "an infiltration from 1e-9 to 0.01 m/s");
    }

    /** Sides at half depth [m2]. */
    public double halfSidesM2() {
        return (lengthM + widthM) * depthM;
    }

    /** Water that the pit holds [m3]. */
    public double roomM3() {
        return lengthM * widthM * depthM * voidRatio;
    }

    /**
     * Finds the storm that needs most room, with the tank full from the start.
     *
     * @param areaM2       of the roof, from 0 to 1e6 m2
     * @param storm        of the design return period
     * @param steadyM3PerS of tap drains, from 0 to 1 m3/s
     * @param durationsS   to try, each from 60 to 604800 s, at least one
     */
    public Check check(double areaM2, IntensityRelation storm, double steadyM3PerS, List<Double> durationsS) {
        Require.given("storm", storm);
        return check(areaM2, Require.given("durationsS", durationsS).stream().map(time -> Require.given("durationsS", time))
                .map(time -> new Storm(time, storm.depthMm(time))).toList(), steadyM3PerS);
    }

    /**
     * The same with storms of the design return period from any rule.
     *
     * @param storms to try, at least one
     */
    public Check check(double areaM2, List<Storm> storms, double steadyM3PerS) {
        Require.range("areaM2", areaM2, 0, 1e6, "a roof area from 0 to 1000000 m2");
        Require.range("steadyM3PerS", steadyM3PerS, 0, 1, "a flow from 0 to 1 m3/s");
        if (Require.given("storms", storms).isEmpty()) {
            throw new IllegalArgumentException("there is no storm; at least one duration is needed");
        }
        Check worst = null;
        for (Storm storm : storms) {
            double time = Require.given("storms", storm).durationS();
            double inflow = areaM2 * storm.depthMm() / 1000 + steadyM3PerS * time;
            double outflow = Math.min(inflow, halfSidesM2() * infiltrationMPerS * time);
            double needed = inflow - outflow;
            if (worst == null || needed > worst.neededM3()) {
                double halfEmpty = needed / 2 / (halfSidesM2() * infiltrationMPerS);
                worst = new Check(time, inflow, outflow, needed, roomM3(), halfEmpty);
            }
        }
        return worst;
    }

    /**
     * Infiltration of the soil from a trial pit [m/s]: the water between three quarters and a quarter full, over the
     * wetted area at half that depth with the bottom, and the time it took.
     *
     * @param volumeM3  that soaked away, from 1e-4 to 100 m3
     * @param wettedM2  sides at half depth and bottom, from 0.01 to 1000 m2
     * @param durationS that it took, from 1 to 1e7 s
     */
    public static double infiltrationMPerS(double volumeM3, double wettedM2, double durationS) {
        Require.range("volumeM3", volumeM3, 1e-4, 100, "a volume from 0.0001 to 100 m3");
        Require.range("wettedM2", wettedM2, 0.01, 1000, "an area from 0.01 to 1000 m2");
        Require.range("durationS", durationS, 1, 1e7, "a duration from 1 to 10000000 s");
        return volumeM3 / (wettedM2 * durationS);
    }
}
