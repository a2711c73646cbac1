package org.roofspring.drainage.internal;

import org.roofspring.drainage.Gutter;
import org.roofspring.drainage.GutterSection;

/**
 * A gutter as an open channel, at any depth of water: above the brim the sides go on upright, so that a solver may
 * pass through depths that the real gutter would spill. Depths in m, flows in m3/s.
 */
public final class Channel {
    /** Standard gravity [m/s2]. */
    public static final double GRAVITY = 9.80665;

    private static final double LAST_STEP = 1e-7;
    private static final int MOST_STEPS = 60;

    private final GutterSection section;
    private final double slope;
    private final double roughness;
    private final double brim;
    private final double brimArea;
    private final double brimWidth;
    private final double brimPerimeter;
    private final double brimMoment;

    public Channel(GutterSection section, double slopeRatio, double manningN) {
        this.section = section;
        this.slope = slopeRatio;
        this.roughness = manningN;
        this.brim = section.depthM();
        this.brimArea = section.areaM2(brim);
        this.brimWidth = section.surfaceWidthM(brim);
        this.brimPerimeter = section.wettedPerimeterM(brim);
        this.brimMoment = section.firstMomentM3(brim);
    }

    public static Channel of(Gutter gutter) {
        return new Channel(gutter.section(), gutter.slopeRatio(), gutter.manningN());
    }

    public double brim() {
        return brim;
    }

    public double area(double depth) {
        return depth <= brim ? section.areaM2(depth) : brimArea + brimWidth * (depth - brim);
    }

    public double surfaceWidth(double depth) {
        return depth <= brim ? section.surfaceWidthM(depth) : brimWidth;
    }

    /** All that a section is at a depth. */
    public GutterSection.Wetted wetted(double depth) {
        double above = depth - brim;
        return above <= 0 ? section.wetted(depth)
                : new GutterSection.Wetted(brimArea + brimWidth * above, brimWidth, 0, brimPerimeter + 2 * above, 2,
                        brimMoment + above * (brimArea + brimWidth * above / 2));
    }

    /** Specific force [m3]: momentum flux and water pressure over the section, per unit weight of water. */
    public double specificForce(double depth, double flow) {
        return specificForce(wetted(depth), flow);
    }

    static double specificForce(GutterSection.Wetted water, double flow) {
        return (flow == 0 ? 0 : flow * flow / (GRAVITY * water.areaM2())) + water.firstMomentM3();
    }

    /** How the specific force grows with the depth [m2]. */
    static double specificForceGrowth(GutterSection.Wetted water, double flow) {
        double area = water.areaM2();
        return (flow == 0 ? 0 : -flow * flow * water.surfaceWidthM() / (GRAVITY * area * area)) + area;
    }

    /** Change of specific force along the channel [m3 per m]: weight down the slope less friction (Manning). */
    public double drive(double depth, double flow) {
        return drive(wetted(depth), flow);
    }

    double drive(GutterSection.Wetted water, double flow) {
        double area = water.areaM2();
        return area * slope - friction(water, flow);
    }

    private double friction(GutterSection.Wetted water, double flow) {
        if (flow == 0) {
            return 0;
        }
        double area = water.areaM2();
        double resisted = roughness * flow / area;
        double shape = water.perimeterM() / area;
        return area * resisted * resisted * shape * Math.cbrt(shape);
    }

    /** How the drive grows with the depth [m3 per m2]. */
    double driveGrowth(GutterSection.Wetted water, double flow) {
        double width = water.surfaceWidthM();
        return width * slope - friction(water, flow)
                * (4.0 / 3 * water.perimeterGrowth() / water.perimeterM() - 7.0 / 3 * width / water.areaM2());
    }

    /** Froude number: the velocity against that of a small wave. */
    public double froude(double depth, double flow) {
        double area = area(depth);
        return flow / area * Math.sqrt(surfaceWidth(depth) / (GRAVITY * area));
    }

    /** Depth at which the Froude number is 1; zero without flow. */
    public double criticalDepth(double flow) {
        return criticalDepth(flow, brim);
    }

    /** The same, begun at a guess above zero. */
    double criticalDepth(double flow, double guess) {
        if (flow == 0) {
            return 0;
        }
        // critical flow goes with a power of the depth from 1.2 to 3.5; Newton's method on the logarithms
        double depth = guess;
        for (int i = 0; i < MOST_STEPS; i++) {
            GutterSection.Wetted water = wetted(depth);
            double area = water.areaM2();
            double width = water.surfaceWidthM();
            double ratio = flow / (area * Math.sqrt(GRAVITY * area / width));
            double exponent = Math.clamp(depth * (1.5 * width / area - 0.5 * water.surfaceGrowth() / width), 1.2, 3.5);
            double off = (ratio - 1) / exponent;
            // a small step leaves an error of about its square
            if (Math.abs(off) < LAST_STEP) {
                return depth * (1 + off);
            }
            depth *= Math.pow(ratio, 1 / exponent);
        }
        throw new IllegalStateException("no critical depth for " + flow + " m3/s in " + section);
    }

    /** Flow at which a depth is critical. */
    public double criticalFlow(double depth) {
        double area = area(depth);
        return area * Math.sqrt(GRAVITY * area / surfaceWidth(depth));
    }

    /** Flow of even depth on the slope (Manning). */
    public double uniformFlow(double depth) {
        double area = area(depth);
        return area * Math.pow(area / wetted(depth).perimeterM(), 2.0 / 3) * Math.sqrt(slope) / roughness;
    }
}
