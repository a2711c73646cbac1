package org.roofspring.hydraulics;

/** How water moves in a pipe, by Reynolds number. */
public enum FlowRegime {
    /** No flow: nothing rubs, the friction factor is reported as nil. */
    AT_REST,
    /** Reynolds number up to 2000. */
    LAMINAR,
    /** Between 2000 and 4000: the friction factor is a smooth join without claim to accuracy. */
    TRANSITIONAL,
    /** Reynolds number from 4000. */
    TURBULENT;

    /** The regime at a Reynolds number of nil or more. */
    public static FlowRegime at(double reynolds) {
        return !(reynolds >= PipeFriction.LOWEST_REYNOLDS) ? AT_REST : reynolds <= PipeFriction.LAMINAR_UP_TO ? LAMINAR
                : reynolds < PipeFriction.TURBULENT_FROM ? TRANSITIONAL : TURBULENT;
    }
}
