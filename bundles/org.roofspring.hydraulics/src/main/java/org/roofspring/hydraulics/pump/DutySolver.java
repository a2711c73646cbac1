package org.roofspring.hydraulics.pump;

import java.util.ArrayList;
import java.util.List;

import org.roofspring.hydraulics.internal.Require;
import org.roofspring.hydraulics.internal.Roots;

/**
 * Finds every intersection of a pump curve with a system curve.
 *
 * <p>The head of the system never falls as the flow rises, and between two measured points the curve of the pump either
 * falls or rises all along. Where it falls the two can meet once at most, and a change of sign between the points
 * tells. Where it rises (the unstable branch of a humped curve) the piece is halved again and again; a part is dropped
 * only when the bounds of both curves over it show that they cannot meet. Each change of sign is then closed in on by
 * bracketed root finding to the last digits. Two crossings nearer to each other than 1/4096 of the way between two
 * measured points on a rising piece may pass unseen.
 */
public final class DutySolver {
    private static final int HALVINGS = 12;

    private final PumpSet pumps;
    private final SystemCurve system;
    private final List<DutyPoint> points = new ArrayList<>();

    private DutySolver(PumpSet pumps, SystemCurve system) {
        this.pumps = Require.present("pumps", pumps);
        this.system = Require.present("system curve", system);
    }

    /** Where these pumps settle on this system, or why they do not. */
    public static DutyOutcome solve(PumpSet pumps, SystemCurve system) {
        return new DutySolver(pumps, system).outcome();
    }

    private DutyOutcome outcome() {
        int last = pumps.curve().points().size() - 1;
        Place first = atPoint(0);
        Place end = atPoint(last);
        if (pumps.curve().falls()) {
            bisectPoints(0, first, last, end);
        } else {
            scanPoints(first, last, end);
        }
        if (!points.isEmpty()) {
            return new DutyOutcome.Meets(points, first.surplus(), end.surplus());
        }
        if (end.surplus()) {
            return new DutyOutcome.RunsOut(end.flowM3PerS, end.pumpM, end.systemM);
        }
        return first.flowM3PerS > 0 ? new DutyOutcome.BelowFirstPoint(first.flowM3PerS, first.pumpM, first.systemM)
                : new DutyOutcome.StaticHeadAboveShutOff(system.staticHeadM(), first.pumpM);
    }

    /** On a curve that falls all along there is one crossing at most: halves the points between which it can be. */
    private void bisectPoints(int low, Place left, int high, Place right) {
        if (left.surplus() == right.surplus()) {
            return;
        }
        if (high - low == 1) {
            addCrossing(left, right);
            return;
        }
        int middle = (low + high) / 2;
        Place between = atPoint(middle);
        if (between.surplus() == left.surplus()) {
            bisectPoints(middle, between, high, right);
        } else {
            bisectPoints(low, left, middle, between);
        }
    }

    private void scanPoints(Place first, int last, Place end) {
        Place left = first;
        for (int i = 1; i <= last; i++) {
            Place right = i == last ? end : atPoint(i);
            if (right.pumpM > left.pumpM) {
                exploreRising(left, right, HALVINGS);
            } else {
                addCrossing(left, right);
            }
            left = right;
        }
    }

    private void exploreRising(Place left, Place right, int halvings) {
        if (left.pumpM > right.systemM || right.pumpM < left.systemM) {
            return;
        }
        if (halvings == 0) {
            addCrossing(left, right);
            return;
        }
        Place middle = at((left.flowM3PerS + right.flowM3PerS) / 2);
        exploreRising(left, middle, halvings - 1);
        exploreRising(middle, right, halvings - 1);
    }

    private void addCrossing(Place left, Place right) {
        if (left.surplus() == right.surplus()) {
            return;
        }
        double flowM3PerS = Roots.bracketed(flow -> pumps.headM(flow) - system.headM(flow), left.flowM3PerS,
                left.pumpM - left.systemM, right.flowM3PerS, right.pumpM - right.systemM);
        if (flowM3PerS > 0) {
            points.add(DutyPoint.of(pumps, system, flowM3PerS, left.surplus()));
        }
    }

    private Place atPoint(int index) {
        return at(pumps.setFlowM3PerS(pumps.curve().points().get(index).flowM3PerS()));
    }

    private Place at(double flowM3PerS) {
        return new Place(flowM3PerS, pumps.headM(flowM3PerS), system.headM(flowM3PerS));
    }

    /** Heads of pump and system at one flow. */
    private record Place(double flowM3PerS, double pumpM, double systemM) {
        boolean surplus() {
            return pumpM > systemM;
        }
    }
}
