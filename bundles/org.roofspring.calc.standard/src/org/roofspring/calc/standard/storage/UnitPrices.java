package org.roofspring.calc.standard.storage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.roofspring.calc.Working.Input;
import org.roofspring.calc.standard.water.Given;
import org.roofspring.calc.standard.water.Names;
import org.roofspring.quantity.Quantity;
import org.roofspring.site.CostCategory;
import org.roofspring.site.CostItem;
import org.roofspring.site.NamedElement;
import org.roofspring.site.Roof;
import org.roofspring.site.Site;
import org.roofspring.site.SitePackage;
import org.roofspring.site.Tank;

/**
 * What more roof and more tank cost, from the capital costs that name a roof or a tank.
 *
 * @param each   price of each m2 or m3, in the site's currency
 * @param of     whose price it is
 * @param inputs the costs behind it, for the workings
 */
record UnitPrices(double each, String of, List<Input> inputs) {
    UnitPrices {
        inputs = List.copyOf(inputs);
    }

    /** Price of each m3 of the largest tank that has one. */
    static Optional<UnitPrices> tank(Site site) {
        return site.getTanks().stream().filter(tank -> tank.isInUse() && tank.getCapacity() != null
                && tank.getCapacity().si() > 0 && !costs(site, tank).isEmpty())
                .max(Comparator.comparingDouble(tank -> tank.getCapacity().si()))
                .map(tank -> of(site, List.of(tank), tank.getCapacity().si()));
    }

    /** Price of each m2 of the roofs that have one. */
    static Optional<UnitPrices> roof(Site site) {
        List<Roof> priced = site.getRoofs().stream().filter(roof -> roof.isInUse() && roof.getPlanArea() != null
                && roof.getPlanArea().si() > 0 && !costs(site, roof).isEmpty()).toList();
        return priced.isEmpty() ? Optional.empty()
                : Optional.of(of(site, priced, priced.stream().mapToDouble(roof -> roof.getPlanArea().si()).sum()));
    }

    private static UnitPrices of(Site site, List<? extends NamedElement> elements, double size) {
        double total = 0;
        List<Input> inputs = new ArrayList<>();
        for (NamedElement element : elements) {
            for (CostItem cost : costs(site, element)) {
                double count = Given.si(cost, SitePackage.Literals.COST_ITEM__QUANTITY, 1);
                total += cost.getAmount().si() * count;
                inputs.add(Given.input("k", Names.of(cost) + (count == 1 ? "" : ", times " + Quantity.of(count)), cost,
                        SitePackage.Literals.COST_ITEM__AMOUNT, cost.getAmount()));
            }
            inputs.add(element instanceof Tank tank
                    ? Given.input("S", "capacity", tank, SitePackage.Literals.TANK__CAPACITY, tank.getCapacity())
                    : Given.input("A", "plan area", element, SitePackage.Literals.ROOF__PLAN_AREA,
                            ((Roof) element).getPlanArea()));
        }
        return new UnitPrices(total / size, String.join(", ", elements.stream().map(Names::of).toList()), inputs);
    }

    private static List<CostItem> costs(Site site, NamedElement element) {
        return site.getCosts().stream().filter(cost -> cost.getElement() == element && cost.getAmount() != null
                && cost.getCategory() == CostCategory.CAPITAL).toList();
    }
}
