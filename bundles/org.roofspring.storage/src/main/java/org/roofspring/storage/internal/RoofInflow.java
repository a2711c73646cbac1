package org.roofspring.storage.internal;

import java.util.Arrays;
import java.util.List;
import org.roofspring.storage.CatchmentInflow;

/** Inflow of many roofs under one rain, made roof by roof on the day it is wanted. */
public final class RoofInflow implements WetDayInflow {

    private final boolean[] wet;
    private final double[] wetDepthMm;
    private final double[] m3PerMm;
    private final double[] lossMm;

    /**
     * @param roofs one or more
     * @param depthMm rain of each day [mm]
     * @throws IllegalArgumentException when a depth is negative or not a number, or a roof's inflow is out of range
     */
    public RoofInflow(List<CatchmentInflow> roofs, double[] depthMm) {
        CatchmentInflow.checkDepths(depthMm);
        wet = new boolean[depthMm.length];
        for (int day = 0; day < wet.length; day++) {
            wet[day] = depthMm[day] > 0;
        }
        wetDepthMm = Arrays.stream(depthMm).filter(depth -> depth > 0).toArray();
        m3PerMm = roofs.stream().mapToDouble(CatchmentInflow::m3PerMm).toArray();
        lossMm = roofs.stream().mapToDouble(CatchmentInflow::lossMm).toArray();
        double mostMm = Arrays.stream(wetDepthMm).max().orElse(0);
        for (CatchmentInflow roof : roofs) {
            long most = FixedVolume.toUnits(roof.inflowM3(mostMm), "inflow of the wettest day");
            FixedVolume.checkTotal((double) most * wetDepthMm.length, "inflow, were every wet day the wettest,");
        }
    }

    /** Whether a day has rain. */
    public boolean[] wet() {
        return wet;
    }

    @Override
    public int roofs() {
        return m3PerMm.length;
    }

    @Override
    public void write(int wetDay, int firstRoof, long[] into) {
        double depth = wetDepthMm[wetDay];
        int count = Math.min(into.length, m3PerMm.length - firstRoof);
        for (int i = 0; i < count; i++) {
            // The same operations as CatchmentInflow.inflowM3, so the same numbers.
            double left = Math.max(0, depth - lossMm[firstRoof + i]);
            into[i] = FixedVolume.nearest(m3PerMm[firstRoof + i] * left);
        }
    }
}
