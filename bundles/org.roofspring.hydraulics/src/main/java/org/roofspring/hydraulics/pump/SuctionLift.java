package org.roofspring.hydraulics.pump;

import org.roofspring.hydraulics.Atmosphere;
import org.roofspring.hydraulics.internal.LinearTable;
import org.roofspring.hydraulics.internal.Require;

/** How high a pump can lift by suction. */
public final class SuctionLift {
    /** How far a deep depression stands below the mean pressure of a place [Pa]; common practice, no source. */
    public static final double LOW_BAROMETER_DROP_PA = 4000;

    private static final LinearTable PRACTICAL = new LinearTable(0, 6.7, 402, 6.4, 805, 6.1, 1207, 5.5, 1609, 5.2, 2012,
            4.9, 2414, 4.6, 3219, 4.3);

    private SuctionLift() {
    }

    /**
     * The lift a sound centrifugal pump on cold water is usually held to, by altitude: an advisory figure from a table
     * for practitioners (The Engineering ToolBox, suction head and altitude, read), 6.7 m at sea level and 4.3 m at
     * 3219 m. Above the table the last value goes down with the air pressure.
     *
     * @param altitudeM [m], -500 to 9000; below sea level counts as sea level
     */
    public static double practicalLimitM(double altitudeM) {
        double pressurePa = Atmosphere.pressurePa(altitudeM);
        if (altitudeM > PRACTICAL.high()) {
            return PRACTICAL.value(PRACTICAL.high()) * pressurePa / Atmosphere.pressurePa(PRACTICAL.high());
        }
        return PRACTICAL.value(Math.max(0, altitudeM));
    }

    /**
     * The lift at which NPSH available is down to what is needed [m], for the flow, pipe, water and air of the
     * conditions; their own lift does not count. Negative: the pump must stand below the water.
     *
     * @param flowM3PerS [m3/s], 0 to 1000
     * @param neededM    NPSH required with its margin [m], 0 to 1000
     */
    public static double greatestM(SuctionConditions conditions, double flowM3PerS, double neededM) {
        Require.present("conditions", conditions);
        Require.within("NPSH needed", neededM, 0, 1000, "m");
        return conditions.withLiftM(0).npshAvailableM(flowM3PerS) - neededM;
    }
}
