package org.roofspring.hydraulics.pump;

import java.util.OptionalDouble;

import org.roofspring.hydraulics.internal.Require;

/**
 * A pump that feeds taps through a pressure vessel, without an overhead tank.
 *
 * @param atCutIn        where the pump runs when it has just started
 * @param atCutOut       where it runs when it is about to stop; without a working point the pump never reaches the
 *                       cut-out pressure and does not stop
 * @param drawdownM3     water that can be drawn before the pump starts again [m3]
 * @param prechargeFits  whether the precharge is not above the cut-in pressure; above it the flow stops for a moment
 *                       before the pump starts
 */
public record DirectSupply(DutyOutcome atCutIn, DutyOutcome atCutOut, double drawdownM3, boolean prechargeFits) {

    /**
     * Puts a pump, a vessel and a switch together.
     *
     * @param toVessel what the pump works against up to the vessel: its static head is the height of the pressure
     *                 switch over the suction water
     */
    public static DirectSupply of(PumpSet pumps, SystemCurve toVessel, PressureVessel vessel,
            PressureSwitch pressureSwitch) {
        Require.present("system curve", toVessel);
        Require.present("pressure vessel", vessel);
        Require.present("pressure switch", pressureSwitch);
        return new DirectSupply(DutySolver.solve(pumps, against(toVessel, pressureSwitch.cutInPa())),
                DutySolver.solve(pumps, against(toVessel, pressureSwitch.cutOutPa())),
                vessel.drawdownM3(pressureSwitch, toVessel.airPressurePa()),
                vessel.prechargePa() <= pressureSwitch.cutInPa());
    }

    private static SystemCurve against(SystemCurve toVessel, double pressurePa) {
        return new SystemCurve(toVessel.staticHeadM() + toVessel.water().headM(pressurePa), toVessel.delivery(),
                toVessel.suction(), toVessel.water(), toVessel.airPressurePa());
    }

    /** Whether the pump comes up to the cut-out pressure and so can stop. */
    public boolean stops() {
        return atCutOut.working().isPresent();
    }

    /**
     * Most starts that any draw-off can cause [1/s], with the mean of the flows at cut-in and cut-out; absent where the
     * pump has no working point at one of them.
     */
    public OptionalDouble mostStartsPerS() {
        if (atCutIn.working().isEmpty() || atCutOut.working().isEmpty() || drawdownM3 < 1e-6) {
            return OptionalDouble.empty();
        }
        double meanM3PerS = (atCutIn.working().get().flowM3PerS() + atCutOut.working().get().flowM3PerS()) / 2;
        return OptionalDouble.of(PumpOperation.mostStartsPerS(meanM3PerS, drawdownM3));
    }

    /**
     * Level of the suction water at which a dry-run cut-out must have stopped the pump [m]: the higher of the intake
     * with its least submergence, and the level at which the suction lift is at its greatest.
     *
     * @param intakeLevelM   level of the mouth of the intake [m], -1000 to 10 000
     * @param submergenceM   least depth over it [m], 0 to 100, see {@link Submergence}
     * @param pumpLevelM     level of the pump [m], -1000 to 10 000
     * @param greatestLiftM  [m], -1000 to 11, see {@link SuctionLift#greatestM}
     */
    public static double dryRunStopLevelM(double intakeLevelM, double submergenceM, double pumpLevelM,
            double greatestLiftM) {
        Require.within("level of the intake", intakeLevelM, -1000, 10_000, "m");
        Require.within("submergence", submergenceM, 0, 100, "m");
        Require.within("level of the pump", pumpLevelM, -1000, 10_000, "m");
        Require.within("greatest suction lift", greatestLiftM, -1000, 11, "m");
        return Math.max(intakeLevelM + submergenceM, pumpLevelM - greatestLiftM);
    }
}
