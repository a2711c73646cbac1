package org.roofspring.storage.system;

import java.util.List;
import org.roofspring.storage.internal.FixedVolume;

/** Volumes of one stage's tanks in whole units, and what is in working order on a given day. */
final class StagePlan {

    private final Stage.Joint joint;
    private final long[] tankCapacity;
    private final long[] tankDead;
    private final double[] tankSurfaceM2;
    private final Leak[] tankLeak;
    private final long[] tankLeakAbove;
    private final long[] tankLeakConstant;
    private final boolean[] inService;
    private final boolean open;
    private final boolean leaky;
    private long capacity;
    private long dead;

    StagePlan(Stage stage) {
        List<Tank> tanks = stage.tanks();
        int count = tanks.size();
        joint = stage.joint();
        tankCapacity = new long[count];
        tankDead = new long[count];
        tankSurfaceM2 = new double[count];
        tankLeak = new Leak[count];
        tankLeakAbove = new long[count];
        tankLeakConstant = new long[count];
        inService = new boolean[count];
        for (int i = 0; i < count; i++) {
            Tank tank = tanks.get(i);
            tankCapacity[i] = FixedVolume.toUnits(tank.capacityM3(), "capacityM3");
            tankDead[i] = FixedVolume.toUnits(tank.deadVolumeM3(), "deadVolumeM3");
            tankSurfaceM2[i] = tank.openSurfaceM2();
            tankLeak[i] = tank.leak();
            tankLeakAbove[i] = FixedVolume.toUnits(tank.leak().aboveVolumeM3(), "aboveVolumeM3");
            tankLeakConstant[i] = FixedVolume.toUnits(tank.leak().volumeM3PerDay(), "volumeM3PerDay");
        }
        open = tanks.stream().anyMatch(tank -> tank.openSurfaceM2() > 0);
        leaky = tanks.stream().anyMatch(tank -> tank.leak().ratioPerDay() > 0 || tank.leak().volumeM3PerDay() > 0);
        restore();
    }

    /** Puts everything in working order, as each morning does before the accidents. */
    void restore() {
        capacity = 0;
        dead = 0;
        for (int i = 0; i < tankCapacity.length; i++) {
            inService[i] = true;
            capacity += tankCapacity[i];
            dead += tankDead[i];
        }
    }

    long capacity() {
        return capacity;
    }

    long dead() {
        return dead;
    }

    /** Shuts a tank off. */
    void isolate(int tank) {
        if (inService[tank]) {
            inService[tank] = false;
            capacity = Math.max(0, capacity - tankCapacity[tank]);
            dead -= tankDead[tank];
        }
    }

    /** Lowers the capacity to what is below a break. */
    void breakAt(int tank, long below) {
        long held = Math.min(below, tankCapacity[tank]);
        if (joint == Stage.Joint.OPEN) {
            capacity = Math.min(capacity, portion(capacity, held, tankCapacity[tank]));
        } else if (inService[tank]) {
            capacity = Math.max(0, capacity - (tankCapacity[tank] - held));
        }
    }

    /** Water lost at the moment of a break, before the capacity is lowered. */
    long lostAtBreak(int tank, long below, long volume) {
        long held = Math.min(below, tankCapacity[tank]);
        return joint == Stage.Joint.OPEN
                ? Math.max(0, volume - portion(capacity, held, tankCapacity[tank]))
                : Math.max(0, part(tank, volume) - held);
    }

    /** Water that goes with a contaminated tank. */
    long contaminated(int tank, long volume) {
        return joint == Stage.Joint.OPEN ? volume : part(tank, volume);
    }

    /** Of the water above a height, what one tap left open can reach. */
    long withinReachOfOneTap(long volumeAbove) {
        if (joint == Stage.Joint.OPEN) {
            return volumeAbove;
        }
        long most = 0;
        for (int i = 0; i < tankCapacity.length; i++) {
            most = Math.max(most, part(i, volumeAbove));
        }
        return most;
    }

    /** Evaporation off the open surfaces, in units; at most the volume. */
    long evaporation(double evaporationMm, long volume) {
        if (!open) {
            return 0;
        }
        double surfaceM2 = 0;
        for (int i = 0; i < inService.length; i++) {
            surfaceM2 += inService[i] ? tankSurfaceM2[i] : 0;
        }
        return Math.min(volume, Math.round(surfaceM2 * evaporationMm / 1000 * FixedVolume.UNITS_PER_M3));
    }

    /** Leakage in units; at most the volume. */
    long leakage(long volume) {
        if (!leaky) {
            return 0;
        }
        long lost = 0;
        for (int i = 0; i < inService.length; i++) {
            long above = Math.max(0, part(i, volume) - tankLeakAbove[i]);
            lost += Math.min(above, FixedVolume.share(above, tankLeak[i].ratioPerDay()) + tankLeakConstant[i]);
        }
        return Math.min(volume, lost);
    }

    /** The share of the stage's water that stands in one tank: joined at one level, in proportion to capacity. */
    private long part(int tank, long volume) {
        long inUse = 0;
        for (int i = 0; i < inService.length; i++) {
            inUse += inService[i] ? tankCapacity[i] : 0;
        }
        return inService[tank] ? Math.min(volume, portion(volume, tankCapacity[tank], inUse)) : 0;
    }

    private static long portion(long volume, long numerator, long denominator) {
        return denominator == 0 ? volume : FixedVolume.share(volume, (double) numerator / denominator);
    }
}
