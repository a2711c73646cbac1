package org.roofspring.hydraulics.pump;

import org.roofspring.hydraulics.HeadLoss;
import org.roofspring.hydraulics.internal.Require;

/**
 * The way from the suction water to the pump.
 *
 * @param liftM height of the pump above the suction water [m], -1000 to 1000; negative where the water stands above it
 * @param loss  head that pipe, fittings and strainer of the suction take
 */
public record Suction(double liftM, HeadLoss loss) {
    public Suction {
        Require.within("suction lift", liftM, -1000, 1000, "m");
        Require.present("head loss of the suction", loss);
    }

    /** A pump at the level of the water, with nothing in the way. */
    public static Suction level() {
        return new Suction(0, HeadLoss.none());
    }
}
