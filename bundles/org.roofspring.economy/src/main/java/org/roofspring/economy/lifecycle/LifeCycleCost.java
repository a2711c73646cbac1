package org.roofspring.economy.lifecycle;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

import org.roofspring.economy.internal.Checks;

/**
 * Cost of a supply over the horizon, in money of the base year. Present value is the sum over all payments of price
 * (1 +
 * r)^-t, less what is left at the end; annual cost is present value times the capital recovery factor; cost of a m3 is
 * present value of cost over present value of water. Source of the factors: {@link DiscountFactors}.
 */
public final class LifeCycleCost {
    private final SupplyPlan plan;
    private final Terms terms;
    private final Map<CostCategory, Double> presentByCategoryCur = new EnumMap<>(CostCategory.class);
    private final double[] realOutlayCur;
    private final double[] presentOutlayCur;
    private final double[] paidOutlayCur;
    private final double residualPresentCur;

    private LifeCycleCost(SupplyPlan plan, Terms terms) {
        this.plan = plan;
        this.terms = terms;
        int horizon = terms.horizonYears();
        double rate = terms.realRate();
        realOutlayCur = new double[horizon + 1];
        presentOutlayCur = new double[horizon + 1];
        paidOutlayCur = new double[horizon + 1];
        double residual = 0;
        for (CostLine line : plan.costs()) {
            List<Double> times = line.times(horizon);
            for (int i = 0; i < times.size(); i++) {
                double time = times.get(i);
                double price = line.realPriceCur(time);
                double present = price * DiscountFactors.singlePresentValue(rate, time);
                int year = (int) Math.ceil(time);
                realOutlayCur[year] += price;
                presentOutlayCur[year] += present;
                paidOutlayCur[year] += price * terms.priceLevel(time);
                presentByCategoryCur.merge(line.categoryOf(i), present, Double::sum);
            }
            residual += line.residualCur(horizon);
        }
        residualPresentCur = residual * DiscountFactors.singlePresentValue(rate, horizon);
    }

    /** The cost of a plan on given terms. */
    public static LifeCycleCost of(SupplyPlan plan, Terms terms) {
        return new LifeCycleCost(Checks.present("plan", plan), Checks.present("terms", terms));
    }

    public SupplyPlan plan() {
        return plan;
    }

    public Terms terms() {
        return terms;
    }

    /** Present value of what is paid in each category, without residual value [currency]; those that occur. */
    public Map<CostCategory, Double> presentByCategoryCur() {
        return new EnumMap<>(presentByCategoryCur);
    }

    /** Present value of all payments, without residual value [currency]. */
    public double presentOutlaysCur() {
        return Arrays.stream(presentOutlayCur).sum();
    }

    /** Present value of what is left at the end [currency]. */
    public double residualPresentCur() {
        return residualPresentCur;
    }

    /** Present value of cost: payments less what is left [currency]. */
    public double presentCur() {
        return presentOutlaysCur() - residualPresentCur;
    }

    /** The equal cost of each year, in money of the base year [currency]. */
    public double annualCur() {
        return presentCur() * DiscountFactors.capitalRecovery(terms.realRate(), terms.horizonYears());
    }

    /** Present value of the water delivered at the end of each year [m3]. */
    public double presentWaterM3() {
        return plan.waterM3PerYear() * DiscountFactors.uniformPresentValue(terms.realRate(), terms.horizonYears());
    }

    /** Cost of a m3 delivered [currency/m3]; empty where nothing is delivered. */
    public OptionalDouble costCurPerM3() {
        double water = presentWaterM3();
        return water > 1e-9 ? OptionalDouble.of(presentCur() / water) : OptionalDouble.empty();
    }

    /** Cost for each person and year [currency]; empty where the people are not known. */
    public OptionalDouble annualCurPerPerson() {
        return plan.people() >= 1e-9 ? OptionalDouble.of(annualCur() / plan.people()) : OptionalDouble.empty();
    }

    /** Paid in each year, 0 being the year of building, in money of the base year [currency]. */
    public double[] realOutlaysCur() {
        return realOutlayCur.clone();
    }

    /** Paid in each year in money of that year [currency]; on a real basis the same as in money of the base year. */
    public double[] paidOutlaysCur() {
        return paidOutlayCur.clone();
    }

    /** Present value of all that was paid up to the end of each year [currency]. */
    public double[] cumulatedPresentCur() {
        double[] sums = presentOutlayCur.clone();
        for (int year = 1; year < sums.length; year++) {
            sums[year] += sums[year - 1];
        }
        return sums;
    }
}
