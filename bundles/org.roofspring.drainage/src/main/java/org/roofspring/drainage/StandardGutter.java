package org.roofspring.drainage;

import org.roofspring.drainage.internal.Channel;
import org.roofspring.drainage.internal.Require;
import org.roofspring.drainage.internal.Root;

/**
 * The empirical capacity of eaves gutters after EN 12056-3:2000, Gravity drainage systems inside buildings, part 3:
 * Roof drainage, layout and calculation. All of it is from memory: verify against the standard.
 *
 * <p>{@code QL = 0.9 QN FL}, where {@code QN = 2.78e-5 A^1.25} [L/s, mm2] for a half-round gutter. For rectangular and
 * trapezoidal gutters {@code QN = 3.48e-5 A^1.25 Fd Fs}; the standard gives the depth factor Fd and the shape factor Fs
 * as graphs. Here their product is taken from the frictionless level gutter (see {@link #frictionlessM3PerS}), scaled
 * to 1 for a section as deep as it is wide: with that scale both constants of the standard are the same 0.80 of the
 * frictionless flow, which is how the scale was found.
 */
public final class StandardGutter {
    /** Allowance of the standard for gutters that are not quite true. */
    public static final double DESIGN_RATIO = 0.9;
    /** Up to this slope the standard treats a gutter as nominally level. */
    public static final double NOMINALLY_LEVEL_RATIO = 0.003;
    /** Beyond so many depths of length the standard's table of factors ends. */
    public static final double TABLE_END = 500;

    private static final double HALF_ROUND = 2.78e-5;
    private static final double RECTANGULAR = 3.48e-5;

    /** Lengths in depths of water, and the factor for each slope in {@link #SLOPES}. */
    private static final double[] LENGTHS = {50, 75, 100, 125, 150, 175, 200, 225, 250, 275, 300, 325, 350, 375, 400,
        425, 450, 475, 500};
    private static final double[] SLOPES = {0.003, 0.004, 0.006, 0.008, 0.010};
    private static final double[] LEVEL_FACTORS = {1, .97, .93, .90, .86, .83, .80, .78, .77, .75, .73, .72, .70, .68,
        .67, .65, .63, .62, .60};
    private static final double[] FACTORS_4 = {1, 1.02, 1.03, 1.05, 1.07, 1.08, 1.10};
    private static final double[] FACTORS_6 = {1, 1.04, 1.08, 1.12, 1.17, 1.21, 1.25};
    private static final double[] FACTORS_8 = {1, 1.07, 1.13, 1.20, 1.27, 1.33, 1.40};
    private static final double[] FACTORS_10 = {1, 1.09, 1.18, 1.27, 1.37, 1.46, 1.55};
    private static final double[][] FACTORS = {LEVEL_FACTORS, FACTORS_4, FACTORS_6, FACTORS_8, FACTORS_10};

    private StandardGutter() {
    }

    /** Design capacity QL of a gutter with a free outlet [m3/s]. */
    public static double capacityM3PerS(Gutter gutter) {
        return DESIGN_RATIO * nominalM3PerS(gutter.section())
                * lengthFactor(gutter.lengthM() / gutter.section().depthM(), gutter.slopeRatio());
    }

    /** Nominal capacity QN of a short level gutter with a free outlet [m3/s]. */
    public static double nominalM3PerS(GutterSection section) {
        if (section instanceof HalfRoundSection round) {
            HalfRoundSection whole = new HalfRoundSection(round.widthM());
            return empirical(HALF_ROUND, section) * shape(section) / shape(whole);
        }
        return empirical(RECTANGULAR, section) * shape(section) / SQUARE_SHAPE;
    }

    /** The frictionless flow of a section as deep as it is wide over the area to the power 1.25 [SI]. */
    private static final double SQUARE_SHAPE = Math.sqrt(Channel.GRAVITY) * Math.pow(3, -0.75);

    private static double empirical(double constant, GutterSection section) {
        return constant * Math.pow(section.fullAreaM2() * 1e6, 1.25) / 1000;
    }

    private static double shape(GutterSection section) {
        return frictionlessM3PerS(section) / Math.pow(section.fullAreaM2(), 1.25);
    }

    /**
     * Flow of a level gutter without friction, brim-full at its closed end and free at its outlet [m3/s]. The force of
     * the still water at the closed end equals the specific force of the critical flow at the outlet:
     * {@code (A z) at the brim = A^2/B + A z at critical depth}, with B the surface width. In a rectangle the closed
     * end is then the square root of 3 times as deep as the outlet; in a half-round 1.529 times.
     */
    public static double frictionlessM3PerS(GutterSection section) {
        Channel channel = new Channel(Require.given("section", section), 0, Gutter.DEFAULT_MANNING_N);
        double brim = section.depthM();
        double still = section.firstMomentM3(brim);
        double critical = Root.between(0, brim, depth -> depth == 0 ? -still
                : section.areaM2(depth) * section.areaM2(depth) / section.surfaceWidthM(depth)
                        + section.firstMomentM3(depth) - still);
        return channel.criticalFlow(critical);
    }

    /**
     * Factor FL for long gutters and for slope.
     *
     * @param lengthInDepths length to the outlet over the depth of water, above 0. Up to 50 the factor is 1. Beyond
     *                       500, where the table ends, a level gutter is taken to lose with the square root of its
     *                       length, as a channel that is all friction does
     * @param slopeRatio     from 0. Up to 3 mm per metre counts as level; beyond 10 mm per metre no more is gained
     */
    public static double lengthFactor(double lengthInDepths, double slopeRatio) {
        Require.range("lengthInDepths", lengthInDepths, 0, 1e6, "a length from 0 to 1000000 depths");
        Require.range("slopeRatio", slopeRatio, 0, 0.1, "a slope towards the outlet from 0 to 0.1 (100 mm per metre)");
        int above = 1;
        while (above < SLOPES.length - 1 && SLOPES[above] < slopeRatio) {
            above++;
        }
        double share = Math.clamp((slopeRatio - SLOPES[above - 1]) / (SLOPES[above] - SLOPES[above - 1]), 0, 1);
        return (1 - share) * lengthFactor(lengthInDepths, above - 1) + share * lengthFactor(lengthInDepths, above);
    }

    private static double lengthFactor(double lengthInDepths, int column) {
        double[] factors = FACTORS[column];
        int last = factors.length - 1;
        if (lengthInDepths >= LENGTHS[last]) {
            return column == 0 ? factors[last] * Math.sqrt(LENGTHS[last] / lengthInDepths) : factors[last];
        }
        int above = 1;
        while (LENGTHS[above] < lengthInDepths) {
            above++;
        }
        double share = Math.max(0, (lengthInDepths - LENGTHS[above - 1]) / (LENGTHS[above] - LENGTHS[above - 1]));
        return factors[above - 1] + share * (factors[above] - factors[above - 1]);
    }

    /**
     * Factor for a corner in the gutter: 0.8 nearer than 2 m to the outlet, 0.9 nearer than 4 m, else 1.
     *
     * @param distanceM from the corner to the outlet, from 0 to 500 m
     */
    public static double cornerRatio(double distanceM) {
        Require.range("distanceM", distanceM, 0, 500, "a distance from 0 to 500 m");
        if (distanceM < 2) {
            return 0.8;
        }
        return distanceM <= 4 ? 0.9 : 1;
    }
}
