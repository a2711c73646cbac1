package org.roofspring.drainage.tank;

import java.util.List;
import org.roofspring.drainage.NoAnswerException;
import org.roofspring.drainage.internal.Require;
import org.roofspring.drainage.internal.Root;

/**
 * Whether a full tank can let go of all that may come in, with one of its overflow pipes blocked.
 *
 * @param inflowM3PerS     of all inlets running at once
 * @param pipes            number of overflow pipes, all alike
 * @param openM3PerS       what they pass when all are open
 * @param oneBlockedM3PerS what they pass with one blocked; nothing when there is only one
 */
public record OverflowCheck(double inflowM3PerS, int pipes, double openM3PerS, double oneBlockedM3PerS) {
    private static final double LEAST_BORE_M = 0.02;
    private static final double GREATEST_BORE_M = 1;

    /**
     * Checks a tank.
     *
     * @param inletsM3PerS flow of each inlet, pumped ones too, each from 0 to 100 m3/s
     * @param pipe         one of the overflow pipes
     * @param pipes        number of them, from 1 to 20
     * @param headM        from the lowest point of their mouths to the highest water allowed, from 0 to 10 m
     */
    public static OverflowCheck of(List<Double> inletsM3PerS, OverflowPipe pipe, int pipes, double headM) {
        Require.range("pipes", pipes, 1, 20, "a number of pipes from 1 to 20");
        double one = Require.given("pipe", pipe).flowM3PerS(headM);
        return new OverflowCheck(total(inletsM3PerS), pipes, pipes * one, (pipes - 1) * one);
    }

    private static double total(List<Double> inletsM3PerS) {
        double total = 0;
        for (Double inlet : Require.given("inletsM3PerS", inletsM3PerS)) {
            total += Require.range("inletsM3PerS", Require.given("inletsM3PerS", inlet), 0, 100,
                    "a flow from 0 to 100 m3/s");
        }
        return total;
    }

    /** Whether the tank holds with one pipe blocked. */
    public boolean safe() {
        return oneBlockedM3PerS >= inflowM3PerS;
    }

    /**
     * The smallest bore [m] with which a number of square-edged pipes is safe.
     *
     * @param inletsM3PerS as above
     * @param pipes        from 2 to 20: with a single one blocked nothing is left
     * @param headM        from 0.005 to 10 m
     * @throws NoAnswerException when even pipes of 1 m are too small under this depth
     */
    public static double leastBoreM(List<Double> inletsM3PerS, int pipes, double headM) {
        Require.range("pipes", pipes, 2, 20,
                "a number of pipes from 2 to 20 (with a single one blocked nothing is left)");
        Require.range("headM", headM, 0.005, 10, "a depth from 0.005 to 10 m");
        double each = total(inletsM3PerS) / (pipes - 1);
        if (new OverflowPipe(LEAST_BORE_M).flowM3PerS(headM) >= each) {
            return LEAST_BORE_M;
        }
        if (new OverflowPipe(GREATEST_BORE_M).flowM3PerS(headM) < each) {
            throw new NoAnswerException(pipes + " overflow pipes pass too little under " + headM
                    + " m of water, even with a bore of 1 m; more pipes or more depth are needed");
        }
        return Root.between(LEAST_BORE_M, GREATEST_BORE_M, bore -> new OverflowPipe(bore).flowM3PerS(headM) - each);
    }
}
