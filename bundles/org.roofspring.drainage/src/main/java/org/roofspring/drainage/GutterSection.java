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

    /** Area of flow with water at the brim [m2]. */
    default double fullAreaM2() {
        return areaM2(depthM());
    }
}
