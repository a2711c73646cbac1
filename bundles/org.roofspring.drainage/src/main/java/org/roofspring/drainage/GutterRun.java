package org.roofspring.drainage;

import org.roofspring.drainage.internal.Require;
import org.roofspring.drainage.internal.Root;
import org.roofspring.drainage.internal.SurfaceSolver;

/**
 * A gutter with the outlet and downpipe at its end, which may serve a like gutter on their other side too.
 *
 * @param gutter   from its closed end, or the water-parting, to the outlet
 * @param outlet   in its sole
 * @param downpipe below the outlet
 * @param sides    from which gutters reach the outlet, 1 or 2
 */
public record GutterRun(Gutter gutter, GutterOutlet outlet, Downpipe downpipe, int sides) {
    private static final double ENOUGH = 1e-8;

    /** What limits a run. */
    public enum Limit {
        /** The gutter, with its outlet free. */
        GUTTER,
        /** The outlet, which backs the water up to the brim of the gutter. */
        OUTLET,
        /** The downpipe. */
        DOWNPIPE
    }

    /**
     * What a run carries, each a flow along one gutter [m3/s].
     *
     * @param gutter         with a free outlet
     * @param outletM3PerS   at which the outlet holds the water up to the brim somewhere along the gutter
     * @param downpipeM3PerS the share of the downpipe's capacity that falls to one gutter
     */
    public record Capacity(GutterCapacity gutter, double outletM3PerS, double downpipeM3PerS) {
        /** The least of the three [m3/s]. */
        public double flowM3PerS() {
            return Math.min(gutter.capacityM3PerS(), Math.min(outletM3PerS, downpipeM3PerS));
        }

        /** Which of the three it is. */
        public Limit limit() {
            double least = flowM3PerS();
            if (gutter.capacityM3PerS() == least) {
                return Limit.GUTTER;
            }
            return outletM3PerS == least ? Limit.OUTLET : Limit.DOWNPIPE;
        }
    }

    public GutterRun {
        Require.given("gutter", gutter);
        Require.given("outlet", outlet);
        Require.given("downpipe", downpipe);
        Require.range("sides", sides, 1, 2, "1 or 2");
    }

    /** What the run carries. */
    public Capacity capacity() {
        GutterCapacity free = GutterCapacity.of(gutter);
        return new Capacity(free, backedUp(free), downpipe.capacityM3PerS() / sides);
    }

    /** The flow at which the outlet holds the water up to the brim: that of a free outlet where it holds none up. */
    private double backedUp(GutterCapacity free) {
        double freeFlow = free.variedFlowM3PerS();
        WaterSurface surface = new SurfaceSolver(gutter, freeFlow, outletDepth(freeFlow)).solve();
        if (surface.deepest().depthM() == free.brimFullSurface().deepest().depthM()) {
            return freeFlow;
        }
        double brim = gutter.section().depthM();
        return Root.above(0, StandardGutter.frictionlessM3PerS(gutter.section()), ENOUGH, flow -> flow == 0
                ? -brim : new SurfaceSolver(gutter, flow, outletDepth(flow)).solve().deepest().depthM() - brim);
    }

    /** The water surface for a flow along the gutter [m3/s], with what the outlet does to it. */
    public WaterSurface surface(double flowM3PerS) {
        return WaterSurface.of(gutter, flowM3PerS, Math.min(10, outletDepth(flowM3PerS)));
    }

    private double outletDepth(double flowM3PerS) {
        return outlet.headM(sides * flowM3PerS);
    }
}
