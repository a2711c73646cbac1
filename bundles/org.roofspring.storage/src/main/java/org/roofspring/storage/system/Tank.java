package org.roofspring.storage.system;

import org.roofspring.storage.internal.FixedVolume;

/**
 * One tank.
 *
 * @param name shown to people
 * @param capacityM3 volume up to the overflow [m&sup3;], 0 to 2,000,000
 * @param deadVolumeM3 volume below the lowest outlet, which cannot be drawn [m&sup3;], 0 to the capacity
 * @param startVolumeM3 volume as the first day begins, the dead volume included [m&sup3;], 0 to the capacity
 * @param openSurfaceM2 water surface open to the air [m&sup2;], 0 for a covered tank; taken as the same at every level
 * @param leak what it loses
 */
public record Tank(String name, double capacityM3, double deadVolumeM3, double startVolumeM3, double openSurfaceM2,
        Leak leak) {

    /** Checks the numbers. */
    public Tank {
        long capacity = FixedVolume.toUnits(capacityM3, "capacityM3");
        within(FixedVolume.toUnits(deadVolumeM3, "deadVolumeM3"), capacity, deadVolumeM3, "deadVolumeM3");
        within(FixedVolume.toUnits(startVolumeM3, "startVolumeM3"), capacity, startVolumeM3, "startVolumeM3");
        if (!(openSurfaceM2 >= 0 && openSurfaceM2 <= 1e6)) {
            throw new IllegalArgumentException("openSurfaceM2 is " + openSurfaceM2 + " m2; accepted is 0 to 1000000");
        }
    }

    /** A covered, tight tank without dead volume. */
    public static Tank plain(String name, double capacityM3, double startVolumeM3) {
        return new Tank(name, capacityM3, 0, startVolumeM3, 0, Leak.NONE);
    }

    private static void within(long units, long capacity, double given, String name) {
        if (units > capacity) {
            throw new IllegalArgumentException(name + " is " + given + " m3; accepted is 0 to the tank's capacity");
        }
    }
}
