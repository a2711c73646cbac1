package org.roofspring.hydraulics.pump;

import org.roofspring.hydraulics.internal.Require;

/**
 * The suction of a pump on a usual and on its worst day, and what each hardship costs alone [m of NPSH].
 *
 * @param usualM         NPSH available on a usual day [m]
 * @param worstM         NPSH available with all hardships at once [m]
 * @param lowestLevelM   what the lowest water level costs
 * @param hottestWaterM  what the hottest water costs
 * @param fouledStrainerM what the fouled strainer costs
 * @param agedPipeM      what aged suction pipe costs
 * @param lowBarometerM  what a low barometer costs
 * @param requiredM      NPSH required by the pump at this flow [m]
 * @param neededM        NPSH required with its margin [m]
 */
public record SuctionReview(double usualM, double worstM, double lowestLevelM, double hottestWaterM,
        double fouledStrainerM, double agedPipeM, double lowBarometerM, double requiredM, double neededM) {

    /** Whether the worst day still has the margin. */
    public boolean holds() {
        return worstM >= neededM;
    }

    /** Worst NPSH available over NPSH required [m]; negative where the pump cavitates. */
    public double marginM() {
        return worstM - requiredM;
    }

    /**
     * Compares the two days at a flow.
     *
     * @param flowM3PerS    [m3/s], 0 to 1000
     * @param npshRequiredM of the pump at that flow [m], 0 to 1000
     */
    public static SuctionReview of(SuctionConditions usual, SuctionConditions worst, double flowM3PerS,
            double npshRequiredM, NpshMargin margin) {
        Require.present("usual conditions", usual);
        Require.present("worst conditions", worst);
        Require.present("margin", margin);
        double usualM = usual.npshAvailableM(flowM3PerS);
        return new SuctionReview(usualM, worst.npshAvailableM(flowM3PerS),
                usualM - usual.withLiftM(worst.liftM()).npshAvailableM(flowM3PerS),
                usualM - usual.withTemperatureC(worst.temperatureC()).npshAvailableM(flowM3PerS),
                usualM - usual.withStrainer(worst.strainer()).npshAvailableM(flowM3PerS),
                usualM - usual.withPipes(worst.pipes()).npshAvailableM(flowM3PerS),
                usualM - usual.withAirPressurePa(worst.airPressurePa()).npshAvailableM(flowM3PerS),
                npshRequiredM, margin.neededM(npshRequiredM));
    }
}
