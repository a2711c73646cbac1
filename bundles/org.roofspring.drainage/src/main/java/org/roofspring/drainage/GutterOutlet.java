package org.roofspring.drainage;

import org.roofspring.drainage.internal.Require;

/**
 * A round outlet in the sole of a gutter. Up to a depth of half its diameter water falls over its edge as over a weir,
 * {@code Q = D h^1.5 / 7500}; deeper, it acts as an orifice, {@code Q = D^2 h^0.5 / 15000} [L/s, mm]; both agree where
 * they meet. A strainer halves the flow. (EN 12056-3:2000, table 6, from memory.)
 *
 * @param diameterM from 0.02 to 0.5 m
 * @param strained  whether a strainer or leaf guard covers it
 */
public record GutterOutlet(double diameterM, boolean strained) {
    /** Share of the flow that a strainer leaves. */
    public static final double STRAINED_RATIO = 0.5;

    /** From L/s and mm: {@code 1 / 7500 L/s mm^-2.5} is {@code 1000^2.5 / 7500 / 1000 m^0.5/s}. */
    private static final double WEIR = Math.pow(1000, 1.5) / 7500;
    private static final double ORIFICE = Math.pow(1000, 1.5) / 15000;

    public GutterOutlet {
        Require.range("diameterM", diameterM, 0.02, 0.5, "an outlet diameter from 0.02 to 0.5 m");
    }

    private double ratio() {
        return strained ? STRAINED_RATIO : 1;
    }

    /**
     * Flow [m3/s] under a depth of water.
     *
     * @param headM depth over the outlet, from 0 to 10 m
     */
    public double flowM3PerS(double headM) {
        Require.range("headM", headM, 0, 10, "a depth from 0 to 10 m");
        return ratio() * (actsAsWeir(headM) ? WEIR * diameterM * Math.pow(headM, 1.5)
                : ORIFICE * diameterM * diameterM * Math.sqrt(headM));
    }

    /** Whether a depth of water [m] is small enough for the outlet to act as a weir. */
    public boolean actsAsWeir(double headM) {
        return headM <= diameterM / 2;
    }

    /**
     * Depth of water [m] that a flow needs.
     *
     * @param flowM3PerS from 0 to 100 m3/s
     */
    public double headM(double flowM3PerS) {
        Require.range("flowM3PerS", flowM3PerS, 0, 100, "a flow from 0 to 100 m3/s");
        double open = flowM3PerS / ratio();
        double weir = Math.cbrt(Math.pow(open / (WEIR * diameterM), 2));
        return actsAsWeir(weir) ? weir : Math.pow(open / (ORIFICE * diameterM * diameterM), 2);
    }
}
