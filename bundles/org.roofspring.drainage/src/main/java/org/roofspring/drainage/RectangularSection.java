package org.roofspring.drainage;

import org.roofspring.drainage.internal.Require;

/**
 * A box gutter with a flat sole and upright sides.
 *
 * @param widthM of the sole and between the brims, from 0.02 to 2 m
 * @param depthM from the sole to the brim, from 0.01 to 1 m
 */
public record RectangularSection(double widthM, double depthM) implements GutterSection {

    public RectangularSection {
        Require.range("widthM", widthM, 0.02, 2, "a gutter width from 0.02 to 2 m");
        Require.range("depthM", depthM, 0.01, 1, "a gutter depth from 0.01 to 1 m");
    }

    @Override
    public double areaM2(double waterDepthM) {
        Require.range("waterDepthM", waterDepthM, 0, depthM, "a depth from 0 to the brim");
        return widthM * waterDepthM;
    }

    @Override
    public double surfaceWidthM(double waterDepthM) {
        Require.range("waterDepthM", waterDepthM, 0, depthM, "a depth from 0 to the brim");
        return widthM;
    }

    @Override
    public double wettedPerimeterM(double waterDepthM) {
        Require.range("waterDepthM", waterDepthM, 0, depthM, "a depth from 0 to the brim");
        return widthM + 2 * waterDepthM;
    }

    @Override
    public Wetted wetted(double waterDepthM) {
        return new Wetted(areaM2(waterDepthM), widthM, 0, widthM + 2 * waterDepthM, 2,
                widthM * waterDepthM * waterDepthM / 2);
    }

    @Override
    public double firstMomentM3(double waterDepthM) {
        Require.range("waterDepthM", waterDepthM, 0, depthM, "a depth from 0 to the brim");
        return widthM * waterDepthM * waterDepthM / 2;
    }
}
