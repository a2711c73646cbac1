package org.roofspring.calc.standard.water;

import org.roofspring.site.Roof;
import org.roofspring.site.RoofDrain;

/** How a roof's water is shared among its drains. */
public final class DrainShares {
    private DrainShares() {
    }

    /** Share of a drain; drains without one take equal parts of what the others leave. */
    public static double of(Roof roof, RoofDrain drain) {
        if (drain.getShare() != null) {
            return drain.getShare().si();
        }
        double given = roof.getDrains().stream().filter(d -> d.getShare() != null)
                .mapToDouble(d -> d.getShare().si()).sum();
        long without = roof.getDrains().stream().filter(d -> d.getShare() == null).count();
        return Math.max(0, 1 - given) / without;
    }
}
