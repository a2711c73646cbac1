package org.roofspring.calc.standard.storage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;

import org.roofspring.calc.FindingValue;
import org.roofspring.calc.Source;
import org.roofspring.calc.Working.Input;
import org.roofspring.calc.Working.Step;
import org.roofspring.calc.standard.answer.AnswerBuilder;
import org.roofspring.calc.standard.answer.StorageTerms;
import org.roofspring.calc.standard.water.WholeSystem;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.Roof;
import org.roofspring.site.Site;
import org.roofspring.storage.CatchmentInflow;
import org.roofspring.storage.CheapestPair;
import org.roofspring.storage.ReliabilityCurve;
import org.roofspring.storage.ReliabilitySurface;
import org.roofspring.storage.SweepSettings;
import org.roofspring.storage.YieldRule;

/**
 * Roof by tank: the site's inflow in proportion to its roofs, from a twelfth of them to twice as much, over the usable
 * volumes of the reliability curve; and the cheapest pair that reaches the target, where prices are known.
 */
final class SurfaceFindings {
    /** So many steps are the roof there is; the surface goes to twice that. */
    private static final int STEPS_OF_PRESENT = 12;
    private static final double LITRES_TO_M3 = 0.001;

    private final Site site;
    private final WaterNeed need;
    private final SiteTarget target;
    private final double presentM2;
    private final AnswerBuilder answer;

    SurfaceFindings(Site site, WholeSystem system, WaterNeed need, SiteTarget target, AnswerBuilder answer) {
        this.site = site;
        this.need = need;
        this.target = target;
        this.answer = answer;
        List<Roof> idle = system.roofs().unconnected();
        presentM2 = site.getRoofs().stream()
                .filter(roof -> roof.isInUse() && roof.getPlanArea() != null && !idle.contains(roof))
                .mapToDouble(roof -> roof.getPlanArea().si()).sum();
    }

    /** @param fromNoneM3 usable volumes, rising; the first is none at all and is left out */
    void add(double[] fromNoneM3, BooleanSupplier cancelled) {
        double[] volumesM3 = Arrays.copyOfRange(fromNoneM3, 1, fromNoneM3.length);
        if (presentM2 <= 0 || need.totalDemandM3() <= 0 || volumesM3[volumesM3.length - 1] <= 0) {
            return;
        }
        Quantity roof = Quantity.of(presentM2, Units.M2);
        answer.number("presentRoof", "Plan area of the roofs that reach a tank", roof, Step.of("A", "roof there is",
                "sum of the plan areas in use", roof, Source.definition("sum over the roofs in use")));
        double[] areasM2 = new double[2 * STEPS_OF_PRESENT];
        List<CatchmentInflow> roofs = new ArrayList<>();
        for (int i = 0; i < areasM2.length; i++) {
            areasM2[i] = presentM2 * (i + 1) / STEPS_OF_PRESENT;
            roofs.add(new CatchmentInflow(areasM2[i], 1, 0));
        }
        // what reaches the tanks, as a depth on the roof there is: each roof of the surface sends its share of it
        double[] depthMm = Arrays.stream(need.inflowM3()).map(inflow -> inflow / presentM2 / LITRES_TO_M3).toArray();
        ReliabilitySurface surface = ReliabilitySurface.of(roofs, depthMm, need.demandM3(), volumesM3,
                SweepSettings.warm(YieldRule.YAS), cancelled);
        table(surface, areasM2, roof);
        cheapest(surface, areasM2, volumesM3);
    }

    private void table(ReliabilitySurface surface, double[] areasM2, Quantity present) {
        List<List<Object>> rows = new ArrayList<>();
        for (int i = 0; i < areasM2.length; i++) {
            ReliabilityCurve curve = surface.curves().get(i);
            for (int tank = 0; tank < curve.tanks(); tank++) {
                double share = curve.timeReliability(tank).orElseThrow();
                rows.add(List.of(Quantity.of(areasM2[i], Units.M2), Quantity.of(curve.capacityM3(tank), Units.M3),
                        Quantity.ofSi(share, Units.PERCENT),
                        Quantity.ofSi(curve.volumetricReliability(tank).orElseThrow(), Units.PERCENT),
                        share >= target.timeReliability()));
            }
        }
        answer.add("surface", "Share of days met, roof by tank", new FindingValue.Table(List.of("Roof", "Usable volume",
                "Days met in full", "Demand supplied", "Reaches the target"), rows),
                Step.of("Q", "inflow of another roof, in proportion to the one there is", "Q0 A / A0", null,
                        Source.definition("the same roofs, gutters and first flush, larger or smaller"),
                        new Input("A0", "roof there is", present),
                        SizingFindings.volume("Q0", "its inflow over the record", need.totalInflowM3())),
                Step.of("Rt", "share of days met in full, for each pair; one plain tank, yield after spillage, warmed "
                        + "up over one pass", "full days / days with demand", null, StorageTerms.MODEL,
                        target.timeReliabilityInput()));
    }

    private void cheapest(ReliabilitySurface surface, double[] areasM2, double[] volumesM3) {
        Optional<UnitPrices> tank = UnitPrices.tank(site);
        if (tank.isEmpty()) {
            answer.text("cheapestPair", "Cheapest roof and tank",
                    "Not known: no capital cost of the site names a tank.");
            return;
        }
        Optional<UnitPrices> roof = UnitPrices.roof(site);
        int first = roof.isPresent() ? 0 : STEPS_OF_PRESENT - 1;
        int last = roof.isPresent() ? areasM2.length : STEPS_OF_PRESENT;
        double roofEach = roof.map(UnitPrices::each).orElse(0.0);
        double[] roofCosts = Arrays.stream(areasM2, first, last).map(area -> area * roofEach).toArray();
        double[] tankCosts = Arrays.stream(volumesM3).map(volume -> volume * tank.get().each()).toArray();
        Optional<CheapestPair> pair = CheapestPair.of(new ReliabilitySurface(surface.curves().subList(first, last)),
                roofCosts, tankCosts, target.timeReliability());
        String among = roof.isPresent() ? "Of all pairs of the surface, at the prices of " + roof.get().of() + " and "
                + tank.get().of() + "." : "With the roof there is, since no capital cost names a roof; tank at the "
                        + "price of " + tank.get().of() + ".";
        answer.text("cheapestPair", "Cheapest roof and tank",
                pair.isPresent() ? among : "No pair reaches the target. " + among);
        pair.ifPresent(found -> cheapest(found, areasM2[first + found.roof()], volumesM3[found.tank()], tank.get(),
                roof));
    }

    private void cheapest(CheapestPair pair, double areaM2, double volumeM3, UnitPrices tank,
            Optional<UnitPrices> roof) {
        Quantity area = Quantity.of(areaM2, Units.M2);
        Quantity volume = Quantity.of(volumeM3, Units.M3);
        Quantity cost = Quantity.of(pair.cost(), Units.MONEY);
        Source search = Source.definition("least cost of the pairs of the surface that reach the target");
        answer.number("cheapestRoof", "Roof of the cheapest pair", area, Step.of("A", "roof of the cheapest pair",
                "least K with Rt >= R", area, search, target.timeReliabilityInput()));
        answer.number("cheapestTank", "Usable volume of the cheapest pair", volume, Step.of("S", "usable volume of the "
                + "cheapest pair", "least K with Rt >= R", volume, search, target.timeReliabilityInput()));
        List<Step> steps = new ArrayList<>();
        roof.ifPresent(price -> steps.add(price("a", "price of each m2 of roof, of " + price.of(),
                "sum of k / sum of A", price)));
        steps.add(price("s", "price of each m3 of tank, of " + tank.of(), "sum of k / S", tank));
        steps.add(Step.of("K", roof.isPresent() ? "cost of both" : "cost of the tank; the roof is there",
                roof.isPresent() ? "A a + S s" : "S s", cost, Source.definition("size times price"),
                new Input("A", "roof", area), new Input("S", "usable volume", volume)));
        answer.number("cheapestCost", "Cost of the cheapest pair", cost, steps.toArray(Step[]::new));
        Quantity reached = Quantity.ofSi(pair.timeReliability(), Units.PERCENT);
        answer.number("cheapestReliability", "Share of days that the cheapest pair meets", reached,
                Step.of("Rt", "share of days met in full", "full days / days with demand", reached,
                        StorageTerms.MODEL));
    }

    private static Step price(String symbol, String meaning, String formula, UnitPrices price) {
        return Step.of(symbol, meaning, formula, Quantity.of(price.each(), Units.MONEY),
                Source.definition("capital costs as entered, over the size they are for"),
                price.inputs().toArray(Input[]::new));
    }
}
