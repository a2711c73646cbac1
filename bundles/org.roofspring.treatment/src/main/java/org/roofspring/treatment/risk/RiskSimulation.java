package org.roofspring.treatment.risk;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;

import org.roofspring.treatment.internal.Checks;

/**
 * The risk chain with uncertain inputs, by Monte Carlo. A draw takes one value of each input and holds it for a year:
 * the range shows what is not known, not how days differ.
 */
public final class RiskSimulation {
    /** Usual number of draws. */
    public static final int DEFAULT_DRAWS = 100_000;

    private static final int MAX_DRAWS = 5_000_000;
    private static final int POLL_EVERY = 1024;

    private RiskSimulation() {
    }

    /**
     * @param draws     100 to 5,000,000
     * @param seed      the same gives the same result
     * @param cancelled polled every thousand draws
     * @throws CancellationException when cancelled
     */
    public static RiskRange run(RiskInputs inputs, int draws, long seed, BooleanSupplier cancelled) {
        Checks.present("inputs", inputs);
        Checks.within("draws", draws, 100, MAX_DRAWS, "");
        Checks.present("cancelled", cancelled);
        SplittableRandom random = new SplittableRandom(seed);
        double[] daily = new double[draws];
        double[] yearly = new double[draws];
        Pathogen pathogen = inputs.pathogen();
        double dalyPerInfection = pathogen.illnessRatio() * pathogen.dalyPerCase() * pathogen.susceptibleRatio();
        int within = 0;
        for (int i = 0; i < draws; i++) {
            if (i % POLL_EVERY == 0 && cancelled.getAsBoolean()) {
                throw new CancellationException("the risk simulation was cancelled");
            }
            double raw = inputs.rawPerL().quantile(random.nextDouble());
            double log = inputs.logReduction().quantile(random.nextDouble());
            double litres = inputs.litresPerDay().quantile(random.nextDouble());
            double dose = Math.min(raw * litres, DoseResponse.MAX_DOSE);
            double working = pathogen.doseResponse().infection(dose * Math.pow(10, -log));
            double out = inputs.outageRatio() == 0 ? 0 : pathogen.doseResponse().infection(dose);
            daily[i] = (1 - inputs.outageRatio()) * working + inputs.outageRatio() * out;
            yearly[i] = RiskChain.yearly(daily[i], inputs.daysPerYear());
            if (yearly[i] * dalyPerInfection <= inputs.targetDaly()) {
                within++;
            }
        }
        RiskRange.Percentiles year = percentiles(yearly);
        return new RiskRange(draws, seed, percentiles(daily), year, scaled(year, dalyPerInfection),
                (double) within / draws);
    }

    private static RiskRange.Percentiles percentiles(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        Arrays.sort(values);
        return new RiskRange.Percentiles(sum / values.length, at(values, 0.05), at(values, 0.5), at(values, 0.95));
    }

    private static double at(double[] sorted, double share) {
        double place = share * (sorted.length - 1);
        int below = (int) place;
        int above = Math.min(below + 1, sorted.length - 1);
        return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
    }

    private static RiskRange.Percentiles scaled(RiskRange.Percentiles of, double factor) {
        return new RiskRange.Percentiles(of.mean() * factor, of.p05() * factor, of.p50() * factor, of.p95() * factor);
    }
}
