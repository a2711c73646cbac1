package org.roofspring.drainage;

import org.roofspring.drainage.internal.Require;

/**
 * How many outlets an eave needs. They stand evenly, each in the middle of its stretch, so that gutters of half a
 * stretch fall to it from both sides.
 *
 * @param outlets     along the eave
 * @param spacingM    from outlet to outlet
 * @param run         from a water-parting to an outlet
 * @param capacity    of a run
 * @param flowM3PerS  that a run gathers
 */
public record OutletLayout(int outlets, double spacingM, GutterRun run, GutterRun.Capacity capacity,
        double flowM3PerS) {
    /** More outlets than this are not tried. */
    public static final int MOST_OUTLETS = 200;

    private static void eave(double eaveM) {
        Require.range("eaveM", eaveM, 0.2, 1000, "an eave from 0.2 to 1000 m");
    }

    /** Flow over capacity of each run. */
    public double utilisation() {
        return flowM3PerS / capacity.flowM3PerS();
    }

    /**
     * The layout with a given number of outlets.
     *
     * @param outlets    from 1 to {@link #MOST_OUTLETS}, and few enough that runs are 0.1 m or longer
     * @param eaveM      length of the eave, from 0.2 to 1000 m
     * @param flowM3PerS off the whole plane, from 0 to 100 m3/s
     * @param like       gives section, slope, roughness, outlet and downpipe; its length and sides do not matter
     */
    public static OutletLayout of(int outlets, double eaveM, double flowM3PerS, GutterRun like) {
        Require.range("outlets", outlets, 1, MOST_OUTLETS, "a number of outlets from 1 to " + MOST_OUTLETS);
        eave(eaveM);
        Require.range("flowM3PerS", flowM3PerS, 0, 100, "a flow from 0 to 100 m3/s");
        double spacing = eaveM / outlets;
        Gutter gutter = Require.given("like", like).gutter();
        GutterRun run = new GutterRun(
                new Gutter(gutter.section(), spacing / 2, gutter.slopeRatio(), gutter.manningN()), like.outlet(),
                like.downpipe(), 2);
        return new OutletLayout(outlets, spacing, run, run.capacity(), flowM3PerS / (2 * outlets));
    }

    /**
     * The layout with the fewest outlets whose runs are not overloaded; other arguments as in {@link #of}.
     *
     * @param mostUtilisation of a run, above 0, up to 1
     * @throws NoAnswerException when even runs of 0.1 m, or {@link #MOST_OUTLETS} outlets, are overloaded
     */
    public static OutletLayout fewest(double eaveM, double flowM3PerS, double mostUtilisation, GutterRun like) {
        eave(eaveM);
        Require.range("mostUtilisation", mostUtilisation, 0.01, 1, "a utilisation from 0.01 to 1");
        int most = (int) Math.clamp((long) (eaveM / 0.2), 1, MOST_OUTLETS);
        int tooFew = 0;
        int enough = 1;
        OutletLayout best = of(enough, eaveM, flowM3PerS, like);
        while (best.utilisation() > mostUtilisation) {
            if (enough == most) {
                throw new NoAnswerException("even " + most + " outlets leave the gutter overloaded, at "
                        + best.utilisation() + " of its capacity; it takes a larger gutter, outlet or downpipe");
            }
            tooFew = enough;
            enough = Math.min(most, 2 * enough);
            best = of(enough, eaveM, flowM3PerS, like);
        }
        while (enough - tooFew > 1) {
            int middle = (tooFew + enough) / 2;
            OutletLayout tried = of(middle, eaveM, flowM3PerS, like);
            if (tried.utilisation() > mostUtilisation) {
                tooFew = middle;
            } else {
                enough = middle;
                best = tried;
            }
        }
        return best;
    }
}
