package org.roofspring.economy.lifecycle;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

import org.roofspring.economy.internal.Checks;

/**
 * A cost that falls due once or again and again.
 *
 * @param name          what it is for
 * @param category      of the first time; what has a life and comes again counts as replacement from the second time on
 * @param amountCur     each time, at prices of the base year, 0 to 1e12 [currency]
 * @param firstYears    when it first falls due, after building, 0 to 200 [yr]
 * @param intervalYears time after which it falls due again, 0.01 to 200 [yr]; empty for once
 * @param lifeYears     life of what is bought, 0.01 to 200 [yr]; empty for what is used up
 * @param yearlyChange  change of this price each year above general inflation, -0.5 to 1 [-]
 */
public record CostLine(String name, CostCategory category, double amountCur, double firstYears,
        OptionalDouble intervalYears, OptionalDouble lifeYears, double yearlyChange) {
    private static final double MOST_CUR = 1e12;
    private static final double LONGEST_YEARS = 200;
    private static final double SHORTEST_YEARS = 0.01;

    public CostLine {
        Checks.text("name", name);
        Checks.present("category", category);
        Checks.within("amount of " + name + " (amountCur)", amountCur, 0, MOST_CUR);
        Checks.within("first year of " + name + " (firstYears)", firstYears, 0, LONGEST_YEARS);
        Checks.present("interval (intervalYears)", intervalYears).ifPresent(
                years -> Checks.within("interval of " + name + " (intervalYears)", years, SHORTEST_YEARS,
                LONGEST_YEARS));
        Checks.present("life (lifeYears)", lifeYears).ifPresent(
                years -> Checks.within("life of " + name + " (lifeYears)", years, SHORTEST_YEARS, LONGEST_YEARS));
        Checks.within("yearly change of " + name + " (yearlyChange)", yearlyChange, -0.5, 1);
    }

    /** Something built at the start, renewed at the same price whenever its life ends. */
    public static CostLine asset(String name, double amountCur, double lifeYears) {
        return new CostLine(name, CostCategory.CAPITAL, amountCur, 0, OptionalDouble.of(lifeYears),
                OptionalDouble.of(lifeYears), 0);
    }

    /** Something built at the start that outlasts every horizon and is worth nothing at its end. */
    public static CostLine once(String name, CostCategory category, double amountCur) {
        return new CostLine(name, category, amountCur, 0, OptionalDouble.empty(), OptionalDouble.empty(), 0);
    }

    /** The same amount at the end of each year. */
    public static CostLine yearly(String name, CostCategory category, double amountCur) {
        return new CostLine(name, category, amountCur, 1, OptionalDouble.of(1), OptionalDouble.empty(), 0);
    }

    /** The same but for the amount. */
    public CostLine withAmountCur(double amount) {
        return new CostLine(name, category, amount, firstYears, intervalYears, lifeYears, yearlyChange);
    }

    /**
     * When it falls due [yr]. What has a life is not bought at the very end of the horizon, where it would serve
     * nobody; what is used up or done counts up to the end.
     */
    List<Double> times(int horizonYears) {
        List<Double> times = new ArrayList<>();
        for (int i = 0;; i++) {
            double time = firstYears + i * intervalYears.orElse(0);
            boolean counts = lifeYears.isPresent() ? time < horizonYears : time <= horizonYears;
            if (!counts) {
                return times;
            }
            times.add(time);
            if (intervalYears.isEmpty()) {
                return times;
            }
        }
    }

    /** Price at a time, in money of the base year [currency]. */
    double realPriceCur(double years) {
        return amountCur * Math.pow(1 + yearlyChange, years);
    }

    /** The category of a payment: the first time, or again. */
    CostCategory categoryOf(int occurrence) {
        return occurrence > 0 && lifeYears.isPresent() && category == CostCategory.CAPITAL
                ? CostCategory.CAPITAL_MAINTENANCE : category;
    }

    /**
     * What is left at the end of the last one bought, in money of the base year [currency]: the part of its price that
     * its life has not used up, by a straight line.
     */
    double residualCur(int horizonYears) {
        List<Double> times = times(horizonYears);
        if (lifeYears.isEmpty() || times.isEmpty()) {
            return 0;
        }
        double bought = times.getLast();
        double used = (horizonYears - bought) / lifeYears.getAsDouble();
        return used >= 1 ? 0 : realPriceCur(bought) * (1 - used);
    }
}
