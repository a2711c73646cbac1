package org.roofspring.drainage.intensity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.concurrent.CancellationException;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import net.jqwik.api.constraints.Size;
import org.roofspring.drainage.NoAnswerException;
import org.roofspring.drainage.intensity.WithinDayRain.ExponentialIntensities;
import org.roofspring.drainage.intensity.WithinDayRain.NestedBursts;

class IntensityPropertyTest {

    /** L-moments straight from their definition: expected order statistics over every subset of two and three. */
    @Property(tries = 50)
    void lMomentsAgreeWithAllSubsets(
            @ForAll @Size(min = 5, max = 9) List<@Scale(3) @DoubleRange(min = 1, max = 300) Double> values) {
        double[] x = values.stream().mapToDouble(Double::doubleValue).toArray();
        Arrays.sort(x);
        if (x[0] == x[x.length - 1]) {
            return;
        }
        int n = x.length;
        double l2 = 0;
        int pairs = 0;
        double l3 = 0;
        int triples = 0;
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                l2 += (x[j] - x[i]) / 2;
                pairs++;
                for (int k = j + 1; k < n; k++) {
                    l3 += (x[k] - 2 * x[j] + x[i]) / 3;
                    triples++;
                }
            }
        }
        LMoments moments = LMoments.of(new AnnualMaxima(values));
        assertEquals(Arrays.stream(x).average().orElseThrow(), moments.l1Mm(), 1e-9);
        assertEquals(l2 / pairs, moments.l2Mm(), 1e-9);
        assertEquals(l3 / triples / (l2 / pairs), moments.t3(), 1e-6);
    }

    /** A fitted law has the L-moments it was fitted to: by brute integration of its quantiles. */
    @Property(tries = 20)
    void gevHasTheLMomentsItWasFittedTo(@ForAll @Scale(4) @DoubleRange(min = 20, max = 150) double l1,
            @ForAll @Scale(4) @DoubleRange(min = 0.05, max = 0.3) double spread,
            @ForAll @Scale(4) @DoubleRange(min = -0.2, max = 0.4) double t3) {
        LMoments given = new LMoments(l1, spread * l1, t3);
        GevLaw law = GevLaw.of(given);
        double[] l = new double[3];
        int steps = 200_000;
        for (int i = 0; i < steps; i++) {
            // u = 3s^2 - 2s^3 crowds the points at both ends, where the quantile runs away
            double s = (i + 0.5) / steps;
            double u = s * s * (3 - 2 * s);
            double above = (1 - s) * (1 - s) * (1 + 2 * s);
            double weight = 6 * s * (1 - s) / steps;
            double x = law.depthAtVariateMm(-Math.log(-(u < 0.5 ? Math.log(u) : Math.log1p(-above))));
            l[0] += weight * x;
            l[1] += weight * x * (2 * u - 1);
            l[2] += weight * x * (6 * u * u - 6 * u + 1);
        }
        assertEquals(given.l1Mm(), l[0], 1e-4 * l1);
        assertEquals(given.l2Mm(), l[1], 1e-3 * given.l2Mm());
        assertEquals(given.t3(), l[2] / l[1], 1e-3);
    }

    @Property(tries = 100)
    void gevTendsToGumbel(@ForAll @Scale(4) @DoubleRange(min = 2, max = 1000) double years) {
        LMoments moments = new LMoments(70, 12, Math.log(9.0 / 8) / Math.log(2));
        GumbelLaw gumbel = GumbelLaw.of(moments);
        GevLaw gev = GevLaw.of(moments);
        assertEquals(0, gev.shape(), 1e-9);
        assertEquals(gumbel.depthMm(years), gev.depthMm(years), 1e-6 * gumbel.depthMm(years));
        GevLaw near = new GevLaw(gumbel.locationMm(), gumbel.scaleMm(), 1e-9);
        GevLaw at = new GevLaw(gumbel.locationMm(), gumbel.scaleMm(), 0);
        assertEquals(at.depthMm(years), near.depthMm(years), 1e-5);
    }

    @Property(tries = 100)
    void depthAndChanceAreInverse(@ForAll @Scale(4) @DoubleRange(min = -0.5, max = 0.5) double shape,
            @ForAll @Scale(4) @DoubleRange(min = 1.1, max = 5000) double years) {
        GevLaw law = new GevLaw(80, 20, shape);
        double depth = law.depthAtVariateMm(ExtremeLaw.reducedVariate(years));
        assertEquals(1 - 1 / years, law.nonExceedance(depth), 1e-9);
        assertTrue(law.depthMm(years * 1.01) >= law.depthMm(years));
    }

    /**
     * The spread of Gumbel depths against the large-sample formula
     * {@code var = scale^2/n (1.1128 + 0.4574 y + 0.8046 y^2)} of L-moment (probability-weighted moment) estimates
     * (Phien 1987, Journal of Hydrology 90, from memory).
     */
    @Example
    void intervalAgreesWithLargeSampleFormula() {
        GumbelLaw law = new GumbelLaw(60, 20);
        int n = 100;
        DepthInterval interval = DepthInterval.of(law, n, 50, 0.9, 20_000, 7, () -> false);
        double y = ExtremeLaw.reducedVariate(50);
        double error = 20 / Math.sqrt(n) * Math.sqrt(1.1128 + 0.4574 * y + 0.8046 * y * y);
        assertEquals(error, interval.standardErrorMm(), 0.03 * error);
        // 90 % of a nearly normal spread lies within 1.645 standard errors
        assertEquals(law.depthMm(50) - 1.645 * error, interval.lowMm(), 0.15 * error);
        assertEquals(law.depthMm(50) + 1.645 * error, interval.highMm(), 0.15 * error);
    }

    @Example
    void intervalIsRepeatableNarrowsWithYearsAndCanBeCancelled() {
        GevLaw law = new GevLaw(60, 20, -0.1);
        DepthInterval once = DepthInterval.of(law, 20, 50, 0.9, 1000, 3, () -> false);
        assertEquals(once, DepthInterval.of(law, 20, 50, 0.9, 1000, 3, () -> false));
        DepthInterval longer = DepthInterval.of(law, 80, 50, 0.9, 1000, 3, () -> false);
        assertTrue(longer.highMm() - longer.lowMm() < once.highMm() - once.lowMm());
        assertTrue(once.lowMm() < once.estimateMm() && once.estimateMm() < once.highMm());
        assertThrows(CancellationException.class, () -> DepthInterval.of(law, 20, 50, 0.9, 1000, 3, () -> true));
    }

    @Example
    void recordsWithoutAnAnswerSaySo() {
        assertThrows(NoAnswerException.class, () -> AnnualMaxima.of(50, 60, 70, 80));
        assertThrows(NoAnswerException.class, () -> AnnualMaxima.of(50, 50, 50, 50, 50));
        AnnualMaxima few = AnnualMaxima.of(50, 60, 70, 80, 90);
        assertThrows(NoAnswerException.class, () -> few.plottedDepthMm(PlottingPosition.WEIBULL, 7));
        assertThrows(NoAnswerException.class, () -> few.plottedDepthMm(PlottingPosition.WEIBULL, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> AnnualMaxima.of(50, 60, Double.NaN, 80, 90));
        assertEquals(90, few.plottedDepthMm(PlottingPosition.WEIBULL, 6), 1e-12);
        assertEquals(50, few.plottedDepthMm(PlottingPosition.WEIBULL, 1.2), 1e-12);
    }

    @Property(tries = 100)
    void ratiosGrowAndIntensitiesFall(@ForAll @Scale(2) @DoubleRange(min = 300, max = 86000) double durationS) {
        for (DurationRatios ratios : new DurationRatios[] {DurationRatios.thirdPower(), DurationRatios.brazilian()}) {
            double longer = durationS + 200;
            assertTrue(ratios.ratio(longer) > ratios.ratio(durationS));
            assertTrue(ratios.ratio(longer) / longer < ratios.ratio(durationS) / durationS);
        }
        assertEquals(Math.cbrt(durationS / 86400), DurationRatios.thirdPower().ratio(durationS), 1e-12);
    }

    /** Nested bursts against the second-by-second ranked storm: what exceeds the limit is added up. */
    @Property(tries = 20)
    void nestedBurstsAgreeWithASecondBySecondStorm(@ForAll @Scale(3) @DoubleRange(min = 1, max = 200) double dayMm,
            @ForAll @Scale(3) @DoubleRange(min = 1, max = 200) double limitMmPerH) {
        for (DurationRatios ratios : new DurationRatios[] {DurationRatios.thirdPower(), DurationRatios.brazilian()}) {
            double excess = Math.max(0, dayMm * ratios.ratio(300) - limitMmPerH / 12);
            double[] ranked = new double[86400 - 300];
            double before = ratios.ratio(300);
            for (int s = 300; s < 86400; s++) {
                double after = ratios.ratio(s + 1.0);
                ranked[s - 300] = dayMm * (after - before);
                before = after;
            }
            // the table's stretches join at kinks where the rank order may be broken, so the steps are sorted
            Arrays.sort(ranked);
            double first = dayMm * ratios.ratio(300) / 300;
            double running = dayMm * ratios.ratio(300) - limitMmPerH / 12;
            double most = Math.max(0, running);
            for (int i = ranked.length - 1; i >= 0; i--) {
                running += Math.min(ranked[i], first) - limitMmPerH / 3600;
                most = Math.max(most, running);
            }
            assertTrue(most >= excess);
            double tolerance = ratios.points().size() == 2 ? 1e-6 : 5e-4;
            assertEquals(most, new NestedBursts(ratios).excessMm(dayMm, limitMmPerH), tolerance * dayMm);
        }
    }

    /** Exponential intensities against a drawn storm. */
    @Example
    void exponentialIntensitiesAgreeWithADrawnStorm() {
        Random random = new Random(1);
        double mean = 10;
        double limit = 15;
        double rain = 0;
        double excess = 0;
        for (int i = 0; i < 2_000_000; i++) {
            double intensity = -mean * Math.log(1 - random.nextDouble());
            rain += intensity;
            excess += Math.max(0, intensity - limit);
        }
        double dayMm = 30;
        double duration = dayMm / mean * 3600;
        assertEquals(excess / rain, new ExponentialIntensities(duration).excessMm(dayMm, limit) / dayMm, 2e-3);
    }

    @Property(tries = 50)
    void lossFallsAsCapacityGrowsAndVanishesAtLast(@ForAll @Scale(3) @DoubleRange(min = 0, max = 300) double limit) {
        double[] days = {0, 3, 120, Double.NaN, 12, 45, 0, 0.2};
        for (WithinDayRain spread : new WithinDayRain[] {new NestedBursts(DurationRatios.thirdPower()),
            new NestedBursts(DurationRatios.brazilian()), new ExponentialIntensities(3 * 3600)}) {
            CollectionEfficiency small = CollectionEfficiency.of(days, limit, spread, () -> false);
            CollectionEfficiency large = CollectionEfficiency.of(days, limit + 5, spread, () -> false);
            assertTrue(large.ratio() >= small.ratio());
            assertTrue(small.ratio() >= 0 && large.ratio() <= 1);
            assertEquals(7, small.days());
            assertEquals(180.2, small.rainMm(), 1e-9);
            assertEquals(0, CollectionEfficiency.of(days, 0, spread, () -> false).ratio(), 1e-12);
            assertEquals(1, CollectionEfficiency.of(days, 1e5, spread, () -> false).ratio(), 1e-12);
            assertTrue(small.lostM3PerYear(50, 0.9) >= large.lostM3PerYear(50, 0.9));
        }
    }

    /** CALC by hand: 0.5 L/s off 36 m2 is 50 mm/h; one lost mm in 365.2425 days is 0.1 m3 a year off 100 m2. */
    @Example
    void litresByHand() {
        assertEquals(50, CollectionEfficiency.limitMmPerH(5e-4, 36, 1), 1e-9);
        CollectionEfficiency efficiency = new CollectionEfficiency(50, 730, 200, 198);
        assertEquals(2 * 0.1 * 365.2425 / 730, efficiency.lostM3PerYear(100, 1), 1e-12);
        assertEquals(0.99, efficiency.ratio(), 1e-12);
        assertEquals(1, new CollectionEfficiency(50, 0, 0, 0).ratio());
    }
}
