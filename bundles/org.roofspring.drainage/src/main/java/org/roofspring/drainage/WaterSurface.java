package org.roofspring.drainage;

import java.util.List;
import java.util.OptionalDouble;
import org.roofspring.drainage.internal.Require;
import org.roofspring.drainage.internal.SurfaceSolver;

/**
 * The water surface along a gutter that gathers a given flow evenly along its length.
 *
 * <p>Steady, gradually varied flow with increasing discharge. In conservative form, with x from the closed end [m],
 * flow Q = q x [m3/s], area A [m2], depth of the centroid z [m], slope S0 and Manning's friction slope Sf:
 * {@code d/dx (Q^2/(g A) + A z) = A (S0 - Sf)}. Roof water is taken to fall in with no speed along the gutter, the
 * velocity to be even over the section, the pressure hydrostatic. Where the flow passes from slow to fast the control
 * is the section at which it is critical and the surface can stay smooth; otherwise it is the outlet. Where slow water
 * backs up on fast, a hydraulic jump stands where both have the same specific force.
 * (V. T. Chow, Open-Channel Hydraulics, McGraw-Hill 1959, chapter 12; F. M. Henderson, Open Channel Flow, Macmillan
 * 1966, chapter 7; both from memory.)
 *
 * @param gutter           solved
 * @param flowM3PerS       at the outlet
 * @param stations         from the closed end to the outlet; where a jump stands, two stations share a distance
 * @param control          what governs the flow
 * @param controlDistanceM from the closed end to the control section
 * @param jumpDistanceM    from the closed end to the hydraulic jump, where there is one
 */
public record WaterSurface(Gutter gutter, double flowM3PerS, List<Station> stations, Control control,
        double controlDistanceM, OptionalDouble jumpDistanceM) {

    /** What governs the flow in a gutter. */
    public enum Control {
        /** The water drops freely over the end: critical depth at the outlet, slow flow all along. */
        FREE_OUTFALL,
        /** The outlet holds the water up: a depth above critical at the outlet. */
        OUTLET,
        /** The flow turns from slow to fast at a section within the gutter. */
        WITHIN
    }

    /**
     * One place along a gutter.
     *
     * @param distanceM  from the closed end
     * @param depthM     of water
     * @param flowM3PerS gathered so far
     * @param froude     number; above 1 the flow is supercritical
     */
    public record Station(double distanceM, double depthM, double flowM3PerS, double froude) {
    }

    public WaterSurface {
        stations = List.copyOf(stations);
    }

    /** The surface when water drops freely over the end. */
    public static WaterSurface of(Gutter gutter, double flowM3PerS) {
        return of(gutter, flowM3PerS, 0);
    }

    /**
     * The surface when the outlet may hold the water up.
     *
     * @param gutter       to solve
     * @param flowM3PerS   at the outlet, from 1e-9 to 100 m3/s
     * @param outletDepthM depth of water that the outlet needs for this flow, from 0 (free) to 10 m; where the flow
     *                     arrives deeper or faster than that, it governs by itself
     */
    public static WaterSurface of(Gutter gutter, double flowM3PerS, double outletDepthM) {
        Require.given("gutter", gutter);
        Require.range("flowM3PerS", flowM3PerS, 1e-9, 100, "a flow from 1e-9 to 100 m3/s");
        Require.range("outletDepthM", outletDepthM, 0, 10, "a depth from 0 to 10 m");
        return new SurfaceSolver(gutter, flowM3PerS, outletDepthM).solve();
    }

    /** The station where the water is deepest. */
    public Station deepest() {
        Station deepest = stations.getFirst();
        for (Station station : stations) {
            if (station.depthM() > deepest.depthM()) {
                deepest = station;
            }
        }
        return deepest;
    }

    /** Whether the water stands above the brim anywhere. */
    public boolean overtops() {
        return deepest().depthM() > gutter.section().depthM();
    }

    /** Whether any part of the gutter runs supercritical. */
    public boolean runsSupercritical() {
        // a critical section is computed to rounding only, and is not yet fast flow
        return stations.stream().anyMatch(station -> station.froude() > 1 + 1e-6);
    }
}
