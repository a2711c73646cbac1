package org.roofspring.drainage.intensity;

import java.util.Arrays;
import java.util.List;
import org.roofspring.drainage.NoAnswerException;
import org.roofspring.drainage.internal.Require;

/**
 * The largest depth of each year of a record, for one duration.
 *
 * @param depthsMm from the smallest to the largest, each from 0 to 5000 mm, at least {@link #FEWEST_YEARS} of them
 */
public record AnnualMaxima(List<Double> depthsMm) {
    /** Fewer years than this say nothing about rare storms. */
    public static final int FEWEST_YEARS = 5;

    public AnnualMaxima {
        Require.given("depthsMm", depthsMm);
        for (Double depth : depthsMm) {
            Require.range("depthsMm", Require.given("depthsMm", depth), 0, 5000, "a yearly maximum from 0 to 5000 mm");
        }
        if (depthsMm.size() < FEWEST_YEARS) {
            throw new NoAnswerException("the record has " + depthsMm.size()
                    + " yearly maxima; design storms need at least " + FEWEST_YEARS);
        }
        depthsMm = depthsMm.stream().sorted().toList();
        if (depthsMm.getFirst().equals(depthsMm.getLast())) {
            throw new NoAnswerException("all yearly maxima are " + depthsMm.getFirst()
                    + " mm; no law of extremes fits maxima that never vary");
        }
    }

    /** In any order. */
    public static AnnualMaxima of(double... depthsMm) {
        return new AnnualMaxima(Arrays.stream(Require.given("depthsMm", depthsMm)).boxed().toList());
    }

    public int years() {
        return depthsMm.size();
    }

    /**
     * The depth of a return period straight from the plotted maxima, without a law: linear between the return periods
     * that the plotting positions give to the ranked maxima.
     *
     * @param position          of the ranked maxima
     * @param returnPeriodYears within what the record plots at
     * @throws NoAnswerException when the return period lies beyond the plotted maxima
     */
    public double plottedDepthMm(PlottingPosition position, double returnPeriodYears) {
        int n = years();
        double longest = position.returnPeriodYears(1, n);
        double shortest = position.returnPeriodYears(n, n);
        if (!(returnPeriodYears >= shortest && returnPeriodYears <= longest)) {
            throw new NoAnswerException("a return period of " + returnPeriodYears + " years is beyond the " + shortest
                    + " to " + longest + " years at which the record plots");
        }
        int rank = n - 1;
        while (rank > 1 && position.returnPeriodYears(rank, n) < returnPeriodYears) {
            rank--;
        }
        double above = position.returnPeriodYears(rank, n);
        double below = position.returnPeriodYears(rank + 1, n);
        double share = (returnPeriodYears - below) / (above - below);
        return depthsMm.get(n - rank - 1) + share * (depthsMm.get(n - rank) - depthsMm.get(n - rank - 1));
    }
}
