package org.roofspring.hydraulics.pump;

import org.roofspring.hydraulics.HeadLoss;
import org.roofspring.hydraulics.PhysicalConstants;
import org.roofspring.hydraulics.WaterProperties;
import org.roofspring.hydraulics.internal.Require;

/**
 * What a pump works against: a static head, and losses that rise with the flow.
 *
 * @param staticHeadM    from the suction water level to the discharge level, whole [m], -1000 to 10 000; the suction
 *                       lift is part of it
 * @param delivery       head that the delivery takes
 * @param suction        lift and losses ahead of the pump; the losses count in the head too
 * @param water          the water that is pumped
 * @param airPressurePa  on the suction water [Pa], 20 000 to 120 000
 */
public record SystemCurve(double staticHeadM, HeadLoss delivery, Suction suction, WaterProperties water,
        double airPressurePa) {
    public SystemCurve {
        Require.within("static head", staticHeadM, -1000, 10_000, "m");
        Require.present("head loss of the delivery", delivery);
        Require.present("suction", suction);
        Require.present("water", water);
        Require.within("air pressure", airPressurePa, 20_000, 120_000, "Pa");
    }

    /** A system at sea level whose pump stands at the level of the water it draws, with no loss in the suction. */
    public static SystemCurve of(double staticHeadM, HeadLoss delivery, WaterProperties water) {
        return new SystemCurve(staticHeadM, delivery, Suction.level(), water,
                PhysicalConstants.STANDARD_ATMOSPHERE_PA);
    }

    /**
     * Head that this flow needs [m]: static head and the losses of delivery and suction.
     *
     * @param flowM3PerS [m3/s], 0 to 1000
     */
    public double headM(double flowM3PerS) {
        return staticHeadM + delivery.headM(flowM3PerS) + suction.loss().headM(flowM3PerS);
    }

    /**
     * Net positive suction head available at the pump [m]; negative where the water boils before it gets there.
     *
     * @param flowM3PerS [m3/s], 0 to 1000
     */
    public double npshAvailableM(double flowM3PerS) {
        return water.headM(airPressurePa - water.vapourPressurePa()) - suction.liftM()
                - suction.loss().headM(flowM3PerS);
    }
}
