package org.roofspring.drainage.internal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.roofspring.drainage.Gutter;
import org.roofspring.drainage.GutterSection;
import org.roofspring.drainage.WaterSurface;
import org.roofspring.drainage.WaterSurface.Control;
import org.roofspring.drainage.WaterSurface.Station;

/**
 * Solves the water surface along one gutter for one flow. Marches the conservative equation, slow flow from its
 * control upstream, fast flow from its control downstream. In this form the equation has no singularity at critical
 * depth, and each step has one root on the branch that is marched. Steps are of the two-stage diagonally implicit
 * Runge-Kutta rule of order 2 (R. Alexander, SIAM Journal on Numerical Analysis 14, 1977; from memory), which damps
 * what a long step cannot follow: the depth of a thin film clings to that of uniform flow.
 */
public final class SurfaceSolver {
    private static final int STEPS = 200;
    private static final int SCAN_STEPS = 60;
    /** The search for a control within starts at this share of the length: nearer, no water has gathered yet. */
    private static final double SCAN_START = 1e-6;
    /** Specific forces that differ by less than this share are the same but for rounding. */
    private static final double ROUNDING = 1e-12;
    /** Relative accuracy of a depth. */
    private static final double FINE = 1e-12;
    private static final double LAST_STEP = 1e-9;
    /** A trial keeps this share away from critical depth, where the surplus is level. */
    private static final double APART = 1e-6;
    private static final int MOST_TRIALS = 200;
    /** Share of a step in each of the two stages. */
    private static final double STAGE = 1 - Math.sqrt(0.5);

    private final Gutter gutter;
    private final Channel channel;
    private final double length;
    private final double flow;
    private final double outletDepth;
    private double lastFlow;
    private double lastCritical;

    public SurfaceSolver(Gutter gutter, double flowM3PerS, double outletDepthM) {
        this.gutter = gutter;
        this.channel = Channel.of(gutter);
        this.length = gutter.lengthM();
        this.flow = flowM3PerS;
        this.outletDepth = outletDepthM;
        this.lastFlow = flowM3PerS;
        this.lastCritical = channel.criticalDepth(flowM3PerS);
    }

    public WaterSurface solve() {
        double within = controlWithin();
        return Double.isNaN(within) ? governedByOutlet() : governedWithin(within);
    }

    private double flowAt(double distance) {
        return flow * (distance / length);
    }

    private double criticalDepthAt(double distance) {
        return channel.criticalDepth(flowAt(distance));
    }

    /**
     * How fast the specific force of a critical flow would outgrow the least possible one: negative where the flow,
     * were it critical, would have to be slow upstream; positive where it can run on fast [m3 per m].
     */
    private double excess(double distance) {
        double q = flowAt(distance);
        double depth = channel.criticalDepth(q);
        return channel.drive(depth, q) - 2 * q * (flow / length) / (Channel.GRAVITY * channel.area(depth));
    }

    /** Distance of the first section at which the flow can turn from slow to fast; NaN when there is none. */
    private double controlWithin() {
        if (gutter.slopeRatio() == 0) {
            return Double.NaN;
        }
        double near = SCAN_START * length;
        for (int i = 1; i <= SCAN_STEPS; i++) {
            double far = length * Math.pow(SCAN_START, 1 - i / (double) SCAN_STEPS);
            if (excess(far) > 0) {
                while (excess(near) >= 0) {
                    near /= 10;
                }
                return Root.between(near, far, this::excess);
            }
            near = far;
        }
        return Double.NaN;
    }

    private WaterSurface governedByOutlet() {
        double critical = channel.criticalDepth(flow);
        boolean free = outletDepth <= critical;
        double[] distances = between(length, 0);
        double[] depths = slowFlow(distances, free ? critical : outletDepth);
        List<Station> stations = new ArrayList<>();
        addReversed(stations, distances, depths);
        return new WaterSurface(gutter, flow, stations, free ? Control.FREE_OUTFALL : Control.OUTLET, length,
                OptionalDouble.empty());
    }

    private WaterSurface governedWithin(double control) {
        double[] forward = between(control, length);
        double[] backward = reversed(forward);
        double[] fast = fastFlow(forward, criticalDepthAt(control));
        double[] slow = reversed(slowFlowFromOutlet(backward));
        if (!Double.isNaN(slow[0])) {
            return drowned(control, forward, slow);
        }
        double[] upstream = between(control, 0);
        List<Station> stations = new ArrayList<>();
        addReversed(stations, upstream, slowFlow(upstream, criticalDepthAt(control)));
        OptionalDouble jump = addFastThenSlow(stations, forward, fast, slow);
        return new WaterSurface(gutter, flow, stations, Control.WITHIN, control, jump);
    }

    /** Slow flow from the outlet reaches back over the section that would have been the control. */
    private WaterSurface drowned(double control, double[] forward, double[] slow) {
        double[] upstream = between(control, 0);
        List<Station> stations = new ArrayList<>();
        addReversed(stations, upstream, slowFlow(upstream, slow[0]));
        for (int i = 1; i < forward.length; i++) {
            stations.add(station(forward[i], slow[i]));
        }
        boolean free = outletDepth <= channel.criticalDepth(flow);
        return new WaterSurface(gutter, flow, stations, free ? Control.FREE_OUTFALL : Control.OUTLET, length,
                OptionalDouble.empty());
    }

    /** Slow flow that the outlet holds up, or that drops over a free outlet; NaN where there can be none. */
    private double[] slowFlowFromOutlet(double[] backward) {
        double critical = channel.criticalDepth(flow);
        if (outletDepth > critical) {
            return slowFlow(backward, outletDepth);
        }
        if (excess(length) < 0) {
            return slowFlow(backward, critical);
        }
        double[] none = new double[backward.length];
        Arrays.fill(none, Double.NaN);
        return none;
    }

    /**
     * Joins fast to slow flow at the section where both have the same specific force. Where neither could be followed,
     * the flow is critical to within the error of a step.
     */
    private OptionalDouble addFastThenSlow(List<Station> stations, double[] distances, double[] fast, double[] slow) {
        OptionalDouble jump = OptionalDouble.empty();
        boolean turned = false;
        for (int i = 1; i < distances.length; i++) {
            if (!turned && slowLead(distances[i], fast[i], slow[i]) >= 0) {
                turned = true;
                double before = slowLead(distances[i - 1], fast[i - 1], slow[i - 1]);
                if (!Double.isNaN(fast[i - 1])) {
                    double lead = slowLead(distances[i], fast[i], slow[i]);
                    double share = Double.isFinite(before - lead) ? before / (before - lead) : 0;
                    double distance = distances[i - 1] + share * (distances[i] - distances[i - 1]);
                    stations.add(station(distance, mix(fast[i - 1], fast[i], share)));
                    stations.add(station(distance, mix(slow[i - 1], slow[i], share)));
                    jump = OptionalDouble.of(distance);
                }
            }
            double depth = turned ? slow[i] : fast[i];
            stations.add(station(distances[i], Double.isNaN(depth) ? criticalDepthAt(distances[i]) : depth));
        }
        return jump;
    }

    /** Specific force of the slow flow less that of the fast one; infinite where either is missing. */
    private double slowLead(double distance, double fast, double slow) {
        if (Double.isNaN(slow)) {
            return Double.NEGATIVE_INFINITY;
        }
        if (Double.isNaN(fast)) {
            return Double.POSITIVE_INFINITY;
        }
        double q = flowAt(distance);
        return channel.specificForce(slow, q) - channel.specificForce(fast, q);
    }

    private static double mix(double first, double second, double share) {
        if (Double.isNaN(first)) {
            return second;
        }
        return Double.isNaN(second) ? first : first + share * (second - first);
    }

    /** Depths of slow flow at distances that run upstream; NaN beyond the place where it would turn fast. */
    private double[] slowFlow(double[] distances, double firstDepth) {
        return march(distances, firstDepth, true);
    }

    /** Depths of fast flow at distances that run downstream; NaN beyond the place where it would turn slow. */
    private double[] fastFlow(double[] distances, double firstDepth) {
        return march(distances, firstDepth, false);
    }

    private double[] march(double[] distances, double firstDepth, boolean slow) {
        double[] depths = new double[distances.length];
        Arrays.fill(depths, Double.NaN);
        depths[0] = firstDepth;
        for (int i = 1; i < distances.length && !Double.isNaN(depths[i - 1]); i++) {
            double start = distances[i - 1];
            double step = distances[i] - start;
            double force = channel.specificForce(depths[i - 1], flowAt(start));
            double between = start + STAGE * step;
            double stage = implicit(between, STAGE * step, force, depths[i - 1], slow);
            if (!Double.isNaN(stage)) {
                double pushed = (1 - STAGE) * step * channel.drive(stage, flowAt(between));
                depths[i] = implicit(distances[i], STAGE * step, force + pushed, stage, slow);
            }
            if (Double.isNaN(depths[i])) {
                // one implicit stage has a solution where a thin film runs dry within a step
                depths[i] = implicit(distances[i], step, force, depths[i - 1], slow);
            }
        }
        return depths;
    }

    /**
     * The depth on one branch at which the specific force is {@code force} more than what the drive at this depth
     * gives over {@code step}; NaN when the branch ends before.
     */
    private double implicit(double distance, double step, double force, double guess, boolean slow) {
        double q = flowAt(distance);
        double critical = critical(q);
        double atCritical = critical == 0 ? -force : surplus(channel.wetted(critical), q, step) - force;
        if (atCritical > ROUNDING * force) {
            return Double.NaN;
        }
        if (atCritical >= 0) {
            return critical;
        }
        return onBranch(q, step, force, critical, guess, slow);
    }

    private double surplus(GutterSection.Wetted water, double q, double step) {
        return Channel.specificForce(water, q) - step * channel.drive(water, q);
    }

    /** Critical depth, sought from that of the flow before, which is seldom far. */
    private double critical(double q) {
        if (q == 0) {
            return 0;
        }
        lastCritical = channel.criticalDepth(q, lastCritical * Math.sqrt(q / lastFlow));
        lastFlow = q;
        return lastCritical;
    }

    /**
     * Newton's method between bounds that close in, with halving where it would leave them. On either side of critical
     * depth the surplus leads away from zero once only.
     */
    private double onBranch(double q, double step, double force, double critical, double guess, boolean slow) {
        double below = critical;
        double beyond = slow ? Double.POSITIVE_INFINITY : 0;
        double depth = slow ? Math.max(guess, critical * (1 + APART)) : Math.min(guess, critical * (1 - APART));
        for (int i = 0; i < MOST_TRIALS; i++) {
            GutterSection.Wetted water = channel.wetted(depth);
            double over = surplus(water, q, step) - force;
            if (over < 0) {
                below = depth;
            } else {
                beyond = depth;
            }
            double growth = Channel.specificForceGrowth(water, q) - step * channel.driveGrowth(water, q);
            double next = depth - over / growth;
            boolean within = slow ? next > below && next < beyond : next < below && next > beyond;
            if (!within) {
                next = beyond == Double.POSITIVE_INFINITY ? critical + 2 * (depth - critical) : (below + beyond) / 2;
            }
            // a step of Newton's this small leaves an error of about its square
            if (over == 0 || Math.abs(next - depth) <= (within ? LAST_STEP : FINE) * depth) {
                return over == 0 ? depth : next;
            }
            depth = next;
        }
        throw new IllegalStateException("no depth for " + q + " m3/s in " + gutter);
    }

    private Station station(double distance, double depth) {
        double q = flowAt(distance);
        return new Station(distance, depth, q, q == 0 ? 0 : channel.froude(depth, q));
    }

    private void addReversed(List<Station> stations, double[] distances, double[] depths) {
        for (int i = distances.length - 1; i >= 0; i--) {
            if (Double.isNaN(depths[i])) {
                throw new IllegalStateException("no slow flow at " + distances[i] + " m of " + gutter + " with "
                        + flow + " m3/s");
            }
            stations.add(station(distances[i], depths[i]));
        }
    }

    /** Distances from {@code start} to {@code end}, close together at both, where the surface bends most. */
    private static double[] between(double start, double end) {
        double[] distances = new double[STEPS + 1];
        for (int i = 0; i <= STEPS; i++) {
            double s = i / (double) STEPS;
            distances[i] = start + (end - start) * s * s * (3 - 2 * s);
        }
        distances[STEPS] = end;
        return distances;
    }

    private static double[] reversed(double[] values) {
        double[] reversed = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            reversed[i] = values[values.length - 1 - i];
        }
        return reversed;
    }
}
