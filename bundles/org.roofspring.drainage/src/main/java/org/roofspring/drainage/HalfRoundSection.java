package org.roofspring.drainage;

import org.roofspring.drainage.internal.Require;

/**
 * A half-round gutter. A true half-round is half as deep as it is wide; a shallower one is an arc of a larger circle;
 * a deeper one is a half-circle with upright walls above it, as in a U-shaped gutter.
 *
 * @param widthM between the brims, from 0.02 to 2 m
 * @param depthM from the lowest point to the brim, from 0.01 to 1 m
 */
public record HalfRoundSection(double widthM, double depthM) implements GutterSection {
    /** Growth of the perimeter where the surface has no width yet. */
    private static final double STEEPEST = 1e12;
    /** Below this half-angle [rad] closed forms lose digits to cancellation, so their series are used. */
    private static final double SMALL_ANGLE = 0.2;
    /** Of {@code a - sin a cos a}, from the power 3 in steps of 2. */
    private static final double[] AREA_SERIES = {2.0 / 3, -2.0 / 15, 4.0 / 315, -2.0 / 2835, 4.0 / 155925};
    /** Of {@code 2/3 sin^3 a - (a - sin a cos a) cos a}, from the power 5 in steps of 2. */
    private static final double[] MOMENT_SERIES = {2.0 / 15, -11.0 / 315, 17.0 / 3780, -461.0 / 1247400,
        132848.0 / 6227020800.0};

    public HalfRoundSection {
        Require.range("widthM", widthM, 0.02, 2, "a gutter width from 0.02 to 2 m");
        Require.range("depthM", depthM, 0.01, 1, "a gutter depth from 0.01 to 1 m");
    }

    /** A true half-round, half as deep as it is wide. */
    public HalfRoundSection(double widthM) {
        this(widthM, widthM / 2);
    }

    /** Radius of the arc [m]. */
    public double radiusM() {
        return isArc() ? (widthM * widthM / 4 + depthM * depthM) / (2 * depthM) : widthM / 2;
    }

    private boolean isArc() {
        return depthM <= widthM / 2;
    }

    /** Depth of water in the round part [m]. */
    private double roundDepth(double waterDepthM) {
        return Math.min(waterDepthM, isArc() ? depthM : widthM / 2);
    }

    private double wallDepth(double waterDepthM) {
        return waterDepthM - roundDepth(waterDepthM);
    }

    /** Half the angle at the centre of the arc that the water wets [rad]. */
    private double halfAngle(double waterDepthM) {
        return 2 * Math.asin(Math.min(1, Math.sqrt(roundDepth(waterDepthM) / (2 * radiusM()))));
    }

    /** Half the width of the surface of water in the round part [m]; a root, since sines would cost more. */
    private double halfSurface(double roundDepthM, double radiusM) {
        return Math.sqrt(roundDepthM * (2 * radiusM - roundDepthM));
    }

    private double roundArea(double angle, double roundDepthM) {
        double r = radiusM();
        return angle < SMALL_ANGLE ? r * r * Math.pow(angle, 3) * evenPowers(AREA_SERIES, angle)
                : r * r * angle - halfSurface(roundDepthM, r) * (r - roundDepthM);
    }

    private double roundMoment(double angle, double area, double roundDepthM) {
        double r = radiusM();
        if (angle < SMALL_ANGLE) {
            return r * r * r * Math.pow(angle, 5) * evenPowers(MOMENT_SERIES, angle);
        }
        double half = halfSurface(roundDepthM, r);
        return 2.0 / 3 * half * half * half - area * (r - roundDepthM);
    }

    private static double evenPowers(double[] coefficients, double x) {
        double sum = 0;
        for (int i = coefficients.length - 1; i >= 0; i--) {
            sum = sum * x * x + coefficients[i];
        }
        return sum;
    }

    @Override
    public double areaM2(double waterDepthM) {
        Require.range("waterDepthM", waterDepthM, 0, depthM, "a depth from 0 to the brim");
        return roundArea(halfAngle(waterDepthM), roundDepth(waterDepthM)) + widthM * wallDepth(waterDepthM);
    }

    @Override
    public double surfaceWidthM(double waterDepthM) {
        Require.range("waterDepthM", waterDepthM, 0, depthM, "a depth from 0 to the brim");
        return 2 * halfSurface(roundDepth(waterDepthM), radiusM());
    }

    @Override
    public double wettedPerimeterM(double waterDepthM) {
        Require.range("waterDepthM", waterDepthM, 0, depthM, "a depth from 0 to the brim");
        return 2 * radiusM() * halfAngle(waterDepthM) + 2 * wallDepth(waterDepthM);
    }

    @Override
    public double firstMomentM3(double waterDepthM) {
        return wetted(waterDepthM).firstMomentM3();
    }

    @Override
    public Wetted wetted(double waterDepthM) {
        Require.range("waterDepthM", waterDepthM, 0, depthM, "a depth from 0 to the brim");
        double angle = halfAngle(waterDepthM);
        double depth = roundDepth(waterDepthM);
        double area = roundArea(angle, depth);
        double wall = wallDepth(waterDepthM);
        double r = radiusM();
        double half = Math.abs(halfSurface(depth, r));
        return new Wetted(area + widthM * wall, 2 * half, wall > 0 ? 0 : Math.min(STEEPEST, 2 * (r - depth) / half),
                2 * r * angle + 2 * wall,
                wall > 0 ? 2 : Math.min(STEEPEST, 2 * r / half),
                roundMoment(angle, area, depth) + area * wall + widthM * wall * wall / 2);
    }
}
