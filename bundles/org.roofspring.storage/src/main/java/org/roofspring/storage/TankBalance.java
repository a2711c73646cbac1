package org.roofspring.storage;

import java.util.Arrays;
import org.roofspring.storage.internal.DailySeries;
import org.roofspring.storage.internal.FixedVolume;
import org.roofspring.storage.internal.PlainTank;

/**
 * Daily balance of the plain tank: no losses, one demand, one yield rule. Exact in whole microlitres; see the package
 * description.
 *
 * <p>Symbols: Q inflow, D demand, Y supplied, V volume, S capacity [m&sup3;], one value a day.
 */
public final class TankBalance {
    /** Longest series that is made, some 27 000 years [d]. */
    public static final int MOST_DAYS = 10_000_000;

    private TankBalance() {
    }

    /**
     * Runs the record once.
     *
     * @param inflowM3 Q of each day [m&sup3;], each 0 to 2,000,000
     * @param demandM3 D of each day [m&sup3;], as many days
     * @param design the tank
     * @throws IllegalArgumentException when a series is empty, has another length, or holds a value out of range
     */
    public static BalanceResult run(double[] inflowM3, double[] demandM3, StorageDesign design) {
        DailySeries series = DailySeries.of(inflowM3, demandM3);
        long start = FixedVolume.toUnits(design.startVolumeM3(), "startVolumeM3");
        PlainTank tank = new PlainTank(FixedVolume.toUnits(design.capacityM3(), "capacityM3"), start,
                design.rule().thetaRatio());
        BalanceRecorder recorder = new BalanceRecorder(series.days(), start);
        for (int day = 0; day < series.days(); day++) {
            long inflow = series.inflow()[day];
            long demand = series.demand()[day];
            tank.day(inflow, demand);
            recorder.day(inflow, demand, tank.supplied(), tank.spilled(), tank.volume(), tank.volume());
        }
        return recorder.result();
    }

    /**
     * Runs the record once with the same demand every day.
     *
     * @param inflowM3 Q of each day [m&sup3;]
     * @param demandM3PerDay D [m&sup3; a day], 0 to 2,000,000
     * @param design the tank
     */
    public static BalanceResult run(double[] inflowM3, double demandM3PerDay, StorageDesign design) {
        return run(inflowM3, constantDemand(demandM3PerDay, inflowM3.length), design);
    }

    /**
     * The same demand on every day of a record, as a series [m&sup3;].
     *
     * @param demandM3PerDay D [m&sup3; a day], 0 to 2,000,000
     * @param days length of the series, 0 to {@value #MOST_DAYS}
     */
    public static double[] constantDemand(double demandM3PerDay, int days) {
        if (!(demandM3PerDay >= 0 && demandM3PerDay <= FixedVolume.MAX_M3)) {
            throw new IllegalArgumentException("demandM3PerDay is " + demandM3PerDay + " m3; accepted is 0 to 2,000,000");
        }
        double[] demand = new double[checkedDays(days)];
        Arrays.fill(demand, demandM3PerDay);
        return demand;
    }

    static int checkedDays(int days) {
        if (days < 0 || days > MOST_DAYS) {
            throw new IllegalArgumentException("days is " + days + "; accepted is 0 to " + MOST_DAYS);
        }
        return days;
    }
}
