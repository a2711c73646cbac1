package org.roofspring.hydraulics.gravity;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.roofspring.hydraulics.HeadLoss;
import org.roofspring.hydraulics.PipeRun;
import org.roofspring.hydraulics.WaterProperties;
import org.roofspring.hydraulics.internal.Roots;

/**
 * All outlets in use drawing at once.
 *
 * <p>For the flows q of the outlets, each not below nil, the head balance of outlet i is
 * G_i(q) = (losses of the reaches on its way, each at the sum of the flows it carries) + (loss of the outlet) - (head
 * of the tank over it); G_i = 0 where it runs, G_i >= 0 where it does not. G is the gradient of a convex function (the
 * "content" of the network: Cherry 1951, Collins et al. 1978, from memory), since no loss falls as flow rises, so there
 * is one answer, and Newton's method with a line search along each step finds it from anywhere. Outlets at nil flow are
 * held there while their balance says so.
 */
final class Draw {
    private static final double FINEST_HEAD_M = 1e-10;
    /** Accepted where the flows cannot move by a last digit any more. */
    private static final double COARSEST_HEAD_M = 1e-7;
    private static final int MOST_STEPS = 500;
    private static final double TINY_FLOW_M3_PER_S = 1e-9;
    /** Keeps the matrix positive where neither pipe nor tap resists a first trickle [m per m3/s]. */
    private static final double LEAST_SLOPE = 1e-6;

    private final GravityTree tree;
    private final GravityState state;
    private final List<Outlet> outlets;
    private final List<HeadLoss> reachLosses = new ArrayList<>();
    /** For each reach the outlets that draw through it. */
    private final int[][] drawers;
    private final double[] headOverOutlet;

    Draw(GravityTree tree, GravityState state, List<Outlet> outlets) {
        this.tree = tree;
        this.state = state;
        this.outlets = outlets;
        WaterProperties water = WaterProperties.at(state.temperatureC());
        List<List<Reach>> ways = outlets.stream().map(outlet -> tree.wayTo(outlet.node())).toList();
        drawers = new int[tree.reaches().size()][];
        for (int r = 0; r < drawers.length; r++) {
            Reach reach = tree.reaches().get(r);
            reachLosses.add(reach.carrying(water, state.worn()));
            drawers[r] = IntStream.range(0, outlets.size()).filter(i -> ways.get(i).contains(reach))
                    .toArray();
        }
        headOverOutlet = outlets.stream()
                .mapToDouble(outlet -> state.waterLevelM() - tree.node(outlet.node()).elevationM()).toArray();
    }

    GravityFlow solve(BooleanSupplier cancelled) {
        double[] flows = start();
        for (int step = 0; step < MOST_STEPS; step++) {
            if (cancelled.getAsBoolean()) {
                throw new CancellationException("the gravity supply was not solved to its end");
            }
            double[] balance = balance(flows);
            int[] free = free(flows, balance);
            double worstM = Arrays.stream(free).mapToDouble(i -> Math.abs(balance[i])).max().orElse(0);
            if (worstM <= FINEST_HEAD_M
                    || !advance(flows, newtonDirection(flows, balance, free)) && worstM <= COARSEST_HEAD_M) {
                return result(flows);
            }
        }
        throw new ArithmeticException("the flows of the gravity supply did not settle in " + MOST_STEPS + " steps");
    }

    /** Each outlet that can run alone begins with its share of what it would then get. */
    private double[] start() {
        double[] flows = new double[outlets.size()];
        for (int i = 0; i < flows.length; i++) {
            if (headOverOutlet[i] > 0) {
                flows[i] = alone(i) / flows.length;
            }
        }
        return flows;
    }

    private double alone(int outlet) {
        double[] flows = new double[outlets.size()];
        double high = TINY_FLOW_M3_PER_S;
        double atHigh;
        while ((atHigh = balanceWith(flows, outlet, high)) < 0) {
            if (high == PipeRun.HIGHEST_FLOW_M3_PER_S) {
                throw new IllegalArgumentException("outlet \"" + outlets.get(outlet).id()
                        + "\" must take more head the more it runs, and does not");
            }
            high = Math.min(PipeRun.HIGHEST_FLOW_M3_PER_S, high * 8);
        }
        return Roots.bracketed(flow -> balanceWith(flows, outlet, flow), 0, -headOverOutlet[outlet], high, atHigh);
    }

    private double balanceWith(double[] flows, int outlet, double flow) {
        flows[outlet] = flow;
        return balance(flows)[outlet];
    }

    private double[] balance(double[] flows) {
        double[] balance = new double[flows.length];
        for (int i = 0; i < flows.length; i++) {
            balance[i] = outlets.get(i).tap().headM(flows[i]) - headOverOutlet[i];
        }
        for (int r = 0; r < drawers.length; r++) {
            double lossM = reachLosses.get(r).headM(carried(r, flows));
            for (int i : drawers[r]) {
                balance[i] += lossM;
            }
        }
        return balance;
    }

    private double carried(int reach, double[] flows) {
        double sum = 0;
        for (int i : drawers[reach]) {
            sum += flows[i];
        }
        return Math.min(sum, PipeRun.HIGHEST_FLOW_M3_PER_S);
    }

    private static int[] free(double[] flows, double[] balance) {
        return IntStream.range(0, flows.length).filter(i -> flows[i] > 0 || balance[i] < 0).toArray();
    }

    /**
     * Newton's step for the free outlets. One that is at nil and would go below stays there; the rest still leads
     * downhill, since that outlet's part led uphill (Bertsekas, SIAM J. Control Optim. 20, 1982).
     */
    private double[] newtonDirection(double[] flows, double[] balance, int[] free) {
        int[] placeOf = new int[flows.length];
        Arrays.fill(placeOf, -1);
        double[][] slopes = new double[free.length][free.length];
        for (int k = 0; k < free.length; k++) {
            placeOf[free[k]] = k;
            slopes[k][k] = LEAST_SLOPE + slope(outlets.get(free[k]).tap(), flows[free[k]]);
        }
        for (int r = 0; r < drawers.length; r++) {
            double slope = slope(reachLosses.get(r), carried(r, flows));
            for (int i : drawers[r]) {
                for (int j : drawers[r]) {
                    if (placeOf[i] >= 0 && placeOf[j] >= 0) {
                        slopes[placeOf[i]][placeOf[j]] += slope;
                    }
                }
            }
        }
        double[] right = Arrays.stream(free).mapToDouble(i -> -balance[i]).toArray();
        double[] solved = new CholeskyDecomposition(MatrixUtils.createRealMatrix(slopes), 1e-10, 0).getSolver()
                .solve(new ArrayRealVector(right)).toArray();
        double[] direction = new double[flows.length];
        for (int k = 0; k < free.length; k++) {
            boolean outOfBounds = flows[free[k]] == 0 && solved[k] < 0;
            direction[free[k]] = outOfBounds ? 0 : solved[k];
        }
        return direction;
    }

    private static double slope(HeadLoss loss, double flow) {
        if (flow < TINY_FLOW_M3_PER_S) {
            return loss.headM(TINY_FLOW_M3_PER_S) / TINY_FLOW_M3_PER_S;
        }
        double step = 1e-5 * flow;
        double above = Math.min(flow + step, PipeRun.HIGHEST_FLOW_M3_PER_S);
        return (loss.headM(above) - loss.headM(flow - step)) / (above - flow + step);
    }

    /** Moves the flows to the lowest point along the step; false where the step is lost in rounding. */
    private boolean advance(double[] flows, double[] direction) {
        double longest = 1;
        int stopped = -1;
        for (int i = 0; i < flows.length; i++) {
            if (direction[i] < 0 && flows[i] + longest * direction[i] < 0) {
                longest = -flows[i] / direction[i];
                stopped = i;
            }
        }
        double[] before = flows.clone();
        double slopeAtStart = slopeAlong(before, direction, 0);
        double slopeAtEnd = slopeAlong(before, direction, longest);
        double share = slopeAtEnd <= 0 ? longest : slopeAtStart >= 0 ? 0
                : Roots.bracketed(at -> slopeAlong(before, direction, at), 0, slopeAtStart, longest, slopeAtEnd);
        boolean moved = false;
        for (int i = 0; i < flows.length; i++) {
            flows[i] = i == stopped && share == longest ? 0 : Math.max(0, before[i] + share * direction[i]);
            moved |= Math.abs(flows[i] - before[i]) > 4 * Math.ulp(before[i]);
        }
        return moved;
    }

    private double slopeAlong(double[] flows, double[] direction, double share) {
        double[] moved = new double[flows.length];
        for (int i = 0; i < flows.length; i++) {
            moved[i] = Math.min(PipeRun.HIGHEST_FLOW_M3_PER_S, Math.max(0, flows[i] + share * direction[i]));
        }
        double[] balance = balance(moved);
        double sum = 0;
        for (int i = 0; i < flows.length; i++) {
            sum += balance[i] * direction[i];
        }
        return sum;
    }

    private GravityFlow result(double[] flows) {
        Map<String, Double> flowByReach = new LinkedHashMap<>();
        for (int r = 0; r < drawers.length; r++) {
            flowByReach.put(tree.reaches().get(r).id(), carried(r, flows));
        }
        return GravityFlow.of(tree, state, flowByReach, outlets, flows);
    }
}
