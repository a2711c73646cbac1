package org.roofspring.storage.system;

import java.util.List;
import org.roofspring.storage.internal.FixedVolume;

/**
 * A system run forward one day at a time from volumes of the caller's choice, for questions that look at each day as
 * it passes and stop when they have seen enough. The series are checked once and may be run many times. Belongs to one
 * thread.
 */
public final class SystemForward {

    private final StorageSystem system;
    private final SystemDay day;
    private final int days;
    private SystemState state;
    private int next;

    /**
     * @param system the tanks and uses; the volumes that its tanks name for the start are not used
     * @param series inflow by stage, demand by use, evaporation
     * @throws IllegalArgumentException when the parts do not fit together or a value is out of range
     */
    public SystemForward(StorageSystem system, SystemSeries series) {
        this.system = system;
        SystemInputs inputs = SystemInputs.of(system, series);
        day = new SystemDay(system, inputs, List.of());
        days = inputs.days();
        state = day.start();
    }

    /**
     * Goes back to the morning of the first day.
     *
     * @param stageVolumeM3 volume in each stage, dead volume included [m&sup3;], 0 to the stage's capacity
     * @throws IllegalArgumentException when a volume is out of range or there are not as many as stages
     */
    public void restart(double[] stageVolumeM3) {
        if (stageVolumeM3.length != system.stages().size()) {
            throw new IllegalArgumentException("stageVolumeM3 has " + stageVolumeM3.length + " volumes; accepted is "
                    + system.stages().size() + ", one for each stage");
        }
        long[] volume = new long[stageVolumeM3.length];
        for (int stage = 0; stage < volume.length; stage++) {
            volume[stage] = FixedVolume.toUnits(stageVolumeM3[stage], "stageVolumeM3 of stage " + stage);
            long capacity = capacity(system.stages().get(stage));
            if (volume[stage] > capacity) {
                throw new IllegalArgumentException("stageVolumeM3 of stage " + stage + " is " + stageVolumeM3[stage]
                        + " m3; accepted is 0 to its capacity of " + FixedVolume.toM3(capacity) + " m3");
            }
        }
        state = new SystemState(volume, SystemState.NO_LOAD);
        next = 0;
    }

    private static long capacity(Stage stage) {
        return stage.tanks().stream().mapToLong(tank -> FixedVolume.toUnits(tank.capacityM3(), "capacityM3")).sum();
    }

    /** Whether there is another day. */
    public boolean hasNext() {
        return next < days;
    }

    /** Runs the next day; what follows is about that day. */
    public void next() {
        day.run(next, state);
        next++;
    }

    /** Whether the use was given all that it asked for on the day last run. */
    public boolean met(int use) {
        return day.supplied[use] >= day.demand(use, next - 1);
    }

    /** Given to the use on the day last run [m&sup3;]. */
    public double suppliedM3(int use) {
        return FixedVolume.toM3(day.supplied[use]);
    }

    /** Volume in a stage as the day last run ends, dead volume included [m&sup3;]. */
    public double stageVolumeM3(int stage) {
        return FixedVolume.toM3(state.volume[stage]);
    }

    /** Volume that can be drawn, all stages together, as the day last run ends [m&sup3;]. */
    public double usableM3() {
        return FixedVolume.toM3(day.usable(state));
    }
}
