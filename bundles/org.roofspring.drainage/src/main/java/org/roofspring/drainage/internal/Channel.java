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

    private static final double CRITICAL_ACCURACY = 1e-12;
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

    private double perimeter(double depth) {
        return depth <= brim ? section.wettedPerimeterM(depth) : brimPerimeter + 2 * (depth - brim);
    }

    private double firstMoment(double depth) {
        double above = depth - brim;
        return above <= 0 ? section.firstMomentM3(depth) : brimMoment + above * (brimArea + brimWidth * above / 2);
    }

    /** Specific force [m3]: momentum flux and water pressure over the section, per unit weight of water. */
    public double specificForce(double depth, double flow) {
        return (flow == 0 ? 0 : flow * flow / (GRAVITY * area(depth))) + firstMoment(depth);
    }

    /** Change of specific force along the channel [m3 per m]: weight down the slope less friction (Manning). */
    public double drive(double depth, double flow) {
        double area = area(depth);
        if (flow == 0) {
            return area * slope;
        }
        double resisted = roughness * flow / area;
        return area * (slope - resisted * resisted * Math.pow(perimeter(depth) / area, 4.0 / 3));
    }

    /** Froude number: the velocity against that of a small wave. */
    public double froude(double depth, double flow) {
        double area = area(depth);
        return flow / area * Math.sqrt(surfaceWidth(depth) / (GRAVITY * area));
    }

    /** Depth at which the Froude number is 1; zero without flow. */
    public double criticalDepth(double flow) {
        if (flow == 0) {
            return 0;
        }
        // critical flow goes with a power of the depth from 1.5 to 3, so the secant of the logarithms is safe
        double depth = brim;
        double exponent = 2;
        double ratio = flow / criticalFlow(depth);
        for (int i = 0; Math.abs(ratio - 1) > CRITICAL_ACCURACY; i++) {
            if (i == MOST_STEPS) {
                throw new IllegalStateException("no critical depth for " + flow + " m3/s in " + section);
            }
            double growth = Math.pow(ratio, 1 / exponent);
            depth *= growth;
            double next = flow / criticalFlow(depth);
            exponent = Math.clamp(Math.log(ratio / next) / Math.log(growth), 1.2, 3.5);
            ratio = next;
        }
        return depth;
    }

    /** Flow at which a depth is critical. */
    public double criticalFlow(double depth) {
        double area = area(depth);
        return area * Math.sqrt(GRAVITY * area / surfaceWidth(depth));
    }

    /** Flow of even depth on the slope (Manning). */
    public double uniformFlow(double depth) {
        double area = area(depth);
        return area * Math.pow(area / perimeter(depth), 2.0 / 3) * Math.sqrt(slope) / roughness;
    }
}
