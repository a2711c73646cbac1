package org.roofspring.storage.withinday;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.roofspring.storage.withinday.DayPattern.Stretch;
import org.roofspring.storage.withinday.OverheadSystem.Control;

/** Cases small enough to be worked by hand. */
class OverheadRunTest {

    private static final double HOUR = 3600;
    private static final OverheadTank TANK = new OverheadTank(1000, 100, 400, 900);

    private static OverheadSystem system(DayPattern pump, DayPattern draw) {
        return new OverheadSystem(TANK, pump, draw, Control.LEVELS);
    }

    private static DayPattern hours(double from, double to, double m3PerHour) {
        return DayPattern.of(List.of(new Stretch(from * HOUR, to * HOUR, m3PerHour / HOUR)));
    }

    /**
     * A pump of flow q and an even draw d: a cycle takes B/d + B/(q - d) for the volume B between the levels, least at
     * d = q/2, where it is 4 B/q. Common practice of pump sumps, no source; follows from the volumes.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0.1, 0.25, 0.5, 0.75, 0.9})
    void cycleTime(double share) {
        double q = 2;
        double d = share * q;
        double cycleS = 500 / d + 500 / (q - d);
        OverheadResult run = OverheadRun.run(system(DayPattern.constant(q), DayPattern.constant(d)), 900, 2, List.of(),
                () -> false);
        for (int start = 1; start < run.pumpStartsS().size(); start++) {
            assertEquals(cycleS, run.pumpStartsS().get(start) - run.pumpStartsS().get(start - 1), 1e-6);
        }
        // after the first run down from 900 to 400 a start each cycle
        assertEquals((int) Math.floor((2 * 86400 - 500 / d) / cycleS) + 1, run.pumpStartsS().size());
        assertTrue(cycleS >= 4 * 500 / q - 1e-9);
        assertEquals((int) Math.ceil(HOUR / cycleS), run.mostStartsWithin(HOUR));
        assertEquals(run.pumpStartsS().size() / 2.0, run.pumpStartsPerDay());
        assertEquals(0, run.missingM3());
        assertEquals(0, run.residualM3(), 1e-9 * run.pumpedM3());
    }

    /** From 600 the tank gives 500 in five hours at 100 an hour, then nothing until the pump brings 50 an hour. */
    @Test
    void runsDryAndGivesWhatThePumpLifts() {
        OverheadSystem system = system(hours(10, 20, 50), DayPattern.constant(100 / HOUR));
        OverheadResult run = OverheadRun.run(system, 600, 1, List.of(), () -> false);
        assertEquals(500 + 500, run.suppliedM3(), 1e-9);
        assertEquals(2400 - 1000, run.missingM3(), 1e-9);
        assertEquals(19 * HOUR, run.dryS(), 1e-9);
        assertEquals(10 * HOUR, run.pumpRunS(), 1e-9);
        assertEquals(List.of(10 * HOUR), run.pumpStartsS());
        assertEquals(100, run.lowestVolumeM3());
        assertEquals(5 * HOUR, run.lowestS(), 1e-9);
        assertEquals(100, run.endVolumeM3());
    }

    /** A break of ten minutes takes 300 from a tank that a clock of whole hours would see untouched. */
    @Test
    void aPeakOfMinutes() {
        DayPattern draw = DayPattern.of(List.of(Stretch.ofVolume(10.1 * HOUR, 10.1 * HOUR + 600, 300),
                Stretch.ofVolume(13.1 * HOUR, 13.1 * HOUR + 600, 300)));
        OverheadResult run = OverheadRun.run(system(hours(11, 12, 250), draw), 700, 1, List.of(), () -> false);
        assertEquals(700 - 300 + 250 - 300, run.lowestVolumeM3(), 1e-9);
        assertEquals(13.1 * HOUR + 600, run.lowestS(), 1e-6);
        assertEquals(run.lowestVolumeM3(), run.endVolumeM3(), 1e-9);
        OverheadResult small = OverheadRun.run(system(hours(11, 12, 250), draw), 300, 1, List.of(), () -> false);
        assertEquals(100 + 50, small.missingM3(), 1e-9, "200 of 300, then 250 of 300");
        assertEquals(600 / 3.0 + 600 / 6.0, small.dryS(), 1e-6);
    }

    /** At the return of power the pump stays off above its starting level, unless the return starts it. */
    @Test
    void controlAtTheReturnOfPower() {
        DayPattern pump = hours(6, 10, 1000);
        DayPattern draw = hours(0, 6, 50);
        OverheadResult levels = OverheadRun.run(system(pump, draw), 900, 1, List.of(), () -> false);
        assertEquals(0, levels.pumpedM3());
        OverheadResult returns = OverheadRun.run(
                new OverheadSystem(TANK, pump, draw, Control.LEVELS_AND_RETURN_OF_POWER), 900, 1, List.of(),
                () -> false);
        assertEquals(300, returns.pumpedM3(), 1e-9);
        assertEquals(List.of(6 * HOUR), returns.pumpStartsS());
        // filling at the cut, it goes on filling
        OverheadResult cut = OverheadRun.run(system(DayPattern.constant(100 / HOUR), DayPattern.constant(0)), 400, 1,
                List.of(new Outage(HOUR, HOUR), new Outage(1.5 * HOUR, HOUR)), () -> false);
        assertEquals(List.of(0.0, 2.5 * HOUR), cut.pumpStartsS());
        assertEquals(900, cut.endVolumeM3());
        assertEquals(5 * HOUR, cut.pumpRunS(), 1e-6);
    }

    @Test
    void tapTimes() {
        DayPattern draw = DayPattern.of(List.of(new Stretch(8 * HOUR, 10 * HOUR, 100 / HOUR),
                new Stretch(16 * HOUR, 17 * HOUR, 300 / HOUR)));
        assertEquals(500, draw.volumeM3PerDay(), 1e-9);
        // 350 last from 9:30, through 50 in the morning and 300 in the afternoon
        assertEquals(new TapTime(7.5 * HOUR, 9.5 * HOUR), rounded(TapTime.shortest(draw, 350).orElseThrow()));
        assertEquals(7.5 * HOUR, TapTime.from(draw, 350, 9.5 * HOUR).orElseThrow().durationS(), 1e-6);
        assertEquals(new TapTime(HOUR, 16 * HOUR), rounded(TapTime.shortest(draw, 300).orElseThrow()));
        assertEquals(new TapTime(0, 0), TapTime.shortest(draw, 0).orElseThrow());
        assertEquals(new TapTime(9 * HOUR, 8 * HOUR), rounded(TapTime.shortest(draw, 500).orElseThrow()),
                "a whole day's draw lasts from the morning to five");
        assertEquals(10 * 86400 + HOUR, TapTime.shortest(draw, 5300).orElseThrow().durationS(), 1e-3);
        assertTrue(TapTime.shortest(DayPattern.constant(0), 5).isEmpty());
        assertTrue(TapTime.from(DayPattern.constant(0), 5, 0).isEmpty());
    }

    private static TapTime rounded(TapTime time) {
        return new TapTime(Math.rint(time.durationS() * 1000) / 1000, Math.rint(time.fromS() * 1000) / 1000);
    }

    /** An even draw and power all day: the volume between the starting level and the outlet must last the outage. */
    @Test
    void outageWithEvenDraw() {
        OverheadSystem system = system(DayPattern.constant(50 / HOUR), DayPattern.constant(20 / HOUR));
        assertEquals(15 * HOUR, OutageStudy.longestBridgedS(system, () -> false).orElseThrow(), 1);
        OutageAnswer.Smallest smallest = (OutageAnswer.Smallest) OutageStudy.smallestTank(system, 36 * HOUR,
                () -> false);
        assertEquals(20 * 36 / 0.3, smallest.tank().capacityM3(), 2400 * 2e-6);
    }

    /**
     * Power from 6 to 10 and 14 to 21, draw from 6 to 18: an outage of two days that begins with the power at 6 after
     * a night without adds two days' draw; the night draws nothing.
     */
    @Test
    void outageAfterANightWithoutPower() {
        DayPattern pump = DayPattern.of(List.of(new Stretch(6 * HOUR, 10 * HOUR, 100 / HOUR),
                new Stretch(14 * HOUR, 21 * HOUR, 100 / HOUR)));
        DayPattern draw = hours(6, 18, 40);
        // from 10 to 14 the taps draw 160 without power; an outage of two days from 14 draws 960 more; and when it
        // ends at 14 the pump lifts more than is drawn
        OutageAnswer.Smallest smallest = (OutageAnswer.Smallest) OutageStudy.smallestTank(system(pump, draw), 48 * HOUR,
                () -> false);
        assertEquals((960 + 160) / 0.3, smallest.tank().capacityM3(), 0.01);
        assertEquals(10 * HOUR, smallest.worst().atMarkS());
        assertEquals(10 * HOUR, smallest.worst().outageS(), "just as bad as 14: it ends when the power does");
    }

    @Test
    void noTankHelps() {
        assertEquals(new OutageAnswer.None(OutageAnswer.Reason.PUMP_TOO_WEAK), OutageStudy.smallestTank(
                system(hours(6, 10, 100), DayPattern.constant(20 / HOUR)), HOUR, () -> false));
        assertEquals(new OutageAnswer.None(OutageAnswer.Reason.NO_DRAW), OutageStudy.smallestTank(
                system(hours(6, 10, 100), DayPattern.constant(0)), HOUR, () -> false));
        assertEquals(new OutageAnswer.None(OutageAnswer.Reason.NOTHING_ABOVE_START_LEVEL), OutageStudy.smallestTank(
                new OverheadSystem(new OverheadTank(10, 1, 1, 9), DayPattern.constant(1e-3), DayPattern.constant(1e-4),
                        Control.LEVELS), HOUR, () -> false));
        assertEquals(new OutageAnswer.None(OutageAnswer.Reason.BEYOND_RANGE), OutageStudy.smallestTank(
                system(DayPattern.constant(100), DayPattern.constant(20)), 30 * 86400, () -> false));
        assertEquals(OptionalDouble.empty(), OutageStudy.longestBridgedS(
                system(hours(6, 10, 100), DayPattern.constant(20 / HOUR)), () -> false));
        assertEquals(366 * 86400, OutageStudy.longestBridgedS(
                system(DayPattern.constant(1), DayPattern.constant(1e-9)), () -> false).orElseThrow());
    }

    @Test
    void patterns() {
        DayPattern pattern = DayPattern.of(List.of(new Stretch(22 * HOUR, 2 * HOUR, 1), new Stretch(HOUR, 86400, 2)));
        assertEquals(1, pattern.flowM3PerS(0));
        assertEquals(3, pattern.flowM3PerS(1.5 * HOUR));
        assertEquals(2, pattern.flowM3PerS(2 * HOUR));
        assertEquals(3, pattern.flowM3PerS(86400 - 1e-6));
        assertEquals(1, pattern.flowM3PerS(86400));
        assertEquals(4 * HOUR + 2 * 23 * HOUR, pattern.volumeM3PerDay(), 1e-6);
        assertEquals(DayPattern.constant(2), DayPattern.of(List.of(new Stretch(5, 5, 2))), "from five to five");
    }

    @Test
    void refusals() {
        for (double bad : new double[] {-1, Double.NaN, Double.POSITIVE_INFINITY, 86400.1}) {
            assertThrows(IllegalArgumentException.class, () -> new Stretch(bad, 5, 1));
            assertThrows(IllegalArgumentException.class, () -> new Stretch(5, bad, 1));
            assertThrows(IllegalArgumentException.class, () -> Stretch.ofVolume(5, bad, 1));
            assertThrows(IllegalArgumentException.class, () -> new Stretch(0, 5, bad));
            assertThrows(IllegalArgumentException.class, () -> TapTime.from(DayPattern.constant(1), 1, bad));
        }
        OverheadSystem system = system(DayPattern.constant(1), DayPattern.constant(0.5));
        for (double bad : new double[] {-1, Double.NaN, Double.POSITIVE_INFINITY, 1000.1, 99}) {
            assertThrows(IllegalArgumentException.class, () -> OverheadRun.run(system, bad, 1, List.of(), () -> false));
        }
        for (double bad : new double[] {-1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThrows(IllegalArgumentException.class, () -> new Outage(bad, 1));
            assertThrows(IllegalArgumentException.class, () -> new Outage(1, bad));
            assertThrows(IllegalArgumentException.class, () -> TapTime.shortest(DayPattern.constant(1), bad));
            assertThrows(IllegalArgumentException.class, () -> OutageStudy.smallestTank(system, bad, () -> false));
        }
        assertThrows(IllegalArgumentException.class, () -> OverheadRun.run(system, 500, 0, List.of(), () -> false));
        assertThrows(IllegalArgumentException.class, () -> OverheadRun.run(system, 500, 367, List.of(), () -> false));
        assertThrows(IllegalArgumentException.class, () -> new OverheadTank(10, 3, 2, 9));
        assertThrows(IllegalArgumentException.class, () -> new OverheadTank(10, 1, 9, 9));
        assertThrows(IllegalArgumentException.class, () -> new OverheadTank(10, 1, 2, 11));
        assertThrows(IllegalArgumentException.class, () -> new OverheadTank(Double.NaN, 0, 0, 0));
        assertThrows(IllegalArgumentException.class,
                () -> new OverheadSystem(TANK, DayPattern.constant(501), DayPattern.constant(0), Control.LEVELS));
        assertThrows(CancellationException.class, () -> OverheadRun.run(system, 500, 1, List.of(), () -> true));
        assertThrows(CancellationException.class, () -> OutageStudy.smallestTank(system, 60, () -> true));
    }
}
