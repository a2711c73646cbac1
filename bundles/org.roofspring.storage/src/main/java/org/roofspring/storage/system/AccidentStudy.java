package org.roofspring.storage.system;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import org.roofspring.storage.internal.FixedVolume;

/**
 * Accidents at the worst moment, and what two tanks or a reserve below a higher outlet are worth against them.
 *
 * <p>The record is run once without the accident; then, for every day on which it could begin, from that day's state
 * with it, until both stand the same. Differences are exact.
 */
public final class AccidentStudy {

    private AccidentStudy() {
    }

    /**
     * The same accident in two systems.
     *
     * @param without its worst effect in the system as given
     * @param with its worst effect in the changed system
     */
    public record Comparison(AccidentEffect without, AccidentEffect with) {

        /** Shortage that the change spares at the worst moment [m&sup3;]. */
        public double sparedM3() {
            return without.extraMissingM3() - with.extraMissingM3();
        }
    }

    /**
     * The effect of an accident at the moment it is worst: most demand short, then most water lost, then earliest.
     *
     * @param system the system
     * @param series its record
     * @param accident what happens; its first day is ignored
     * @param cancelled polled while running
     * @throws CancellationException when cancelled
     */
    public static AccidentEffect worst(StorageSystem system, SystemSeries series, Accident accident,
            BooleanSupplier cancelled) {
        Baseline baseline = Baseline.of(system, series, cancelled);
        AccidentEffect worst = null;
        for (int day = 0; day < series.days(); day++) {
            if (cancelled.getAsBoolean()) {
                throw new CancellationException("the search for the worst moment was cancelled");
            }
            AccidentEffect effect = baseline.effect(accident.on(day));
            if (worst == null || effect.extraMissingM3() > worst.extraMissingM3()
                    || effect.extraMissingM3() == worst.extraMissingM3() && effect.lostM3() > worst.lostM3()) {
                worst = effect;
            }
        }
        return worst;
    }

    /**
     * The effect of an accident on the day it names.
     *
     * @throws CancellationException when cancelled
     */
    public static AccidentEffect effect(StorageSystem system, SystemSeries series, Accident accident,
            BooleanSupplier cancelled) {
        return Baseline.of(system, series, cancelled).effect(accident);
    }

    /**
     * What it is worth to have two tanks of half the size with a shut valve between them, in place of each single tank
     * of a stage.
     *
     * @param stage index of the stage whose tanks are halved
     */
    public static Comparison twoTanks(StorageSystem system, SystemSeries series, Accident accident, int stage,
            BooleanSupplier cancelled) {
        Checks.index(stage, system.stages().size(), "stage");
        List<Stage> stages = new ArrayList<>(system.stages());
        stages.set(stage, halved(stages.get(stage)));
        StorageSystem split = new StorageSystem(stages, system.transfers(), system.uses(), system.topUp(),
                system.rule());
        return new Comparison(worst(system, series, accident, cancelled), worst(split, series, accident, cancelled));
    }

    /**
     * What it is worth to raise the outlet of a use, so that a reserve stays below it for the others.
     *
     * @param use index of the use whose outlet is raised
     * @param reserveM3 volume that the higher outlet leaves in the stage [m&sup3;]
     */
    public static Comparison reserve(StorageSystem system, SystemSeries series, Accident accident, int use,
            double reserveM3, BooleanSupplier cancelled) {
        Checks.index(use, system.uses().size(), "use");
        List<Use> uses = new ArrayList<>(system.uses());
        Use old = uses.get(use);
        uses.set(use, new Use(old.name(), old.stage(), old.priority(), reserveM3, old.pumped(), old.rationing()));
        StorageSystem raised = new StorageSystem(system.stages(), system.transfers(), uses, system.topUp(),
                system.rule());
        return new Comparison(worst(system, series, accident, cancelled), worst(raised, series, accident, cancelled));
    }

    private static Stage halved(Stage stage) {
        List<Tank> halves = new ArrayList<>();
        for (Tank tank : stage.tanks()) {
            Leak leak = new Leak(tank.leak().ratioPerDay(), tank.leak().volumeM3PerDay() / 2,
                    tank.leak().aboveVolumeM3() / 2);
            Tank half = new Tank(tank.name(), tank.capacityM3() / 2, tank.deadVolumeM3() / 2,
                    tank.startVolumeM3() / 2, tank.openSurfaceM2() / 2, leak);
            halves.add(half);
            halves.add(half);
        }
        return new Stage(stage.name(), halves, Stage.Joint.VALVED, stage.overflow());
    }

    /** The record without the accident: the state each morning, and what went missing each day. */
    private record Baseline(SystemDay day, SystemState[] mornings, long[] missing, long[] lost) {

        static Baseline of(StorageSystem system, SystemSeries series, BooleanSupplier cancelled) {
            int days = series.days();
            SystemDay day = new SystemDay(system, SystemInputs.of(system, series), List.of());
            SystemState state = day.start();
            SystemState[] mornings = new SystemState[days + 1];
            long[] missing = new long[days];
            long[] lost = new long[days];
            for (int i = 0; i < days; i++) {
                if (i % 1024 == 0 && cancelled.getAsBoolean()) {
                    throw new CancellationException("the accident study was cancelled");
                }
                mornings[i] = state.copy();
                day.run(i, state);
                missing[i] = day.demand(i) - day.suppliedInAll();
                lost[i] = day.leaked + day.dumped;
            }
            mornings[days] = state;
            return new Baseline(day, mornings, missing, lost);
        }

        AccidentEffect effect(Accident accident) {
            day.strikeBy(List.of(accident));
            SystemState state = mornings[accident.firstDay()].copy();
            long extraMissing = 0;
            long extraLost = 0;
            int extraDays = 0;
            int i = accident.firstDay();
            do {
                day.run(i, state);
                long wanting = day.demand(i) - day.suppliedInAll();
                extraMissing += wanting - missing[i];
                extraDays += (wanting > 0 ? 1 : 0) - (missing[i] > 0 ? 1 : 0);
                extraLost += day.leaked + day.dumped - lost[i];
                i++;
            } while (i < missing.length && (accident.covers(i) || !state.same(mornings[i])));
            return new AccidentEffect(accident, FixedVolume.toM3(extraMissing), extraDays,
                    FixedVolume.toM3(extraLost), i - accident.firstDay());
        }
    }
}
