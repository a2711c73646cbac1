package org.roofspring.storage;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import org.roofspring.storage.internal.FixedVolume;
import org.roofspring.storage.internal.RoofInflow;
import org.roofspring.storage.internal.TankSweep;

/**
 * Roof by tank: a {@link ReliabilityCurve} for each roof. Memory grows with the number of designs plus the number of
 * days, not with their product.
 *
 * @param curves one for each roof, in the order given
 */
public record ReliabilitySurface(List<ReliabilityCurve> curves) {

    /** Copies the list. */
    public ReliabilitySurface {
        curves = List.copyOf(curves);
    }

    /**
     * Runs every tank under every roof over the record.
     *
     * @param roofs what each roof sends to the tank
     * @param depthMm rain of each day [mm], no gaps
     * @param demandM3 D of each day [m&sup3;]
     * @param capacityM3 of each tank [m&sup3;], in any order
     * @param settings how they are run
     * @param cancelled polled while running
     * @throws IllegalArgumentException when a value is out of range
     * @throws CancellationException when cancelled
     */
    public static ReliabilitySurface of(List<CatchmentInflow> roofs, double[] depthMm, double[] demandM3,
            double[] capacityM3, SweepSettings settings, BooleanSupplier cancelled) {
        if (roofs.isEmpty()) {
            throw new IllegalArgumentException("roofs is empty; accepted is one roof or more");
        }
        if (depthMm.length == 0 || demandM3.length != depthMm.length) {
            throw new IllegalArgumentException("depthMm has " + depthMm.length + " days and demandM3 "
                    + demandM3.length + "; accepted is one day or more, as many in both");
        }
        long[] demand = FixedVolume.toUnits(demandM3, "demandM3");
        int demandDays = 0;
        for (long asked : demand) {
            demandDays += asked > 0 ? 1 : 0;
        }
        RoofInflow inflow = new RoofInflow(roofs, depthMm);
        double[] tanks = capacityM3.clone();
        TankSweep.Row[] rows = ReliabilityCurve.sweep(tanks, demand, inflow.wet(), settings).run(inflow, cancelled);
        List<ReliabilityCurve> curves = new ArrayList<>();
        for (TankSweep.Row row : rows) {
            curves.add(new ReliabilityCurve(tanks, row, demandDays, FixedVolume.sum(demand)));
        }
        return new ReliabilitySurface(curves);
    }
}
