package org.roofspring.storage.system;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import org.roofspring.storage.BalanceRecorder;
import org.roofspring.storage.internal.FixedVolume;

/** Daily balance of a whole system; the order of a day is in the package description. */
public final class SystemBalance {

    private static final int DAYS_BETWEEN_POLLS = 1024;

    private SystemBalance() {
    }

    /**
     * Runs the record once.
     *
     * @param system the tanks and uses
     * @param series inflow by stage, demand by use, evaporation
     * @param accidents what goes wrong; may be empty
     * @param cancelled polled while running
     * @throws IllegalArgumentException when the parts do not fit together or a value is out of range
     * @throws CancellationException when cancelled
     */
    public static SystemResult run(StorageSystem system, SystemSeries series, List<Accident> accidents,
            BooleanSupplier cancelled) {
        SystemDay day = new SystemDay(system, SystemInputs.of(system, series), accidents);
        SystemState state = day.start();
        BalanceRecorder recorder = new BalanceRecorder(series.days(), state.total());
        UseCount[] counts = system.uses().stream().map(use -> new UseCount()).toArray(UseCount[]::new);
        long[] transferred = new long[system.transfers().size()];
        long[][] stageVolume = new long[system.stages().size()][series.days()];
        int ordered = 0;
        int delivered = 0;
        long toppedUp = 0;
        for (int i = 0; i < series.days(); i++) {
            if (i % DAYS_BETWEEN_POLLS == 0 && cancelled.getAsBoolean()) {
                throw new CancellationException("the storage balance was cancelled");
            }
            day.run(i, state);
            recorder.losses(day.evaporated, day.leaked, day.dumped);
            recorder.topUp(day.toppedUp);
            recorder.day(day.inflow(i), day.demand(i), day.suppliedInAll(), day.spilled, state.total(),
                    day.usable(state));
            for (int use = 0; use < counts.length; use++) {
                counts[use].day(day.demand(use, i), day.supplied[use], day.rationed[use]);
            }
            for (int transfer = 0; transfer < transferred.length; transfer++) {
                transferred[transfer] += day.transferred[transfer];
            }
            for (int stage = 0; stage < stageVolume.length; stage++) {
                stageVolume[stage][i] = state.volume[stage];
            }
            ordered += day.ordered ? 1 : 0;
            delivered += day.delivered ? 1 : 0;
            toppedUp += day.toppedUp;
        }
        List<UseResult> uses = new ArrayList<>();
        for (int use = 0; use < counts.length; use++) {
            uses.add(counts[use].result(system.uses().get(use).name()));
        }
        double cost = delivered * system.topUp().map(TopUp::priceEach).orElse(0.0);
        return new SystemResult(recorder.result(), uses,
                new SystemResult.TopUpResult(ordered, delivered, FixedVolume.toM3(toppedUp), cost),
                Arrays.stream(transferred).mapToDouble(FixedVolume::toM3).toArray(), stageVolume);
    }

    private static final class UseCount {

        private long asked;
        private long given;
        private int demandDays;
        private int fullDays;
        private int rationedDays;

        void day(long demand, long supplied, boolean rationed) {
            asked += demand;
            given += supplied;
            demandDays += demand > 0 ? 1 : 0;
            fullDays += demand > 0 && supplied >= demand ? 1 : 0;
            rationedDays += rationed ? 1 : 0;
        }

        UseResult result(String name) {
            return new UseResult(name, FixedVolume.toM3(asked), FixedVolume.toM3(given), demandDays, fullDays,
                    rationedDays);
        }
    }
}
