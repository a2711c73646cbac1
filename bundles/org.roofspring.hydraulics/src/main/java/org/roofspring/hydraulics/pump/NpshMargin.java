package org.roofspring.hydraulics.pump;

import org.roofspring.hydraulics.internal.Require;

/**
 * How much NPSH available must stand over NPSH required. NPSH required is measured where the head has already dropped
 * by 3 %, so a pump run at it is worn by cavitation. The default, 1.3 times and at least 0.6 m over, is after ANSI/HI
 * 9.6.1, from memory; verify against it and against what the maker asks.
 *
 * @param ratio    1 to 10
 * @param leastM   [m], 0 to 20
 */
public record NpshMargin(double ratio, double leastM) {
    public static final NpshMargin USUAL = new NpshMargin(1.3, 0.6);

    public NpshMargin {
        Require.within("ratio of NPSH available to required", ratio, 1, 10, "");
        Require.within("least margin of NPSH", leastM, 0, 20, "m");
    }

    /** NPSH that must be available where the pump requires this much [m]. */
    public double neededM(double npshRequiredM) {
        Require.within("NPSH required", npshRequiredM, 0, 1000, "m");
        return Math.max(ratio * npshRequiredM, npshRequiredM + leastM);
    }
}
