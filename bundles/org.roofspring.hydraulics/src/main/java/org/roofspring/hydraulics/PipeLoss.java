package org.roofspring.hydraulics;

/**
 * What happens in a run of pipe at one flow.
 *
 * @param velocityMPerS  mean velocity [m/s]
 * @param reynolds       Reynolds number V D / nu
 * @param regime         laminar, transitional (no accuracy claimed) or turbulent
 * @param frictionFactor Darcy friction factor; nil at rest
 * @param frictionLossM  head lost along the pipe [m]
 * @param fittingLossM   head lost in fittings, K V^2 / 2g [m]
 */
public record PipeLoss(double velocityMPerS, double reynolds, FlowRegime regime, double frictionFactor,
        double frictionLossM, double fittingLossM) {
    /** Friction and fittings together [m]. */
    public double totalLossM() {
        return frictionLossM + fittingLossM;
    }
}
