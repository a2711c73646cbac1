package org.roofspring.storage;

import java.util.Optional;

/**
 * The cheapest roof and tank that together reach a target.
 *
 * @param roof index of the roof in the surface
 * @param tank index of the tank
 * @param cost of both together, in the unit of the costs given
 * @param timeReliability of the pair [-]
 */
public record CheapestPair(int roof, int tank, double cost, double timeReliability) {

    /**
     * Looks through a surface. Of pairs that cost the same, the one that meets more days; then the first.
     *
     * @param surface roof by tank
     * @param roofCost cost of each roof, 0 or more
     * @param tankCost cost of each tank, 0 or more
     * @param targetRatio share of the days with demand to be met in full [-], above 0 to 1
     * @return empty when no pair reaches the target, or nothing is asked for
     * @throws IllegalArgumentException when a cost is missing, negative or not a number, or the target out of range
     */
    public static Optional<CheapestPair> of(ReliabilitySurface surface, double[] roofCost, double[] tankCost,
            double targetRatio) {
        TankSizing.checkTarget(targetRatio);
        if (surface.curves().isEmpty()) {
            throw new IllegalArgumentException("surface has no roofs; accepted is one or more");
        }
        ReliabilityCurve first = surface.curves().getFirst();
        checkCosts(roofCost, surface.curves().size(), "roofCost");
        checkCosts(tankCost, first.tanks(), "tankCost");
        if (first.demandDays() == 0) {
            return Optional.empty();
        }
        int needed = TankSizing.daysNeeded(targetRatio, first.demandDays());
        CheapestPair best = null;
        int bestDays = 0;
        for (int roof = 0; roof < roofCost.length; roof++) {
            ReliabilityCurve curve = surface.curves().get(roof);
            for (int tank = 0; tank < tankCost.length; tank++) {
                int days = curve.fullDays(tank);
                double cost = roofCost[roof] + tankCost[tank];
                boolean better = best == null || cost < best.cost || cost == best.cost && days > bestDays;
                if (days >= needed && better) {
                    best = new CheapestPair(roof, tank, cost, curve.timeReliability(tank).orElseThrow());
                    bestDays = days;
                }
            }
        }
        return Optional.ofNullable(best);
    }

    private static void checkCosts(double[] costs, int wanted, String name) {
        if (costs.length != wanted) {
            throw new IllegalArgumentException(
                    name + " has " + costs.length + " values; accepted is " + wanted + ", one each");
        }
        for (double cost : costs) {
            if (!(cost >= 0 && cost < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException(name + " holds " + cost + "; accepted is 0 or more");
            }
        }
    }
}
