package org.roofspring.economy.lifecycle;

import java.util.List;

import org.roofspring.economy.internal.Checks;

/**
 * One way to supply water: its costs and what it delivers.
 *
 * @param name           what people call it
 * @param costs          all of its costs
 * @param waterM3PerYear delivered in a mean year, 0 to 1e12 [m3]
 * @param people         who live on it, 0 to 1e9; 0 where it is not known
 */
public record SupplyPlan(String name, List<CostLine> costs, double waterM3PerYear, double people) {
    public SupplyPlan {
        Checks.text("name", name);
        costs = Checks.list("costs", costs);
        Checks.within("water of a year (waterM3PerYear)", waterM3PerYear, 0, 1e12);
        Checks.within("people", people, 0, 1e9);
    }
}
