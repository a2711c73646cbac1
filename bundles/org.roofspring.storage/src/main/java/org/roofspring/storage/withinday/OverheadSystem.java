package org.roofspring.storage.withinday;

/**
 * An overhead tank, its pump and its draw.
 *
 * @param tank with its switching levels
 * @param pump flow when it runs; nothing where there is no power or sun
 * @param draw what the taps ask for
 * @param control what switches the pump
 */
public record OverheadSystem(OverheadTank tank, DayPattern pump, DayPattern draw, Control control) {

    private static final double SHORTEST_SWING_S = 1;

    /** What switches the pump on. */
    public enum Control {
        /** The low level only: after a cut of power it stays off until that is reached, unless it was filling. */
        LEVELS,
        /** The low level, and the return of power, sun or an attendant: it then fills the tank from wherever it is. */
        LEVELS_AND_RETURN_OF_POWER
    }

    /** Checks that the pump would not flutter. */
    public OverheadSystem {
        if (control == null) {
            throw new IllegalArgumentException("control is missing; accepted is a Control");
        }
        double swingM3 = tank.stopVolumeM3() - tank.startVolumeM3();
        double fastest = Math.max(pump.largestFlowM3PerS(), draw.largestFlowM3PerS());
        if (swingM3 < SHORTEST_SWING_S * fastest) {
            throw new IllegalArgumentException("stopVolumeM3 less startVolumeM3 is " + swingM3
                    + " m3, which passes in less than a second; accepted is " + SHORTEST_SWING_S * fastest
                    + " m3 or more");
        }
    }

    /** The same with a tank of another size and the same proportions. */
    public OverheadSystem scaledTo(double capacityM3) {
        return new OverheadSystem(tank.scaledTo(capacityM3), pump, draw, control);
    }
}
