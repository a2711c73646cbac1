package org.roofspring.storage.system;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.roofspring.storage.internal.FixedVolume;

/**
 * Runs a system one day at a time, in whole units. After each {@link #run} the fields hold that day's account.
 * Belongs to one run on one thread. The order of events is in the package description.
 */
final class SystemDay {

    private final StorageSystem system;
    private final int days;
    private List<Accident> accidents;
    private final long[][] inflow;
    private final long[][] demand;
    private final double[] evaporationMm;
    private final double theta;
    private final int[] usesByPriority;
    private final int[] useStage;
    private final boolean[] usePumped;
    private final boolean[] overflowsAway;
    private final long[] outlet;
    private final long[][] rationBelow;
    private final StagePlan[] plans;
    private final long[] transferMax;
    private final long[] transferKeep;
    private final long load;
    private final long orderBelow;
    private final long orderFree;

    /** Taps left open are one more drawer, after the uses. */
    private final int taps;

    /** What each drawer takes from each stage. */
    private final long[][] take;
    private final long[] reach;
    private final long[] transferLeft;

    final long[] supplied;
    final boolean[] rationed;
    final long[] transferred;
    long toppedUp;
    long evaporated;
    long leaked;
    long dumped;
    long spilled;
    boolean ordered;
    boolean delivered;

    SystemDay(StorageSystem system, SystemInputs inputs, List<Accident> accidents) {
        this.system = system;
        this.days = inputs.days();
        strikeBy(accidents);
        inflow = inputs.inflow();
        demand = inputs.demand();
        evaporationMm = inputs.evaporationMm();
        theta = system.rule().thetaRatio();
        int stages = system.stages().size();
        List<Use> uses = system.uses();
        taps = uses.size();
        usesByPriority = IntStream.range(0, taps).boxed()
                .sorted(Comparator.comparingInt(use -> uses.get(use).priority())).mapToInt(Integer::intValue).toArray();
        useStage = uses.stream().mapToInt(Use::stage).toArray();
        usePumped = new boolean[taps];
        for (int use = 0; use < taps; use++) {
            usePumped[use] = uses.get(use).pumped();
        }
        overflowsAway = new boolean[stages];
        for (int stage = 0; stage < stages; stage++) {
            overflowsAway[stage] = system.stages().get(stage).overflow() == Stage.Overflow.AWAY;
        }
        outlet = uses.stream().mapToLong(use -> FixedVolume.toUnits(use.outletM3(), "outletM3")).toArray();
        rationBelow = uses.stream().map(use -> use.rationing().stream()
                .mapToLong(step -> FixedVolume.toUnits(step.belowM3(), "belowM3")).toArray()).toArray(long[][]::new);
        plans = system.stages().stream().map(StagePlan::new).toArray(StagePlan[]::new);
        transferMax = system.transfers().stream()
                .mapToLong(transfer -> FixedVolume.toUnits(transfer.maxM3PerDay(), "maxM3PerDay")).toArray();
        transferKeep = system.transfers().stream()
                .mapToLong(transfer -> FixedVolume.toUnits(transfer.keepM3(), "keepM3")).toArray();
        load = system.topUp().map(topUp -> FixedVolume.toUnits(topUp.loadM3(), "loadM3")).orElse(0L);
        orderBelow = system.topUp().map(topUp -> FixedVolume.toUnits(topUp.orderBelowM3(), "orderBelowM3")).orElse(0L);
        orderFree = system.topUp().map(topUp -> FixedVolume.toUnits(topUp.freeM3(), "freeM3")).orElse(0L);
        FixedVolume.checkTotal((double) load * inputs.days(), "loadM3 on every day");
        take = new long[taps + 1][stages];
        reach = new long[stages];
        transferLeft = new long[stages - 1];
        supplied = new long[taps];
        rationed = new boolean[taps];
        transferred = new long[stages - 1];
    }

    /** From now on these go wrong, and no others. */
    void strikeBy(List<Accident> others) {
        accidents = List.copyOf(others);
        accidents.forEach(accident -> check(accident, system, days));
    }

    /** The state before the first day. */
    SystemState start() {
        long[] volume = system.stages().stream().mapToLong(stage -> stage.tanks().stream()
                .mapToLong(tank -> FixedVolume.toUnits(tank.startVolumeM3(), "startVolumeM3")).sum()).toArray();
        return new SystemState(volume, SystemState.NO_LOAD);
    }

    long inflow(int day) {
        long sum = 0;
        for (long[] series : inflow) {
            sum += series[day];
        }
        return sum;
    }

    long demand(int use, int day) {
        return demand[use][day];
    }

    long demand(int day) {
        long sum = 0;
        for (long[] series : demand) {
            sum += series[day];
        }
        return sum;
    }

    long suppliedInAll() {
        return sum(supplied);
    }

    /** Volume that can be drawn, all stages together. */
    long usable(SystemState state) {
        long sum = 0;
        for (int stage = 0; stage < plans.length; stage++) {
            sum += Math.max(0, state.volume[stage] - plans[stage].dead());
        }
        return sum;
    }

    /** Runs a day and changes the state. */
    void run(int day, SystemState state) {
        Arrays.fill(supplied, 0);
        Arrays.fill(transferred, 0);
        for (long[] row : take) {
            Arrays.fill(row, 0);
        }
        toppedUp = 0;
        evaporated = 0;
        leaked = 0;
        dumped = 0;
        spilled = 0;
        boolean pumpOut = strike(day, state);
        receiveLoad(day, state);
        lose(day, state);
        for (int i = 0; i < transferLeft.length; i++) {
            transferLeft[i] = pumpOut && system.transfers().get(i).pumped() ? 0 : transferMax[i];
        }
        planDraws(day, state, pumpOut);
        passThrough(day, state);
        fillLaterStages(state);
        orderLoad(day, state);
    }

    /** Applies the accidents of the day; tells whether the pump is out. */
    private boolean strike(int day, SystemState state) {
        for (StagePlan plan : plans) {
            plan.restore();
        }
        boolean pumpOut = false;
        for (Accident accident : accidents) {
            if (!accident.covers(day)) {
                continue;
            }
            boolean first = day == accident.firstDay();
            switch (accident) {
                case Accident.Contaminated event -> {
                    long out = plans[event.stage()].contaminated(event.tank(), state.volume[event.stage()]);
                    state.volume[event.stage()] -= out;
                    dumped += out;
                }
                case Accident.Burst event -> {
                    StagePlan plan = plans[event.stage()];
                    long below = FixedVolume.toUnits(event.belowM3(), "belowM3");
                    if (first) {
                        long out = plan.lostAtBreak(event.tank(), below, state.volume[event.stage()]);
                        state.volume[event.stage()] -= out;
                        leaked += out;
                    }
                    plan.breakAt(event.tank(), below);
                }
                case Accident.TankIsolated event -> plans[event.stage()].isolate(event.tank());
                case Accident.PumpOut event -> pumpOut = true;
                case Accident.TapLeftOpen event -> {
                    // Drawn later in the day, ahead of the uses.
                }
            }
        }
        for (int stage = 0; stage < plans.length; stage++) {
            long excess = Math.max(0, state.volume[stage] - plans[stage].capacity());
            state.volume[stage] -= excess;
            dumped += excess;
        }
        return pumpOut;
    }

    private void receiveLoad(int day, SystemState state) {
        delivered = state.loadDueDay == day;
        if (delivered) {
            int stage = system.topUp().orElseThrow().stage();
            toppedUp = Math.min(load, plans[stage].capacity() - state.volume[stage]);
            state.volume[stage] += toppedUp;
            state.loadDueDay = SystemState.NO_LOAD;
        }
    }

    private void lose(int day, SystemState state) {
        for (int stage = 0; stage < plans.length; stage++) {
            long dry = plans[stage].evaporation(evaporationMm[day], state.volume[stage]);
            state.volume[stage] -= dry;
            evaporated += dry;
            long leak = plans[stage].leakage(state.volume[stage]);
            state.volume[stage] -= leak;
            leaked += leak;
        }
    }

    /** Shares out what the day's yield may count on: the volume plus theta of the inflow. */
    private void planDraws(int day, SystemState state, boolean pumpOut) {
        long usable = usable(state);
        for (int stage = 0; stage < reach.length; stage++) {
            reach[stage] = state.volume[stage] + FixedVolume.share(inflow[stage][day], theta);
        }
        for (int i = 0; i < accidents.size(); i++) {
            if (accidents.get(i) instanceof Accident.TapLeftOpen tap && tap.covers(day)) {
                openTap(tap, pumpOut);
            }
        }
        for (int use : usesByPriority) {
            long asked = demand[use][day];
            long allowed = ration(use, asked, usable);
            rationed[use] = allowed < asked;
            if (!(pumpOut && usePumped[use])) {
                draw(use, useStage[use], allowed, Math.max(outlet[use], plans[useStage[use]].dead()));
            }
        }
    }

    private void openTap(Accident.TapLeftOpen tap, boolean pumpOut) {
        Use spec = system.uses().get(tap.use());
        if (pumpOut && spec.pumped()) {
            return;
        }
        int stage = spec.stage();
        long floor = Math.max(outlet[tap.use()], plans[stage].dead());
        long above = Math.max(0, reach[stage] - floor);
        long spared = above - plans[stage].withinReachOfOneTap(above);
        draw(taps, stage, FixedVolume.toUnits(tap.volumeM3(), "volumeM3"), floor + spared);
    }

    private long ration(int use, long asked, long usable) {
        if (rationBelow[use].length == 0) {
            return asked;
        }
        List<RationStep> steps = system.uses().get(use).rationing();
        double ratio = 1;
        for (int step = 0; step < steps.size(); step++) {
            if (usable < rationBelow[use][step]) {
                ratio = Math.min(ratio, steps.get(step).ratio());
            }
        }
        return FixedVolume.share(asked, ratio);
    }

    /** Takes what is wanted from a stage down to the floor, then through the transfer from the stage before. */
    private long draw(int drawer, int stage, long wanted, long floor) {
        long taken = Math.min(wanted, Math.max(0, reach[stage] - floor));
        reach[stage] -= taken;
        take[drawer][stage] += taken;
        long missing = wanted - taken;
        if (missing > 0 && stage > 0) {
            int transfer = stage - 1;
            long carried = draw(drawer, stage - 1, Math.min(missing, transferLeft[transfer]), keep(transfer));
            transferLeft[transfer] -= carried;
            transferred[transfer] += carried;
            taken += carried;
        }
        return taken;
    }

    /** Volume that a transfer leaves in the stage it draws from. */
    private long keep(int transfer) {
        return Math.max(transferKeep[transfer], plans[transfer].dead());
    }

    /** The early part of the yield, the inflow, the overflow, the late part; stage by stage. */
    private void passThrough(int day, SystemState state) {
        long fromStageBefore = 0;
        for (int stage = 0; stage < plans.length; stage++) {
            long early = 0;
            long late = 0;
            for (long[] row : take) {
                long first = FixedVolume.share(row[stage], theta);
                early += first;
                late += row[stage] - first;
            }
            long level = state.volume[stage] + inflow[stage][day] + fromStageBefore - early;
            long over = Math.max(0, level - plans[stage].capacity());
            level -= over;
            long excess = Math.max(0, late - Math.max(0, level - plans[stage].dead()));
            if (excess > 0) {
                giveUp(stage, excess);
            }
            state.volume[stage] = level - (late - excess);
            boolean away = overflowsAway[stage];
            spilled += away ? over : 0;
            fromStageBefore = away ? 0 : over;
        }
        for (int use = 0; use < taps; use++) {
            supplied[use] = sum(take[use]);
        }
        leaked += sum(take[taps]);
    }

    /** A loop: a stream for each use on each day takes longer than the rest of the day. */
    private static long sum(long[] values) {
        long sum = 0;
        for (long value : values) {
            sum += value;
        }
        return sum;
    }

    /** Takes back, last in priority first, a late part of the yield that the stage cannot give after spilling. */
    private void giveUp(int stage, long excess) {
        long left = excess;
        for (int i = taps - 1; i >= -1 && left > 0; i--) {
            int drawer = i < 0 ? taps : usesByPriority[i];
            long late = take[drawer][stage] - FixedVolume.share(take[drawer][stage], theta);
            long back = Math.min(left, late);
            take[drawer][stage] -= back;
            left -= back;
        }
    }

    private void fillLaterStages(SystemState state) {
        for (int transfer = transferLeft.length - 1; transfer >= 0; transfer--) {
            long room = plans[transfer + 1].capacity() - state.volume[transfer + 1];
            long available = Math.max(0, state.volume[transfer] - keep(transfer));
            long carried = Math.min(transferLeft[transfer], Math.min(room, available));
            state.volume[transfer] -= carried;
            state.volume[transfer + 1] += carried;
            transferred[transfer] += carried;
        }
    }

    private void orderLoad(int day, SystemState state) {
        ordered = false;
        if (system.topUp().isEmpty() || state.loadDueDay != SystemState.NO_LOAD) {
            return;
        }
        TopUp topUp = system.topUp().get();
        StagePlan plan = plans[topUp.stage()];
        long volume = state.volume[topUp.stage()];
        if (volume - plan.dead() < orderBelow && plan.capacity() - volume >= orderFree) {
            ordered = true;
            state.loadDueDay = Math.addExact(day + 1, topUp.delayDays());
        }
    }

    private static void check(Accident accident, StorageSystem system, int days) {
        Checks.index(accident.firstDay(), days, "firstDay");
        switch (accident) {
            case Accident.TapLeftOpen event -> Checks.index(event.use(), system.uses().size(), "use");
            case Accident.Burst event -> checkTank(system, event.stage(), event.tank());
            case Accident.Contaminated event -> checkTank(system, event.stage(), event.tank());
            case Accident.TankIsolated event -> checkTank(system, event.stage(), event.tank());
            case Accident.PumpOut event -> {
                // Nothing to look up.
            }
        }
    }

    private static void checkTank(StorageSystem system, int stage, int tank) {
        Checks.index(stage, system.stages().size(), "stage");
        Checks.index(tank, system.stages().get(stage).tanks().size(), "tank");
    }
}
