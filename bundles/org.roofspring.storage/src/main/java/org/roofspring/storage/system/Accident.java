package org.roofspring.storage.system;

import org.roofspring.storage.internal.FixedVolume;

/** Something that goes wrong, as a what-if. */
public sealed interface Accident {

    /** Day it begins, from 0. */
    int firstDay();

    /** Days it lasts [d], 1 or more. */
    int days();

    /** The same accident on another day. */
    Accident on(int day);

    /**
     * A tap left running, as overnight. It takes what the use's outlet can reach, also through the transfers; of a
     * stage with shut valves, only the tank in service.
     *
     * @param firstDay day, from 0
     * @param use index of the use whose tap it is
     * @param volumeM3 that would run out if there is enough [m&sup3;]
     */
    record TapLeftOpen(int firstDay, int use, double volumeM3) implements Accident {

        /** Checks the numbers. */
        public TapLeftOpen {
            Checks.days(firstDay, 0, "firstDay");
            FixedVolume.toUnits(volumeM3, "volumeM3");
        }

        @Override
        public int days() {
            return 1;
        }

        @Override
        public Accident on(int day) {
            return new TapLeftOpen(day, use, volumeM3);
        }
    }

    /**
     * A pipe or wall gives way: the water above the break is lost, and until it is mended the tank holds no more than
     * what is below.
     *
     * @param firstDay day, from 0
     * @param days until it is mended [d]
     * @param stage index of the stage
     * @param tank index of the tank in the stage
     * @param belowM3 volume in that tank below the break [m&sup3;]
     */
    record Burst(int firstDay, int days, int stage, int tank, double belowM3) implements Accident {

        /** Checks the numbers. */
        public Burst {
            Checks.days(firstDay, 0, "firstDay");
            Checks.days(days, 1, "days");
            FixedVolume.toUnits(belowM3, "belowM3");
        }

        @Override
        public Accident on(int day) {
            return new Burst(day, days, stage, tank, belowM3);
        }
    }

    /**
     * Water that must be let out to the last drop, dead volume included.
     *
     * @param firstDay day, from 0
     * @param stage index of the stage
     * @param tank index of the tank in the stage; where the tanks stand open to each other all are dumped
     */
    record Contaminated(int firstDay, int stage, int tank) implements Accident {

        /** Checks the day. */
        public Contaminated {
            Checks.days(firstDay, 0, "firstDay");
        }

        @Override
        public int days() {
            return 1;
        }

        @Override
        public Accident on(int day) {
            return new Contaminated(day, stage, tank);
        }
    }

    /**
     * One tank is shut off, as for cleaning. Its water first goes into the others of the stage as far as they have
     * room; the rest is let out.
     *
     * @param firstDay day, from 0
     * @param days out of use [d]
     * @param stage index of the stage
     * @param tank index of the tank in the stage
     */
    record TankIsolated(int firstDay, int days, int stage, int tank) implements Accident {

        /** Checks the days. */
        public TankIsolated {
            Checks.days(firstDay, 0, "firstDay");
            Checks.days(days, 1, "days");
        }

        @Override
        public Accident on(int day) {
            return new TankIsolated(day, days, stage, tank);
        }
    }

    /**
     * The pump stands still: pumped transfers carry nothing, pumped uses get nothing.
     *
     * @param firstDay day, from 0
     * @param days until it runs again [d]
     */
    record PumpOut(int firstDay, int days) implements Accident {

        /** Checks the days. */
        public PumpOut {
            Checks.days(firstDay, 0, "firstDay");
            Checks.days(days, 1, "days");
        }

        @Override
        public Accident on(int day) {
            return new PumpOut(day, days);
        }
    }

    /** Whether it is going on. */
    default boolean covers(int day) {
        return day >= firstDay() && day - firstDay() < days();
    }
}
