package org.roofspring.hydraulics.pump;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Where pump and system meet. Absent values were not measured on this pump or not on both sides of this flow.
 *
 * @param flowM3PerS           [m3/s]
 * @param headM                [m]
 * @param stable               whether the pump returns here after a small disturbance: its head falls below what the
 *                             system needs as the flow rises
 * @param efficiency           shaft to water, 0 to 1
 * @param hydraulicPowerW      power given to the water, rho g Q H [W]
 * @param shaftPowerW          power at the shafts of all pumps [W]; needs efficiency
 * @param inputPowerW          power that the motors take [W], measured or from the motor efficiency
 * @param npshAvailableM       net positive suction head available [m]
 * @param npshRequiredM        net positive suction head required [m]
 * @param energyBasis          where {@code specificEnergyJPerM3} was taken
 * @param specificEnergyJPerM3 energy for each volume pumped [J/m3]
 * @param flowOverBest         flow over the flow of the best measured efficiency
 */
public record DutyPoint(double flowM3PerS, double headM, boolean stable, OptionalDouble efficiency,
        double hydraulicPowerW, OptionalDouble shaftPowerW, OptionalDouble inputPowerW, double npshAvailableM,
        OptionalDouble npshRequiredM, Optional<EnergyBasis> energyBasis, OptionalDouble specificEnergyJPerM3,
        OptionalDouble flowOverBest) {

    /** NPSH available over NPSH required [m]; negative where the pump cavitates. */
    public OptionalDouble npshMarginM() {
        return npshRequiredM.isEmpty() ? npshRequiredM
                : OptionalDouble.of(npshAvailableM - npshRequiredM.getAsDouble());
    }

    static DutyPoint of(PumpSet pumps, SystemCurve system, double flowM3PerS, boolean stable) {
        double headM = pumps.headM(flowM3PerS);
        OptionalDouble efficiency = pumps.efficiency(flowM3PerS);
        double hydraulicW = PumpLaws.hydraulicPowerW(system.water().densityKgPerM3(), flowM3PerS, headM);
        OptionalDouble shaftW = over(OptionalDouble.of(hydraulicW), efficiency);
        OptionalDouble measuredW = pumps.inputPowerW(flowM3PerS);
        OptionalDouble fromMotorW = over(shaftW, pumps.motorEfficiency());
        OptionalDouble inputW = measuredW.isPresent() ? measuredW : fromMotorW;
        Optional<EnergyBasis> basis = measuredW.isPresent() ? Optional.of(EnergyBasis.MEASURED_INPUT)
                : fromMotorW.isPresent() ? Optional.of(EnergyBasis.MOTOR_EFFICIENCY)
                : shaftW.isPresent() ? Optional.of(EnergyBasis.SHAFT) : Optional.empty();
        return new DutyPoint(flowM3PerS, headM, stable, efficiency, hydraulicW, shaftW, inputW,
                system.npshAvailableM(flowM3PerS), pumps.npshRequiredM(flowM3PerS), basis,
                over(inputW.isPresent() ? inputW : shaftW, OptionalDouble.of(flowM3PerS)),
                over(OptionalDouble.of(flowM3PerS), pumps.bestEfficiencyFlowM3PerS()));
    }

    private static OptionalDouble over(OptionalDouble value, OptionalDouble divisor) {
        return value.isEmpty() || divisor.isEmpty() || divisor.getAsDouble() <= 0 ? OptionalDouble.empty()
                : OptionalDouble.of(value.getAsDouble() / divisor.getAsDouble());
    }
}
