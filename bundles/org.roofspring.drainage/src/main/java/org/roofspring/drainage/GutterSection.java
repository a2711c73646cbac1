package org.roofspring.drainage;

/**
 * The cross-section of a gutter, as a function of the depth of water over its lowest point.
 *
 * <p>Depths run from 0 to {@link #depthM()}, the depth at which water stands at the brim.
 */
public sealed interface GutterSection permits HalfRoundSection, RectangularSection, TrapezoidalSection {

    /** Depth from the lowest point to the brim [m]. */
    double depthM();

    /** Width between the brims [m]. */
    double widthM();

    /** Area of flow [m2] at a depth of water from 0 to {@link #depthM()} [m]. */
    double areaM2(double waterDepthM);

    /** Width of the water surface [m] at a depth of water from 0 to {@link #depthM()} [m]. */
    double surfaceWidthM(double waterDepthM);

    /** Wetted perimeter [m] at a depth of water from 0 to {@link #depthM()} [m]. */
    double wettedPerimeterM(double waterDepthM);

    /**
     * First moment of the area of flow about the water surface [m3], at a depth of water from 0 to {@link #depthM()}
     * [m]: the area times the depth of its centroid, which gives the force of still water on the section.
     */
    double firstMomentM3(double waterDepthM);

    /** All of these at once, and how the perimeter grows: what a solver asks for at each trial depth. */
    Wetted wetted(double waterDepthM);

    /**
     * A section at one depth of water.
     *
     * @param areaM2          as {@link GutterSection#areaM2}
     * @param surfaceWidthM   as {@link GutterSection#surfaceWidthM}
     * @param surfaceGrowth   of the surface width for each m of depth; at most 1e12
     * @param perimeterM      as {@link GutterSection#wettedPerimeterM}
     * @param perimeterGrowth of the perimeter for each m of depth; at most 1e12, where a round sole just begins to be wet
     * @param firstMomentM3   as {@link GutterSection#firstMomentM3}
     */
    record Wetted(double areaM2, double surfaceWidthM, double surfaceGrowth, double perimeterM, double perimeterGrowth,
            double firstMomentM3) {
    }

    /** Area of flow with water at the brim [m2]. */
    default double fullAreaM2() {
        return areaM2(depthM());
    }
}
