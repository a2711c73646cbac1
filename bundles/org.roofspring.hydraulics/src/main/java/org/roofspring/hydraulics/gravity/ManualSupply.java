package org.roofspring.hydraulics.gravity;

import org.roofspring.hydraulics.WaterProperties;
import org.roofspring.hydraulics.internal.Require;

/** Water by hand, when the pump or its power is out. */
public final class ManualSupply {
    /** What an adult keeps up at a pump handle for half an hour [W]; from memory, no source at hand. */
    public static final double SUSTAINED_POWER_W = 60;
    /** Flow of a hand pump for planning [m3/s], 17 L/min: Sphere Handbook 2018, from memory, verify against it. */
    public static final double PLANNING_HAND_PUMP_M3_PER_S = 0.017 / 60;

    private ManualSupply() {
    }

    /**
     * Flow of a hand pump [m3/s], eta P / (rho g H).
     *
     * @param powerW     of the person [W], 1 to 1000
     * @param efficiency of pump and handle, 0.05 to 1; 0.5 is common practice, no source
     * @param headM      lift from the water to the spout [m], 0.1 to 200
     */
    public static double handPumpFlowM3PerS(double powerW, double efficiency, double headM, WaterProperties water) {
        Require.within("power of a person", powerW, 1, 1000, "W");
        Require.within("efficiency of the hand pump", efficiency, 0.05, 1, "");
        Require.within("lift of the hand pump", headM, 0.1, 200, "m");
        return efficiency * powerW / Require.present("water", water).pressurePa(headM);
    }

    /**
     * Trips with a bucket.
     *
     * @param volumeM3 wanted [m3], 0 to 1000
     * @param bucketM3 carried each time [m3], 0.001 to 0.05; 1 L weighs 1 kg
     */
    public static int bucketTrips(double volumeM3, double bucketM3) {
        Require.within("volume wanted", volumeM3, 0, 1000, "m3");
        Require.within("volume carried at a time", bucketM3, 0.001, 0.05, "m3");
        return (int) Math.ceil(volumeM3 / bucketM3 * (1 - 1e-12));
    }

    /**
     * Time of one trip: filling at a flow and walking both ways [s].
     *
     * @param bucketM3       [m3], 0.001 to 0.05
     * @param fillM3PerS     flow into the bucket [m3/s], 1e-6 to 1
     * @param distanceM      one way [m], 0 to 10 000
     * @param walkingMPerS   mean of empty and laden [m/s], 0.1 to 3
     */
    public static double bucketTripS(double bucketM3, double fillM3PerS, double distanceM, double walkingMPerS) {
        Require.within("volume carried at a time", bucketM3, 0.001, 0.05, "m3");
        Require.within("flow into the bucket", fillM3PerS, 1e-6, 1, "m3/s");
        Require.within("distance one way", distanceM, 0, 10_000, "m");
        Require.within("walking speed", walkingMPerS, 0.1, 3, "m/s");
        return bucketM3 / fillM3PerS + 2 * distanceM / walkingMPerS;
    }
}
