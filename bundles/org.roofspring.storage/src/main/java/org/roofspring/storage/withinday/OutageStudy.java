package org.roofspring.storage.withinday;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;

/**
 * Whether an overhead tank bridges an outage whenever it begins.
 *
 * <p>The level comes down to the mark at which the pump starts at some moment of the day; there may or may not be power
 * then, and taps may draw more than the pump lifts. At that moment or later, while the pump fills the tank, the outage
 * begins. The tank is run, event by event, until the pump has filled it. It bridges the outage when no tap runs dry on
 * the way, whatever the two moments, and when none does without an outage either. At all other times it holds more.
 *
 * <p>The first moment is taken where draw or power changes, or just as the outage begins; the outage begins, or ends,
 * where draw or power changes. Between those the volume left changes in straight lines, so the worst is among them.
 */
public final class OutageStudy {

    private static final double RESOLUTION = 1e-6;
    private static final double LONGEST_OUTAGE_S = 366 * DayPattern.DAY_S;
    private static final double RECOVERY_S = 3 * DayPattern.DAY_S;
    private static final double SMALLEST_M3 = 1e-6;
    private static final double MAX_M3 = 2_000_000;

    private OutageStudy() {
    }

    /**
     * The moments of a failure.
     *
     * @param atMarkS the level comes down to the starting mark [s from midnight]
     * @param outageS the outage begins [s from midnight of the same day], then or later
     */
    public record HardMoment(double atMarkS, double outageS) {
    }

    /**
     * Moments at which an outage empties the tank; empty when it bridges them all.
     *
     * @param system the tank, pump and draw
     * @param outageS length of the outage [s], 0 to 366 days
     * @param cancelled polled while running
     * @throws CancellationException when cancelled
     */
    public static Optional<HardMoment> failsAt(OverheadSystem system, double outageS, BooleanSupplier cancelled) {
        check(outageS);
        List<Double> changes = changes(system);
        for (double atMarkS : changes) {
            if (fails(system, atMarkS, new Outage(atMarkS, 0))) {
                return Optional.of(new HardMoment(atMarkS, atMarkS));
            }
        }
        TreeSet<Double> begins = new TreeSet<>(changes);
        changes.forEach(changeS -> begins.add(timeOfDay(changeS - outageS)));
        for (double beginS : begins) {
            if (cancelled.getAsBoolean()) {
                throw new CancellationException("the study of outages was cancelled");
            }
            if (fails(system, beginS, new Outage(beginS, outageS))) {
                return Optional.of(new HardMoment(beginS, beginS));
            }
            for (double atMarkS : changes) {
                double laterS = beginS < atMarkS ? beginS + DayPattern.DAY_S : beginS;
                if (fails(system, atMarkS, new Outage(laterS, outageS))) {
                    return Optional.of(new HardMoment(atMarkS, laterS));
                }
            }
        }
        return Optional.empty();
    }

    /**
     * Longest outage that the tank bridges whenever it begins, to a second; empty when taps run dry without one, and
     * 366 days where it bridges as much.
     */
    public static OptionalDouble longestBridgedS(OverheadSystem system, BooleanSupplier cancelled) {
        if (failsAt(system, 0, cancelled).isPresent()) {
            return OptionalDouble.empty();
        }
        double bridgedS = 0;
        double failingS = LONGEST_OUTAGE_S + 1;
        while (failingS - bridgedS > 1) {
            double middleS = failingS > LONGEST_OUTAGE_S ? LONGEST_OUTAGE_S : Math.floor((bridgedS + failingS) / 2);
            if (failsAt(system, middleS, cancelled).isEmpty()) {
                bridgedS = middleS;
            } else {
                failingS = middleS;
            }
        }
        return OptionalDouble.of(bridgedS);
    }

    /**
     * Smallest tank of the same proportions that bridges an outage, by halving: a larger one starts with more, and the
     * pump then fills it to more.
     *
     * @param system the proportions of the tank, the pump and the draw
     * @param outageS length of the outage [s], 0 to 366 days
     * @param cancelled polled while running
     * @throws CancellationException when cancelled
     */
    public static OutageAnswer smallestTank(OverheadSystem system, double outageS, BooleanSupplier cancelled) {
        check(outageS);
        OverheadTank shape = system.tank();
        double dayM3 = system.draw().volumeM3PerDay();
        double aboveStart = (shape.startVolumeM3() - shape.deadVolumeM3()) / shape.capacityM3();
        if (dayM3 == 0) {
            return new OutageAnswer.None(OutageAnswer.Reason.NO_DRAW);
        }
        if (system.pump().volumeM3PerDay() <= dayM3) {
            return new OutageAnswer.None(OutageAnswer.Reason.PUMP_TOO_WEAK);
        }
        if (aboveStart == 0) {
            return new OutageAnswer.None(OutageAnswer.Reason.NOTHING_ABOVE_START_LEVEL);
        }
        // a day's draw more than the outage takes, and one for the hours without power
        double enough = (outageS / DayPattern.DAY_S + 3) * dayM3 / aboveStart;
        double swing = (shape.stopVolumeM3() - shape.startVolumeM3()) / shape.capacityM3();
        double tooSmall = Math.max(SMALLEST_M3, 1.001 / swing
                * Math.max(system.pump().largestFlowM3PerS(), system.draw().largestFlowM3PerS()));
        enough = Math.max(enough, tooSmall);
        if (enough > MAX_M3 || failsAt(system.scaledTo(enough), outageS, cancelled).isPresent()) {
            return new OutageAnswer.None(OutageAnswer.Reason.BEYOND_RANGE);
        }
        HardMoment worst = new HardMoment(0, 0);
        while (enough - tooSmall > RESOLUTION * enough) {
            double middle = (tooSmall + enough) / 2;
            Optional<HardMoment> fails = failsAt(system.scaledTo(middle), outageS, cancelled);
            if (fails.isPresent()) {
                tooSmall = middle;
                worst = fails.get();
            } else {
                enough = middle;
            }
        }
        return new OutageAnswer.Smallest(shape.scaledTo(enough), worst);
    }

    private static void check(double outageS) {
        if (!(outageS >= 0 && outageS <= LONGEST_OUTAGE_S)) {
            throw new IllegalArgumentException(
                    "outageS is " + outageS + " s; accepted is 0 to " + LONGEST_OUTAGE_S + " s, 366 days");
        }
    }

    /** Moments of the day at which draw or power changes. */
    private static List<Double> changes(OverheadSystem system) {
        TreeSet<Double> changes = new TreeSet<>();
        for (DayPattern pattern : List.of(system.pump(), system.draw())) {
            for (int step = 0; step < pattern.steps(); step++) {
                changes.add(pattern.stepBeginS(step));
            }
        }
        return List.copyOf(changes);
    }

    private static double timeOfDay(double timeS) {
        return timeS - Math.floor(timeS / DayPattern.DAY_S) * DayPattern.DAY_S;
    }

    /** Runs from the starting mark at a moment until the pump has filled the tank again. */
    private static boolean fails(OverheadSystem system, double momentS, Outage outage) {
        OverheadEvents events = new OverheadEvents(system, momentS, system.tank().startVolumeM3(), true,
                List.of(outage));
        double endS = outage.endS() + RECOVERY_S;
        while (events.timeS < endS) {
            events.next(endS);
            if (events.suppliedM3PerS < events.askedM3PerS && events.durationS > 0) {
                return true;
            }
            if (events.volumeM3 >= system.tank().stopVolumeM3()) {
                return false;
            }
        }
        return false;
    }
}
