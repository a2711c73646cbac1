package org.roofspring.storage.withinday;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import org.roofspring.storage.withinday.OverheadResult.Corner;

/** Runs an overhead tank over whole days. */
public final class OverheadRun {

    private static final int MOST_DAYS = 366;
    private static final int EVENTS_BETWEEN_POLLS = 4096;

    private OverheadRun() {
    }

    /**
     * Runs from midnight; the pump is at rest unless the level is at its starting mark or below.
     *
     * @param system the tank, pump and draw
     * @param volumeM3 in the tank as the run begins [m&sup3;], the dead volume to the capacity
     * @param days length of the run [d], 1 to 366
     * @param outages times without power; may overlap
     * @param cancelled polled while running
     * @throws CancellationException when cancelled
     */
    public static OverheadResult run(OverheadSystem system, double volumeM3, int days, List<Outage> outages,
            BooleanSupplier cancelled) {
        if (days < 1 || days > MOST_DAYS) {
            throw new IllegalArgumentException("days is " + days + "; accepted is 1 to " + MOST_DAYS);
        }
        OverheadTank tank = system.tank();
        if (!(volumeM3 >= tank.deadVolumeM3() && volumeM3 <= tank.capacityM3())) {
            throw new IllegalArgumentException("volumeM3 is " + volumeM3 + " m3; accepted is the dead volume of "
                    + tank.deadVolumeM3() + " m3 to the capacity of " + tank.capacityM3() + " m3");
        }
        return new Account(system, volumeM3, List.copyOf(outages)).run(days * DayPattern.DAY_S, cancelled);
    }

    /**
     * The volume at midnight once days have become alike.
     *
     * @param system the tank, pump and draw; the tank begins at its stopping mark
     * @param days days to wait [d], 1 to 366
     */
    public static double settledVolumeM3(OverheadSystem system, int days, BooleanSupplier cancelled) {
        return run(system, system.tank().stopVolumeM3(), days, List.of(), cancelled).endVolumeM3();
    }

    /** Sums of one run. */
    private static final class Account {

        private final OverheadEvents events;
        private final double startVolumeM3;
        private final List<Double> pumpStartsS = new ArrayList<>();
        private final List<Corner> trace = new ArrayList<>();
        private double askedM3;
        private double suppliedM3;
        private double pumpedM3;
        private double dryS;
        private double pumpRunS;
        private double lowestM3;
        private double lowestS;

        Account(OverheadSystem system, double volumeM3, List<Outage> outages) {
            events = new OverheadEvents(system, 0, volumeM3, false, outages);
            startVolumeM3 = volumeM3;
            lowestM3 = volumeM3;
            trace.add(new Corner(0, volumeM3, false));
        }

        OverheadResult run(double endS, BooleanSupplier cancelled) {
            boolean pumping = false;
            for (int event = 0; events.timeS < endS; event++) {
                if (event % EVENTS_BETWEEN_POLLS == 0 && cancelled.getAsBoolean()) {
                    throw new CancellationException("the run of the overhead tank was cancelled");
                }
                double beginS = events.timeS;
                events.next(endS);
                if (events.pumpedM3PerS > 0 && !pumping) {
                    pumpStartsS.add(beginS);
                }
                pumping = events.pumpedM3PerS > 0;
                add(pumping);
            }
            return new OverheadResult(endS, startVolumeM3, events.volumeM3, askedM3, suppliedM3, pumpedM3, dryS,
                    pumpRunS, pumpStartsS, lowestM3, lowestS, trace);
        }

        private void add(boolean pumping) {
            double durationS = events.durationS;
            askedM3 += events.askedM3PerS * durationS;
            suppliedM3 += events.suppliedM3PerS * durationS;
            pumpedM3 += events.pumpedM3PerS * durationS;
            dryS += events.suppliedM3PerS < events.askedM3PerS ? durationS : 0;
            pumpRunS += pumping ? durationS : 0;
            if (events.volumeM3 < lowestM3) {
                lowestM3 = events.volumeM3;
                lowestS = events.timeS;
            }
            trace.add(new Corner(events.timeS, events.volumeM3, pumping));
        }
    }
}
