package org.roofspring.hydraulics;

import org.roofspring.hydraulics.internal.Require;

/**
 * Valves, bends and ends of pipe with their loss coefficients K of h = K V^2 / 2g.
 *
 * <p>Most are N times fT, the friction factor of fully rough flow in clean commercial steel of the same size, so that K
 * falls with size; entrances and exits are plain numbers. Values after Crane Technical Paper 410 (2009): valves and
 * entrances as quoted by the source of the open library "fluids", tees from memory; verify against Crane TP 410.
 */
public enum FittingType {
    GATE_VALVE("gate valve, open", 8, true),
    GLOBE_VALVE("globe valve, open", 340, true),
    ANGLE_VALVE("angle valve, seat across the flow", 150, true),
    ANGLE_VALVE_STRAIGHTENED("angle valve, streamlined seat", 55, true),
    BALL_VALVE("ball valve, full bore, open", 3, true),
    PLUG_VALVE_STRAIGHT("plug valve, straight way", 18, true),
    PLUG_VALVE_THREE_WAY_RUN("three-way plug valve, straight through", 30, true),
    PLUG_VALVE_THREE_WAY_BRANCH("three-way plug valve, through the branch", 90, true),
    SWING_CHECK_ANGLED("swing check valve, angled seat", 100, true),
    SWING_CHECK_STRAIGHT("swing check valve, straight seat", 50, true),
    LIFT_CHECK_STRAIGHT("lift check valve, globe body", 600, true),
    LIFT_CHECK_ANGLED("lift check valve, angle body", 55, true),
    FOOT_VALVE_POPPET("foot valve and strainer, poppet disc", 420, true),
    FOOT_VALVE_HINGED("foot valve and strainer, hinged disc", 75, true),
    ELBOW_45("elbow, 45 degrees", 16, true),
    ELBOW_90("elbow, 90 degrees", 30, true),
    CLOSE_RETURN("close return bend", 50, true),
    TEE_RUN("tee, straight through", 20, true),
    TEE_BRANCH("tee, through the branch", 60, true),
    ENTRANCE_SHARP("entrance, flush and sharp", 0.5, false),
    ENTRANCE_PROJECTING("entrance, pipe standing into the tank", 0.78, false),
    EXIT("exit into a tank or the open", 1.0, false);

    private final String description;
    private final double number;
    private final boolean timesTurbulentFactor;

    FittingType(String description, double number, boolean timesTurbulentFactor) {
        this.description = description;
        this.number = number;
        this.timesTurbulentFactor = timesTurbulentFactor;
    }

    /** In words. */
    public String description() {
        return description;
    }

    /** N of K = N fT where {@link #timesTurbulentFactor}, else K itself. */
    public double number() {
        return number;
    }

    /** Whether K is a multiple of fT. */
    public boolean timesTurbulentFactor() {
        return timesTurbulentFactor;
    }

    /**
     * Loss coefficient K of one of these in a pipe.
     *
     * @param boreM bore of the pipe [m], 0.005 to 1
     */
    public double k(double boreM) {
        Require.within("bore of a fitting", boreM, Fittings.SMALLEST_BORE_M, Fittings.LARGEST_BORE_M, "m");
        return timesTurbulentFactor ? number * Fittings.turbulentFactor(boreM) : number;
    }
}
