package org.roofspring.storage.withinday;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.roofspring.storage.withinday.DayPattern.Stretch;
import org.roofspring.storage.withinday.OverheadSystem.Control;

/** The event-driven tank against fine even steps, and what must hold for every tank. */
class OverheadPropertyTest {

    private static final double STEP_S = 5;

    private static double moment(Random random) {
        return random.nextInt(86400 / 600) * 600.0;
    }

    /** A tank of some cubic metres, a pump with hours or without, peaks of minutes; all moments whole ten minutes. */
    private static OverheadSystem system(Random random) {
        double capacity = 1 + random.nextInt(10);
        double dead = capacity * random.nextInt(3) / 20;
        double start = dead + capacity * (2 + random.nextInt(8)) / 20;
        double stop = start + (capacity - start) * (0.4 + 0.6 * random.nextDouble());
        List<Stretch> draws = new ArrayList<>();
        for (int peak = random.nextInt(5); peak >= 0; peak--) {
            double from = moment(random);
            double length = (1 + random.nextInt(20)) * 600.0;
            draws.add(Stretch.ofVolume(from, (from + length) % 86400, 0.3 + 2 * random.nextDouble()));
        }
        DayPattern draw = DayPattern.of(draws);
        List<Stretch> powers = new ArrayList<>();
        double hours = 0;
        for (int window = random.nextInt(3); window >= 0; window--) {
            double from = moment(random);
            double length = (6 + random.nextInt(50)) * 600.0;
            powers.add(new Stretch(from, (from + length) % 86400, 1));
            hours += length;
        }
        double flow = draw.volumeM3PerDay() / hours * (1.3 + random.nextDouble());
        DayPattern pump = random.nextInt(4) == 0 ? DayPattern.constant(flow)
                : DayPattern.of(powers.stream().map(w -> new Stretch(w.fromS(), w.toS(), flow)).toList());
        return new OverheadSystem(new OverheadTank(capacity, dead, start, stop), pump, draw,
                random.nextBoolean() ? Control.LEVELS : Control.LEVELS_AND_RETURN_OF_POWER);
    }

    private static List<Outage> outages(Random random) {
        List<Outage> outages = new ArrayList<>();
        for (int i = random.nextInt(3); i > 0; i--) {
            outages.add(new Outage(random.nextInt(3) * 86400 + moment(random), random.nextInt(200) * 600.0));
        }
        return outages;
    }

    /** A step late at each switching moves the volume by a step's flow at most, and never accumulates. */
    @Property(tries = 100)
    void fineStepsComeToTheSame(@ForAll long seed) {
        Random random = new Random(seed);
        OverheadSystem system = system(random);
        double volume = system.tank().deadVolumeM3()
                + (system.tank().capacityM3() - system.tank().deadVolumeM3()) * random.nextDouble();
        List<Outage> outages = outages(random);
        OverheadResult run = OverheadRun.run(system, volume, 3, outages, () -> false);
        double flow = system.pump().largestFlowM3PerS() + system.draw().largestFlowM3PerS();
        double tolerance = flow * STEP_S * (2 + run.pumpStartsS().size());
        if (onAKnifesEdge(run, system.tank(), tolerance)) {
            return;
        }
        SlowOverheadTank slow = SlowOverheadTank.run(system, 0, volume, false, 3 * 86400, STEP_S, outages);
        assertEquals(slow.askedM3, run.askedM3(), 1e-6);
        assertEquals(slow.suppliedM3, run.suppliedM3(), tolerance);
        assertEquals(slow.pumpedM3, run.pumpedM3(), tolerance);
        assertEquals(slow.volumeM3, run.endVolumeM3(), 2 * tolerance);
        assertEquals(slow.pumpSteps * STEP_S, run.pumpRunS(), STEP_S * (4 + 4 * run.pumpStartsS().size())
                + tolerance / system.pump().largestFlowM3PerS());
        assertEquals(slow.startsS.size(), run.pumpStartsS().size());
    }

    /** A level that is just reached, or just not, as draw or power changes: steps may switch the pump the other way. */
    private static boolean onAKnifesEdge(OverheadResult run, OverheadTank tank, double tolerance) {
        for (int i = 1; i < run.trace().size(); i++) {
            OverheadResult.Corner corner = run.trace().get(i);
            double toChangeS = Math.abs((corner.timeS() + 300) % 600 - 300);
            boolean near = Math.abs(corner.volumeM3() - tank.startVolumeM3()) < tolerance
                    || Math.abs(corner.volumeM3() - tank.stopVolumeM3()) < tolerance;
            boolean moved = corner.volumeM3() != run.trace().get(i - 1).volumeM3();
            if (near && moved && toChangeS < 60 + 2 * STEP_S * run.pumpStartsS().size()) {
                return true;
            }
        }
        return false;
    }

    @Property(tries = 500)
    void massClosesAndLevelsHold(@ForAll long seed) {
        Random random = new Random(seed);
        OverheadSystem system = system(random);
        OverheadTank tank = system.tank();
        double volume = tank.deadVolumeM3() + (tank.capacityM3() - tank.deadVolumeM3()) * random.nextDouble();
        OverheadResult run = OverheadRun.run(system, volume, 5, outages(random), () -> false);
        double scale = Math.max(run.pumpedM3(), tank.capacityM3());
        assertEquals(0, run.residualM3(), 1e-9 * scale);
        assertEquals(5 * system.draw().volumeM3PerDay(), run.askedM3(), 1e-9 * run.askedM3());
        assertTrue(run.missingM3() >= -1e-9 * scale);
        assertEquals(run.dryS() > 1e-6, run.missingM3() > 1e-9 * scale * 1e-3);
        double highest = Math.max(volume, tank.stopVolumeM3());
        for (OverheadResult.Corner corner : run.trace()) {
            assertTrue(corner.volumeM3() >= tank.deadVolumeM3() && corner.volumeM3() <= highest, corner::toString);
        }
        assertEquals(5 * 86400, run.trace().getLast().timeS());
    }

    /** From every minute of the day, taps run at least as long as from the worst moment, and as long just there. */
    @Property(tries = 200)
    void noMomentIsWorseThanTheWorst(@ForAll long seed, @ForAll @DoubleRange(min = 0, max = 3) double days) {
        DayPattern draw = system(new Random(seed)).draw();
        double volume = days * draw.volumeM3PerDay();
        TapTime worst = TapTime.shortest(draw, volume).orElseThrow();
        for (double fromS = 0; fromS < 86400; fromS += 60) {
            double here = TapTime.from(draw, volume, fromS).orElseThrow().durationS();
            double at = fromS;
            assertTrue(here >= worst.durationS() - 1e-4, () -> here + " from " + at + " against " + worst);
        }
        // a little more is not drawn by then, a little less is
        double drawn = drawn(draw, worst.fromS(), worst.durationS());
        assertEquals(volume, drawn, 1e-6 * (1 + volume));
    }

    private static double drawn(DayPattern draw, double fromS, double durationS) {
        double sum = 0;
        double timeS = fromS;
        while (timeS < fromS + durationS) {
            double nextS = Math.min(fromS + durationS, draw.nextChangeS(timeS));
            sum += draw.flowM3PerS(timeS) * (nextS - timeS);
            timeS = nextS;
        }
        return sum;
    }

    /** The smallest tank bridges outages at moments that nobody chose; one a hundredth smaller fails at the worst. */
    @Property(tries = 60)
    void theSmallestTankIsEnoughAndNeeded(@ForAll long seed, @ForAll @DoubleRange(min = 0, max = 60) double hours) {
        Random random = new Random(seed);
        OverheadSystem shape = system(random);
        double outageS = Math.rint(hours * 6) * 600;
        if (!(OutageStudy.smallestTank(shape, outageS, () -> false) instanceof OutageAnswer.Smallest smallest)) {
            return;
        }
        OverheadSystem enough = shape.scaledTo(smallest.tank().capacityM3());
        for (int i = 0; i < 40; i++) {
            double atMarkS = random.nextDouble() * 86400;
            double laterS = atMarkS + random.nextDouble() * 2 * 86400;
            SlowEpisode episode = new SlowEpisode(enough, atMarkS, new Outage(laterS, outageS));
            assertTrue(episode.missingM3 <= 1e-6 * enough.tank().capacityM3(),
                    () -> episode.missingM3 + " missing from " + atMarkS + " with an outage at " + laterS);
        }
        double start = enough.tank().deadVolumeM3()
                + (enough.tank().stopVolumeM3() - enough.tank().deadVolumeM3()) * random.nextDouble();
        OverheadResult normal = OverheadRun.run(enough, Math.max(enough.tank().startVolumeM3(), start), 20, List.of(),
                () -> false);
        assertEquals(0, normal.missingM3(), 1e-6 * normal.askedM3());
        OverheadTank tank = enough.tank();
        double fastest = Math.max(shape.pump().largestFlowM3PerS(), shape.draw().largestFlowM3PerS());
        if (tank.stopVolumeM3() - tank.startVolumeM3() < 1.02 * fastest) {
            return; // the swing of the pump, not the outage, sets the size
        }
        OverheadSystem less = shape.scaledTo(tank.capacityM3() * 0.99);
        SlowOverheadTank dry = SlowOverheadTank.run(less, smallest.worst().atMarkS(), less.tank().startVolumeM3(), true,
                outageS + 4 * 86400, STEP_S, List.of(new Outage(smallest.worst().outageS(), outageS)));
        Optional<OutageStudy.HardMoment> fails = OutageStudy.failsAt(less, outageS, () -> false);
        assertTrue(fails.isPresent());
        assertTrue(dry.drySteps > 0, () -> "no tap ran dry with " + smallest);
    }

    /** From the starting mark until the pump has filled the tank, by events, at moments of any kind. */
    private static final class SlowEpisode {

        private double missingM3;

        SlowEpisode(OverheadSystem system, double atMarkS, Outage outage) {
            OverheadEvents events = new OverheadEvents(system, atMarkS, system.tank().startVolumeM3(), true,
                    List.of(outage));
            double endS = outage.startS() + outage.durationS() + 3 * 86400;
            while (events.timeS < endS && events.volumeM3 < system.tank().stopVolumeM3()) {
                events.next(endS);
                missingM3 += (events.askedM3PerS - events.suppliedM3PerS) * events.durationS;
            }
        }
    }

    @Property(tries = 40)
    void aLongerOutageNeedsNoSmallerTank(@ForAll long seed, @ForAll @DoubleRange(min = 0, max = 2) double more) {
        OverheadSystem shape = system(new Random(seed));
        OutageAnswer first = OutageStudy.smallestTank(shape, 20 * 3600, () -> false);
        OutageAnswer second = OutageStudy.smallestTank(shape, 20 * 3600 * (1 + more), () -> false);
        if (first instanceof OutageAnswer.Smallest small && second instanceof OutageAnswer.Smallest large) {
            assertTrue(large.tank().capacityM3() >= small.tank().capacityM3() * (1 - 3e-6));
        }
        assertEquals(first instanceof OutageAnswer.None, second instanceof OutageAnswer.None);
    }
}
