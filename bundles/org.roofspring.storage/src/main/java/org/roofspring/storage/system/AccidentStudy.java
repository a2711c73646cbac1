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
        // backwards, so that each start can join the way of a later one
        for (int day = series.days() - 1; day >= 0; day--) {
            if (cancelled.getAsBoolean()) {
                throw new CancellationException("the search for the worst moment was cancelled");
            }
            AccidentEffect effect = baseline.effect(accident.on(day));
            if (worst == null || effect.extraMissingM3() > worst.extraMissingM3()
                    || effect.extraMissingM3() == worst.extraMissingM3() && effect.lostM3() >= worst.lostM3()) {
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
    private static final class Baseline {
        private final SystemDay day;
        private final SystemState[] mornings;
        private final long[] missing;
        private final long[] lost;
        private final Onward[] onward;
        private final List<Onward> way = new ArrayList<>();

        private Baseline(SystemDay day, SystemState[] mornings, long[] missing, long[] lost) {
            this.day = day;
            this.mornings = mornings;
            this.missing = missing;
            this.lost = lost;
            this.onward = new Onward[mornings.length];
        }

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

        /**
         * Runs until the state is that of the record again. Days after the accident depend on nothing but the state in
         * the morning, so the way of an accident that was run before is joined where it stood the same.
         */
        AccidentEffect effect(Accident accident) {
            day.strikeBy(List.of(accident));
            SystemState state = mornings[accident.firstDay()].copy();
            way.clear();
            Extra extra = new Extra();
            int i = accident.firstDay();
            int end = -1;
            do {
                day.run(i, state);
                long wanting = day.demand(i) - day.suppliedInAll();
                extra.missing += wanting - missing[i];
                extra.days += (wanting > 0 ? 1 : 0) - (missing[i] > 0 ? 1 : 0);
                extra.lost += day.leaked + day.dumped - lost[i];
                i++;
                if (!accident.covers(i) && i < missing.length) {
                    Onward before = onward[i];
                    if (state.same(mornings[i])) {
                        end = i;
                    } else if (before != null && state.same(before.morning)) {
                        extra.add(before.rest);
                        end = before.end;
                    } else {
                        way.add(new Onward(i, state.copy(), extra.copy()));
                    }
                }
            } while (end < 0 && i < missing.length);
            end = end < 0 ? missing.length : end;
            for (Onward place : way) {
                place.rest = extra.less(place.rest);
                place.end = end;
                onward[place.day] = place;
            }
            return new AccidentEffect(accident, FixedVolume.toM3(extra.missing), extra.days,
                    FixedVolume.toM3(extra.lost), end - accident.firstDay());
        }
    }

    /** More than without the accident. */
    private static final class Extra {
        private long missing;
        private long lost;
        private int days;

        Extra copy() {
            Extra copy = new Extra();
            copy.add(this);
            return copy;
        }

        void add(Extra other) {
            missing += other.missing;
            lost += other.lost;
            days += other.days;
        }

        Extra less(Extra other) {
            Extra rest = copy();
            rest.missing -= other.missing;
            rest.lost -= other.lost;
            rest.days -= other.days;
            return rest;
        }
    }

    /** A morning on the way of an accident that is over, and what is still to come until the record is met again. */
    private static final class Onward {
        private final int day;
        private final SystemState morning;
        private Extra rest;
        private int end;

        Onward(int day, SystemState morning, Extra soFar) {
            this.day = day;
            this.morning = morning;
            this.rest = soFar;
        }
    }
}
