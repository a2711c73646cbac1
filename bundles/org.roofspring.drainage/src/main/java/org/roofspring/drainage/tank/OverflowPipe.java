package org.roofspring.drainage.tank;

import org.roofspring.drainage.internal.Channel;
import org.roofspring.drainage.internal.Require;
import org.roofspring.drainage.internal.Root;

/**
 * A round pipe through the tank's wall, short and falling freely outside. While its mouth is not drowned the flow is
 * critical in it: {@code h = y + (1 + Ke) A / (2 B)} for a depth y with area A and surface width B. Drowned, it acts as
 * an orifice, {@code Q = Cd A0 sqrt(2 g (h - D/2))}. The lesser of both counts. (V. T. Chow, Open-Channel Hydraulics,
 * McGraw-Hill 1959, culverts with inlet control; from memory.)
 *
 * @param diameterM      inside, from 0.02 to 1 m
 * @param entryLossRatio Ke, loss at the mouth over the velocity head, from 0 to 1; 0.5 for a square edge
 */
public record OverflowPipe(double diameterM, double entryLossRatio) {
    /** Square-edged mouth. */
    public static final double SQUARE_EDGE_LOSS_RATIO = 0.5;

    private static final double ORIFICE_DISCHARGE_RATIO = 0.6;
    private static final double MOST_HEAD_M = 10;
    /** Below this, water does not run. */
    private static final double NO_HEAD_M = 1e-9;
    /** So near to full the velocity head is beyond any accepted head. */
    private static final double ALMOST_FULL = Math.PI - 1e-6;

    public OverflowPipe {
        Require.range("diameterM", diameterM, 0.02, 1, "an overflow bore from 0.02 to 1 m");
        Require.share("entryLossRatio", entryLossRatio);
    }

    /** With a square-edged mouth. */
    public OverflowPipe(double diameterM) {
        this(diameterM, SQUARE_EDGE_LOSS_RATIO);
    }

    /**
     * Flow [m3/s] under a level of still water in the tank.
     *
     * @param headM over the lowest point of the pipe's mouth, from 0 to 10 m
     */
    public double flowM3PerS(double headM) {
        Require.range("headM", headM, 0, MOST_HEAD_M, "a depth from 0 to 10 m");
        if (headM < NO_HEAD_M) {
            return 0;
        }
        double free = freeFlow(headM);
        if (headM < diameterM) {
            return free;
        }
        double area = Math.PI / 4 * diameterM * diameterM;
        double drowned = ORIFICE_DISCHARGE_RATIO * area * Math.sqrt(2 * Channel.GRAVITY * (headM - diameterM / 2));
        return Math.min(free, drowned);
    }

    private double freeFlow(double headM) {
        // half the angle at the centre that the water wets; the head grows without bound as the pipe fills
        double angle = Root.between(0, ALMOST_FULL, a -> a == 0 ? -headM
                : diameterM / 2 * (1 - Math.cos(a)) + (1 + entryLossRatio) * area(a) / (2 * surfaceWidth(a)) - headM);
        double area = area(angle);
        return area == 0 ? 0 : area * Math.sqrt(Channel.GRAVITY * area / surfaceWidth(angle));
    }

    private double area(double angle) {
        return diameterM * diameterM / 4 * (angle - Math.sin(angle) * Math.cos(angle));
    }

    private double surfaceWidth(double angle) {
        return diameterM * Math.sin(angle);
    }
}
