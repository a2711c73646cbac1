package org.roofspring.hydraulics;

import org.roofspring.hydraulics.internal.Require;

/** A run of pipe filled with a given water: all that does not depend on the flow is worked out once. */
final class PipeResistance implements HeadLoss {
    private final double velocityPerFlow;
    private final double reynoldsPerFlow;
    private final double colebrookA;
    private final double velocityHeadPerFlow2;
    private final double lengthOverBore;
    private final double fittingsK;

    PipeResistance(PipeRun run, WaterProperties water) {
        velocityPerFlow = 1 / run.areaM2();
        reynoldsPerFlow = velocityPerFlow * run.boreM() / water.kinematicViscosityM2PerS();
        colebrookA = run.roughnessM() / run.boreM() / 3.7;
        velocityHeadPerFlow2 = velocityPerFlow * velocityPerFlow / (2 * PhysicalConstants.GRAVITY_M_PER_S2);
        lengthOverBore = run.lengthM() / run.boreM();
        fittingsK = run.fittingsK();
    }

    @Override
    public double headM(double flowM3PerS) {
        requireFlow(flowM3PerS);
        double reynolds = reynoldsPerFlow * flowM3PerS;
        if (reynolds < PipeFriction.LOWEST_REYNOLDS) {
            return 0;
        }
        double factor = PipeFriction.uncheckedFrictionFactor(reynolds, colebrookA);
        return (factor * lengthOverBore + fittingsK) * velocityHeadPerFlow2 * flowM3PerS * flowM3PerS;
    }

    PipeLoss lossAt(double flowM3PerS) {
        requireFlow(flowM3PerS);
        double reynolds = reynoldsPerFlow * flowM3PerS;
        if (reynolds < PipeFriction.LOWEST_REYNOLDS) {
            return new PipeLoss(0, 0, FlowRegime.AT_REST, 0, 0, 0);
        }
        double factor = PipeFriction.uncheckedFrictionFactor(reynolds, colebrookA);
        double velocityHeadM = velocityHeadPerFlow2 * flowM3PerS * flowM3PerS;
        return new PipeLoss(velocityPerFlow * flowM3PerS, reynolds, FlowRegime.at(reynolds), factor,
                factor * lengthOverBore * velocityHeadM, fittingsK * velocityHeadM);
    }

    private static void requireFlow(double flowM3PerS) {
        Require.within("flow", flowM3PerS, 0, PipeRun.HIGHEST_FLOW_M3_PER_S, "m3/s");
    }
}
