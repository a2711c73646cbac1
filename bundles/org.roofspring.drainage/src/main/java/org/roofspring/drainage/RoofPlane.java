package org.roofspring.drainage;

import org.roofspring.drainage.internal.Require;

/**
 * One plane of a roof that drains to one eaves gutter.
 *
 * @param lengthM along the eaves, from 0.1 to 1000 m
 * @param widthM  on plan, from eaves to ridge, from 0.1 to 1000 m
 * @param riseM   of the ridge over the eaves, from 0 to 1000 m
 */
public record RoofPlane(double lengthM, double widthM, double riseM) {

    /** How rain meets the roof in the design storm (EN 12056-3:2000, table 3, from memory). */
    public enum Wind {
        /** Rain falls straight down: the plan area counts. */
        NONE,
        /**
         * Rain is driven against the plane, 2 down for 1 along: {@code L (W + H/2)} (BS EN 12056-3, as quoted by a
         * gutter supplier).
         */
        DRIVEN,
        /** Rain meets the plane square on: the area of the plane itself counts. */
        SQUARE_ON
    }

    public RoofPlane {
        Require.range("lengthM", lengthM, 0.1, 1000, "a length along the eaves from 0.1 to 1000 m");
        Require.range("widthM", widthM, 0.1, 1000, "a width on plan from 0.1 to 1000 m");
        Require.range("riseM", riseM, 0, 1000, "a rise from 0 to 1000 m");
    }

    /**
     * A plane of a given pitch.
     *
     * @param pitchDegrees from the horizontal, from 0 to 75
     */
    public static RoofPlane pitched(double lengthM, double widthM, double pitchDegrees) {
        Require.range("pitchDegrees", pitchDegrees, 0, 75, "a pitch from 0 to 75 degrees");
        return new RoofPlane(lengthM, widthM, widthM * Math.tan(Math.toRadians(pitchDegrees)));
    }

    /** Area on plan [m2], which gives the yield of a year: over the seasons the wind evens out. */
    public double planAreaM2() {
        return lengthM * widthM;
    }

    /** Area that counts in the design storm [m2]. */
    public double effectiveAreaM2(Wind wind) {
        return switch (Require.given("wind", wind)) {
            case NONE -> planAreaM2();
            case DRIVEN -> lengthM * (widthM + riseM / 2);
            case SQUARE_ON -> lengthM * Math.hypot(widthM, riseM);
        };
    }

    /**
     * What a wall above the roof adds to the effective area in driving rain [m2]: half its area (EN 12056-3:2000, from
     * memory).
     *
     * @param wallAreaM2 that faces the wind and drains onto the roof, from 0 to 1e6 m2
     */
    public static double drivenWallM2(double wallAreaM2) {
        return Require.range("wallAreaM2", wallAreaM2, 0, 1e6, "a wall area from 0 to 1000000 m2") / 2;
    }
}
