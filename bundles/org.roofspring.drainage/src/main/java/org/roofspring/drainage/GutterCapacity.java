package org.roofspring.drainage;

import java.util.OptionalDouble;
import org.roofspring.drainage.internal.Channel;
import org.roofspring.drainage.internal.Require;
import org.roofspring.drainage.internal.Root;
import org.roofspring.drainage.internal.SurfaceSolver;

/**
 * What a gutter with a free outlet carries before it spills, by the standard's formula and by the flow solved along it.
 *
 * <p>The headline {@link #capacityM3PerS} is the standard's for a nominally level gutter (up to 3 mm per metre), since
 * the standard holds for gutters as they are hung, and the solved flow from 10 mm per metre on, where the standard's
 * table ends. In between, the weight of the solved flow grows in proportion to the slope, so that the capacity never
 * leaps as the slope changes: the gentler the slope, the less of it survives sagging brackets.
 *
 * <p>The solved flow is brim-full at its deepest place and carries no allowance for dips, joints and leaves; the
 * standard's formula has one of a tenth. A wise designer keeps the utilisation of a sloping gutter at 0.9 or less.
 *
 * @param gutter             appraised
 * @param capacityM3PerS     the headline
 * @param standardM3PerS     by the standard's formula ({@link StandardGutter})
 * @param variedFlowM3PerS   at which the solved water surface just touches the brim ({@link WaterSurface})
 * @param uniformFullM3PerS  brim-full flow of even depth on the slope (Manning), which the solved flow approaches in a
 *                           very long gutter; none when level
 * @param brimFullSurface    the solved water surface at {@code variedFlowM3PerS}
 */
public record GutterCapacity(Gutter gutter, double capacityM3PerS, double standardM3PerS, double variedFlowM3PerS,
        OptionalDouble uniformFullM3PerS, WaterSurface brimFullSurface) {
    /** From this slope on the headline is the solved flow alone. */
    public static final double SLOPING_RATIO = 0.01;

    /** Relative accuracy of the solved flow, well within that of the solver. */
    private static final double ENOUGH = 1e-8;

    /** Appraises a gutter with a free outlet. */
    public static GutterCapacity of(Gutter gutter) {
        Require.given("gutter", gutter);
        double standard = StandardGutter.capacityM3PerS(gutter);
        double varied = brimFullFlow(gutter);
        double share = Math.clamp((gutter.slopeRatio() - StandardGutter.NOMINALLY_LEVEL_RATIO)
                / (SLOPING_RATIO - StandardGutter.NOMINALLY_LEVEL_RATIO), 0, 1);
        OptionalDouble uniform = gutter.slopeRatio() == 0 ? OptionalDouble.empty()
                : OptionalDouble.of(Channel.of(gutter).uniformFlow(gutter.section().depthM()));
        return new GutterCapacity(gutter, (1 - share) * standard + share * varied, standard, varied, uniform,
                WaterSurface.of(gutter, varied));
    }

    private static double brimFullFlow(Gutter gutter) {
        double brim = gutter.section().depthM();
        return Root.above(0, StandardGutter.frictionlessM3PerS(gutter.section()), ENOUGH, flow -> flow == 0 ? -brim
                : new SurfaceSolver(gutter, flow, 0).solve().deepest().depthM() - brim);
    }

    /**
     * Flow that arrives over what the gutter carries; above 1 it spills.
     *
     * @param flowM3PerS from 0 to 1000 m3/s
     */
    public double utilisation(double flowM3PerS) {
        return Require.range("flowM3PerS", flowM3PerS, 0, 1000, "a flow from 0 to 1000 m3/s") / capacityM3PerS;
    }
}
