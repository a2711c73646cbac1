package org.roofspring.hydraulics.gravity;

import org.roofspring.hydraulics.internal.Require;

/**
 * Head over a public tapstand [m]: below the least it barely runs, above the most taps wear and splash. Household taps
 * below a low stand run on less; judge them by the flow they give.
 *
 * @param leastM       absolute least
 * @param lowDesiredM  low end of the desired range
 * @param highDesiredM high end of the desired range
 * @param mostM        absolute most
 * @param source       where the numbers are from
 */
public record StandpostHead(double leastM, double lowDesiredM, double highDesiredM, double mostM, String source) {
    /** 7 m, 10 to 30 m, 56 m. */
    public static final StandpostHead USUAL = new StandpostHead(7, 10, 30, 56,
            "Jordan, A Handbook of Gravity-Flow Water Systems, 1980, from memory, verify against it;"
                    + " 10 to 30 m also Akvopedia, Public standpost, after WHO and IRC");

    /** Where a head lies. */
    public enum Verdict {
        TOO_LOW, LOW, GOOD, HIGH, TOO_HIGH
    }

    public StandpostHead {
        Require.within("least head", leastM, 0, 1000, "m");
        Require.within("low desired head", lowDesiredM, leastM, 1000, "m");
        Require.within("high desired head", highDesiredM, lowDesiredM, 1000, "m");
        Require.within("most head", mostM, highDesiredM, 1000, "m");
        Require.text("source of the heads", source);
    }

    /** Judges a head [m], -1e6 to 1e6. */
    public Verdict judge(double headM) {
        Require.within("head", headM, -1e6, 1e6, "m");
        return headM < leastM ? Verdict.TOO_LOW : headM < lowDesiredM ? Verdict.LOW
                : headM <= highDesiredM ? Verdict.GOOD : headM <= mostM ? Verdict.HIGH : Verdict.TOO_HIGH;
    }
}
