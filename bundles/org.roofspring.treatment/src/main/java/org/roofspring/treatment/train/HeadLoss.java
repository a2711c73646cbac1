package org.roofspring.treatment.train;

import org.roofspring.treatment.Source;
import org.roofspring.treatment.internal.Checks;

/**
 * Head that a step takes at a flow: h = h_ref (Q / Q_ref)^n, with h_ref from clean to fouled as the element fills up.
 *
 * @param flowM3PerS  Q_ref, above 0 to 1 [m3/s]
 * @param cleanHeadM  at Q_ref when new, 0 to 1000 [m]
 * @param fouledHeadM at Q_ref when it is due for a change, {@code cleanHeadM} to 1000 [m]
 * @param exponent    n: 1 for slow flow through fine pores (ceramic, sand, membrane), 2 for a housing, 1 to 2
 * @param source      data sheet, or the assumption
 */
public record HeadLoss(double flowM3PerS, double cleanHeadM, double fouledHeadM, double exponent, Source source) {

    /** A step outside the pipe, such as a kettle, takes none. */
    public static final HeadLoss NONE = new HeadLoss(1, 0, 0, 1, Source.derived("no pipe passes through this step"));

    private static final double MAX_HEAD_M = 1000;
    private static final double MAX_FLOW_M3_PER_S = 1;

    public HeadLoss {
        Checks.positive("reference flow (flowM3PerS)", flowM3PerS, MAX_FLOW_M3_PER_S, "m3/s");
        Checks.within("clean head loss (cleanHeadM)", cleanHeadM, 0, MAX_HEAD_M, "m");
        Checks.within("fouled head loss (fouledHeadM)", fouledHeadM, cleanHeadM, MAX_HEAD_M, "m");
        Checks.within("exponent", exponent, 1, 2, "");
        Checks.present("source", source);
    }

    /** Head loss when new [m] at 0 to 1 m3/s. */
    public double cleanHeadM(double flowM3PerS) {
        return scaled(cleanHeadM, flowM3PerS);
    }

    /** Head loss when due for a change [m] at 0 to 1 m3/s. */
    public double fouledHeadM(double flowM3PerS) {
        return scaled(fouledHeadM, flowM3PerS);
    }

    private double scaled(double headM, double atM3PerS) {
        Checks.within("flow (flowM3PerS)", atM3PerS, 0, MAX_FLOW_M3_PER_S, "m3/s");
        double scaled = headM == 0 ? 0 : headM * Math.pow(atM3PerS / flowM3PerS, exponent);
        if (!(scaled < 1e9)) {
            throw new IllegalArgumentException("flow (flowM3PerS) must be nearer to the reference flow of "
                    + Checks.plain(flowM3PerS) + " m3/s, not " + Checks.plain(atM3PerS));
        }
        return scaled;
    }
}
