package org.roofspring.storage;

import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import org.roofspring.storage.internal.DailySeries;
import org.roofspring.storage.internal.FixedVolume;
import org.roofspring.storage.internal.TankSweep;
import org.roofspring.storage.internal.WetDayInflow;

/**
 * What each of many tanks would do on the same inflow and demand: the storage-reliability curve. Every number is the
 * one {@link TankBalance} gives for that tank, exactly.
 */
public final class ReliabilityCurve {

    private final double[] capacityM3;
    private final TankSweep.Row row;
    private final int demandDays;
    private final long demand;

    ReliabilityCurve(double[] capacityM3, TankSweep.Row row, int demandDays, long demand) {
        this.capacityM3 = capacityM3;
        this.row = row;
        this.demandDays = demandDays;
        this.demand = demand;
    }

    /**
     * Runs every tank over the record.
     *
     * @param inflowM3 Q of each day [m&sup3;]
     * @param demandM3 D of each day [m&sup3;]
     * @param capacityM3 of each tank [m&sup3;], in any order, one or more
     * @param settings how they are run
     * @param cancelled polled while running
     * @throws IllegalArgumentException when a value is out of range
     * @throws CancellationException when cancelled
     */
    public static ReliabilityCurve of(double[] inflowM3, double[] demandM3, double[] capacityM3,
            SweepSettings settings, BooleanSupplier cancelled) {
        DailySeries series = DailySeries.of(inflowM3, demandM3);
        boolean[] wet = new boolean[series.days()];
        for (int day = 0; day < wet.length; day++) {
            wet[day] = series.inflow()[day] > 0;
        }
        TankSweep sweep = sweep(capacityM3, series.demand(), wet, settings);
        TankSweep.Row row = sweep.run(new OneInflow(series.inflow()), cancelled)[0];
        return new ReliabilityCurve(capacityM3.clone(), row, series.demandDays(), series.totalDemand());
    }

    static TankSweep sweep(double[] capacityM3, long[] demand, boolean[] wet, SweepSettings settings) {
        if (capacityM3.length == 0) {
            throw new IllegalArgumentException("capacityM3 has no tanks; accepted is one or more");
        }
        long[] capacity = new long[capacityM3.length];
        for (int i = 0; i < capacity.length; i++) {
            capacity[i] = FixedVolume.toUnits(capacityM3[i], "capacityM3 of tank " + i);
        }
        return new TankSweep(capacity, demand, wet, settings.rule().thetaRatio(),
                FixedVolume.toUnits(settings.startVolumeM3(), "startVolumeM3"), settings.warmUpPasses());
    }

    /** How many tanks. */
    public int tanks() {
        return capacityM3.length;
    }

    /** Capacity of a tank [m&sup3;], as it was given. */
    public double capacityM3(int tank) {
        return capacityM3[tank];
    }

    /** Supplied over the record [m&sup3;]. */
    public double suppliedM3(int tank) {
        return FixedVolume.toM3(row.supplied()[tank]);
    }

    /** Spilled over the record [m&sup3;]. */
    public double spilledM3(int tank) {
        return FixedVolume.toM3(
                row.startVolume()[tank] + row.inflow()[0] - row.supplied()[tank] - row.endVolume()[tank]);
    }

    /** In store as the counted pass begins [m&sup3;]. */
    public double startVolumeM3(int tank) {
        return FixedVolume.toM3(row.startVolume()[tank]);
    }

    /** In store after the last day [m&sup3;]. */
    public double endVolumeM3(int tank) {
        return FixedVolume.toM3(row.endVolume()[tank]);
    }

    /** Days with demand on which all of it was supplied [d]. */
    public int fullDays(int tank) {
        return row.fullDays()[tank];
    }

    /** Days with demand [d], the same for every tank. */
    public int demandDays() {
        return demandDays;
    }

    /** Supplied over demand [-]; empty when nothing was asked for. */
    public OptionalDouble volumetricReliability(int tank) {
        return demand > 0 ? OptionalDouble.of(suppliedM3(tank) / FixedVolume.toM3(demand)) : OptionalDouble.empty();
    }

    /** Full days over days with demand [-]; empty when nothing was asked for. */
    public OptionalDouble timeReliability(int tank) {
        return demandDays > 0 ? OptionalDouble.of((double) fullDays(tank) / demandDays) : OptionalDouble.empty();
    }

    /** An inflow that was given as a series. */
    private record OneInflow(long[] wetInflow) implements WetDayInflow {

        OneInflow {
            wetInflow = Arrays.stream(wetInflow).filter(inflow -> inflow > 0).toArray();
        }

        @Override
        public int roofs() {
            return 1;
        }

        @Override
        public void write(int wetDay, int firstRoof, long[] into) {
            into[0] = wetInflow[wetDay];
        }
    }
}
