package org.roofspring.economy.readings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.CancellationException;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.roofspring.economy.readings.GapAnswer.Judged;

/** Cases reckoned by hand, parts against slow second ways, and bad input. */
class GapStudyTest {
    private static final int DAYS = 100;

    private static WaterCourse course(double inflow, double planned) {
        double[] in = new double[DAYS];
        double[] use = new double[DAYS];
        Arrays.fill(in, inflow);
        Arrays.fill(use, planned);
        return new WaterCourse(in, use, new double[DAYS], 100);
    }

    private static List<LevelReading> levels(double start, double perDay) {
        List<LevelReading> levels = new ArrayList<>();
        for (int day = 0; day <= DAYS; day += 5) {
            levels.add(new LevelReading(day, start + perDay * day));
        }
        return levels;
    }

    private static Judged judged(WaterCourse course, List<LevelReading> levels, List<MeterReading> meters) {
        return assertInstanceOf(Judged.class, GapStudy.of(course, levels, meters, Doubt.usual(0.2), 1, () -> false));
    }

    /** No rain, half a m3 a day by plan and meter, but 0.7 a day out of the tank. */
    @Test
    void aPlainLeak() {
        List<MeterReading> meters = List.of(new MeterReading(0, 10), new MeterReading(50, 35),
                new MeterReading(100, 60));
        Judged judged = judged(course(0, 0.5), levels(90, -0.7), meters);
        assertTrue(judged.alarm());
        assertEquals(Optional.of(Cause.LEAK), judged.cause());
        assertTrue(judged.loss().contains(0.2));
        assertEquals(0.2, judged.loss().best(), 0.01);
        assertEquals(1, judged.meteredRatio().getAsDouble(), 1e-12);
        assertEquals(1, judged.intervals().getFirst().missingM3(), 1e-9);
        assertEquals(1, judged.chances().values().stream().mapToDouble(Double::doubleValue).sum(), 1e-12);
    }

    @Test
    void waterTakenAtOnce() {
        List<LevelReading> levels = new ArrayList<>();
        levels(90, -0.5).forEach(level -> levels.add(new LevelReading(level.day(),
                level.volumeM3() - (level.day() > 42 ? 8 : 0))));
        List<MeterReading> meters = List.of(new MeterReading(0, 0), new MeterReading(100, 50));
        Judged judged = judged(course(0, 0.5), levels, meters);
        assertEquals(Optional.of(Cause.THEFT), judged.cause());
        assertEquals(40, judged.sinceDay());
        assertTrue(judged.size().contains(8));
    }

    /** The meter shows twice the plan and the tank agrees with it: no loss, but more use. */
    @Test
    void moreUseByTheMeter() {
        List<MeterReading> meters = List.of(new MeterReading(0, 0), new MeterReading(100, 80));
        Judged judged = judged(course(0, 0.4), levels(90, -0.8), meters);
        assertFalse(judged.alarm());
        assertEquals(Optional.of(Cause.USE), judged.cause());
        assertEquals(1, judged.size().best(), 1e-9);
    }

    @Test
    void aSoundTankIsLeftInPeace() {
        Judged judged = judged(course(0.1, 0.5), levels(90, -0.4), List.of());
        assertFalse(judged.alarm());
        assertEquals(Optional.empty(), judged.cause());
        assertEquals(0, judged.loss().low());
    }

    @Test
    void aFullOrADryTankSaysNothing() {
        assertInstanceOf(GapAnswer.TooFew.class, GapStudy.of(course(3, 0.5), levels(100, 0), List.of(),
                Doubt.usual(0.2), 1, () -> false));
        assertInstanceOf(GapAnswer.TooFew.class, GapStudy.of(course(0, 0.5), levels(0, 0), List.of(),
                Doubt.usual(0.2), 1, () -> false));
        assertInstanceOf(GapAnswer.TooFew.class, GapStudy.of(course(0, 0.5), List.of(), List.of(),
                Doubt.usual(0.2), 1, () -> false));
    }

    @Test
    void expectedVolumesByHand() {
        WaterCourse course = new WaterCourse(new double[] {5, 0, 9, 0}, new double[] {1, 1, 1, 20},
                new double[] {0, 0.5, 0, 0}, 10);
        assertEquals(List.of(3.0, 7.0, 5.5, 9.0, 0.0),
                Arrays.stream(GapStudy.expectedM3(course, List.of(), 0, 3)).boxed().toList());
    }

    @Test
    void refusals() {
        WaterCourse course = course(0, 1);
        for (double bad : new double[] {-1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThrows(IllegalArgumentException.class, () -> course(bad, 1));
            assertThrows(IllegalArgumentException.class, () -> course(1, bad));
            assertThrows(IllegalArgumentException.class, () -> Doubt.usual(bad));
            assertThrows(IllegalArgumentException.class, () -> judged(course, List.of(new LevelReading(1, bad)),
                    List.of()));
            assertThrows(IllegalArgumentException.class, () -> judged(course, List.of(),
                    List.of(new MeterReading(1, bad))));
        }
        assertThrows(IllegalArgumentException.class, () -> new WaterCourse(new double[2], new double[1], new double[2],
                1));
        assertThrows(IllegalArgumentException.class, () -> judged(course,
                List.of(new LevelReading(1, 1), new LevelReading(1, 2)), List.of()));
        assertThrows(IllegalArgumentException.class, () -> judged(course, List.of(new LevelReading(101, 1)),
                List.of()));
        assertThrows(IllegalArgumentException.class, () -> judged(course, List.of(),
                List.of(new MeterReading(1, 5), new MeterReading(2, 4))));
        assertThrows(CancellationException.class, () -> GapStudy.of(course(0, 0.5), levels(90, -0.5), List.of(),
                Doubt.usual(0.2), 1, () -> true));
    }

    /** Whitened values have the covariance that was said: L (L^-1 x) is x, and L L' is the covariance. */
    @Property(tries = 100)
    void whiteningByMultiplyingBack(@ForAll long seed) {
        Random random = new Random(seed);
        int n = 1 + random.nextInt(8);
        double[][] root = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int k = 0; k <= i; k++) {
                root[i][k] = i == k ? 0.5 + random.nextDouble() : random.nextGaussian();
            }
        }
        double[][] covariance = new double[n][n];
        double[] values = new double[n];
        double[] white = random.doubles(n).toArray();
        for (int i = 0; i < n; i++) {
            for (int k = 0; k < n; k++) {
                values[i] += root[i][k] * white[k];
                for (int m = 0; m < n; m++) {
                    covariance[i][k] += root[i][m] * root[k][m];
                }
            }
        }
        double[] found = new Whitening(covariance).of(values);
        for (int i = 0; i < n; i++) {
            assertEquals(white[i], found[i], 1e-6);
        }
    }
}
