package org.roofspring.drainage;

import org.roofspring.drainage.internal.Require;

/**
 * A gutter with a flat sole and two evenly sloping sides; a sole of no width makes a V.
 *
 * @param widthM between the brims, from 0.02 to 2 m
 * @param soleM  width of the sole, from 0 to {@code widthM}
 * @param depthM from the sole to the brim, from 0.01 to 1 m
 */
public record TrapezoidalSection(double widthM, double soleM, double depthM) implements GutterSection {

    public TrapezoidalSection {
        Require.range("widthM", widthM, 0.02, 2, "a gutter width from 0.02 to 2 m");
        Require.range("soleM", soleM, 0, widthM, "a sole no wider than the brim, from 0 to " + widthM + " m,");
        Require.range("depthM", depthM, 0.01, 1, "a gutter depth from 0.01 to 1 m");
    }

    /** How far each side leans out, horizontal per vertical. */
    private double batter() {
        return (widthM - soleM) / (2 * depthM);
    }

    @Override
    public double areaM2(double waterDepthM) {
        Require.range("waterDepthM", waterDepthM, 0, depthM, "a depth from 0 to the brim");
        return waterDepthM * (soleM + batter() * waterDepthM);
    }

    @Override
    public double surfaceWidthM(double waterDepthM) {
        Require.range("waterDepthM", waterDepthM, 0, depthM, "a depth from 0 to the brim");
        return soleM + 2 * batter() * waterDepthM;
    }

    @Override
    public double wettedPerimeterM(double waterDepthM) {
        Require.range("waterDepthM", waterDepthM, 0, depthM, "a depth from 0 to the brim");
        return soleM + 2 * waterDepthM * Math.hypot(1, batter());
    }

    @Override
    public Wetted wetted(double waterDepthM) {
        return new Wetted(areaM2(waterDepthM), surfaceWidthM(waterDepthM), 2 * batter(), wettedPerimeterM(waterDepthM),
                2 * Math.hypot(1, batter()), firstMomentM3(waterDepthM));
    }

    @Override
    public double firstMomentM3(double waterDepthM) {
        Require.range("waterDepthM", waterDepthM, 0, depthM, "a depth from 0 to the brim");
        return waterDepthM * waterDepthM * (soleM / 2 + batter() * waterDepthM / 3);
    }
}
