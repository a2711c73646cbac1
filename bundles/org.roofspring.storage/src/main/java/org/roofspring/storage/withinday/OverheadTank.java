package org.roofspring.storage.withinday;

/**
 * A tank that a pump fills and taps empty.
 *
 * @param capacityM3 volume up to the overflow [m&sup3;], above 0 to 2,000,000
 * @param deadVolumeM3 volume below the outlet [m&sup3;], 0 or more
 * @param startVolumeM3 volume at which the pump is switched on [m&sup3;], the dead volume or more
 * @param stopVolumeM3 volume at which it is switched off [m&sup3;], above that, to the capacity
 */
public record OverheadTank(double capacityM3, double deadVolumeM3, double startVolumeM3, double stopVolumeM3) {

    private static final double MAX_M3 = 2_000_000;

    /** Checks the volumes. */
    public OverheadTank {
        if (!(capacityM3 > 0 && capacityM3 <= MAX_M3)) {
            throw new IllegalArgumentException(
                    "capacityM3 is " + capacityM3 + " m3; accepted is above 0 to 2000000 m3");
        }
        between("deadVolumeM3", deadVolumeM3, 0, capacityM3);
        between("startVolumeM3", startVolumeM3, deadVolumeM3, capacityM3);
        between("stopVolumeM3", stopVolumeM3, startVolumeM3, capacityM3);
        if (stopVolumeM3 == startVolumeM3) {
            throw new IllegalArgumentException("stopVolumeM3 is " + stopVolumeM3
                    + " m3, the same as startVolumeM3; accepted is more, or the pump would not settle");
        }
    }

    private static void between(String name, double volumeM3, double leastM3, double mostM3) {
        if (!(volumeM3 >= leastM3 && volumeM3 <= mostM3)) {
            throw new IllegalArgumentException(
                    name + " is " + volumeM3 + " m3; accepted is " + leastM3 + " to " + mostM3 + " m3");
        }
    }

    /** A tank of the same proportions. */
    public OverheadTank scaledTo(double otherCapacityM3) {
        double ratio = otherCapacityM3 / capacityM3;
        return new OverheadTank(otherCapacityM3, deadVolumeM3 * ratio, startVolumeM3 * ratio,
                Math.min(otherCapacityM3, stopVolumeM3 * ratio));
    }
}
