package org.roofspring.calc.standard.economy;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

import org.eclipse.emf.ecore.EAttribute;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.Inputs;
import org.roofspring.calc.Working.Input;
import org.roofspring.calc.standard.water.Given;
import org.roofspring.calc.standard.water.Names;
import org.roofspring.economy.lifecycle.CostCategory;
import org.roofspring.economy.lifecycle.CostLine;
import org.roofspring.economy.lifecycle.Terms;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.CostItem;
import org.roofspring.site.Economy;
import org.roofspring.site.PriceBasis;
import org.roofspring.site.Pump;
import org.roofspring.site.Site;
import org.roofspring.site.SiteFactory;
import org.roofspring.site.SitePackage;
import org.roofspring.site.UpkeepTask;
import org.roofspring.site.Use;

/** Costs and money matters of a site, as the kernel takes them. */
final class SiteCosts {
    private final Site site;
    private final Economy economy;
    private final List<CostLine> lines = new ArrayList<>();
    private final List<String> renewed = new ArrayList<>();
    private final List<String> added = new ArrayList<>();

    SiteCosts(Site site, Inputs inputs) {
        this.site = site;
        economy = site.getEconomy() == null ? SiteFactory.eINSTANCE.createEconomy() : site.getEconomy();
        site.getCosts().stream().filter(cost -> cost.getAmount() != null).forEach(this::entered);
        energy(inputs);
        upkeep();
        inputs.finding("storage.balance", "topUpYearlyCost").ifPresent(finding -> {
            double yearly = ((FindingValue.Number) finding.value()).quantity().si();
            add(CostLine.yearly("Water brought in", CostCategory.WATER_BOUGHT, yearly),
                    "water brought in, from the storage balance");
        });
    }

    Terms terms() {
        int horizon = (int) Math.round(value(SitePackage.Literals.ECONOMY__HORIZON).in(Units.YR));
        double rate = value(SitePackage.Literals.ECONOMY__DISCOUNT_RATE).si();
        double inflation = economy.getInflation() == null ? 0 : economy.getInflation().si();
        return economy.getBasis() == PriceBasis.NOMINAL ? Terms.nominal(rate, inflation, horizon)
                : Terms.real(rate, horizon);
    }

    Economy economy() {
        return economy;
    }

    private Quantity value(EAttribute attribute) {
        return Given.value(economy, attribute).orElseThrow();
    }

    Input rateInput() {
        return input("d", "discount rate", SitePackage.Literals.ECONOMY__DISCOUNT_RATE);
    }

    Input horizonInput() {
        return input("n", "years looked at", SitePackage.Literals.ECONOMY__HORIZON);
    }

    private Input input(String symbol, String meaning, EAttribute attribute) {
        return economy.eContainer() == null ? new Input(symbol, meaning, value(attribute))
                : Given.input(symbol, meaning, economy, attribute, value(attribute));
    }

    /** All costs. */
    List<CostLine> lines() {
        return lines;
    }

    /** What is renewed at the end of its life for want of a renewal of its own. */
    List<String> renewed() {
        return renewed;
    }

    /** What was added to the costs that were entered. */
    List<String> added() {
        return added;
    }

    private void add(CostLine line, String words) {
        if (line.amountCur() > 0) {
            lines.add(line);
            added.add(words);
        }
    }

    private void entered(CostItem cost) {
        double amount = cost.getAmount().si() * Given.si(cost, SitePackage.Literals.COST_ITEM__QUANTITY, 1);
        OptionalDouble interval = years(cost.getInterval());
        OptionalDouble life = years(cost.getLife());
        CostCategory category = category(cost);
        if (category == CostCategory.CAPITAL && life.isPresent() && interval.isEmpty() && !hasRenewal(cost)) {
            interval = life;
            if (life.getAsDouble() < terms().horizonYears()) {
                renewed.add(Names.of(cost));
            }
        }
        double change = cost.getYearlyChange() == null ? 0 : cost.getYearlyChange().si();
        lines.add(new CostLine(Names.of(cost), category, amount, cost.getFirstYear(), interval, life, change));
    }

    private boolean hasRenewal(CostItem cost) {
        return cost.getElement() != null && site.getCosts().stream().anyMatch(other -> other.getAmount() != null
                && other.getElement() == cost.getElement()
                && other.getCategory() == org.roofspring.site.CostCategory.CAPITAL_MAINTENANCE);
    }

    private static OptionalDouble years(Quantity span) {
        return span == null ? OptionalDouble.empty() : OptionalDouble.of(span.in(Units.YR));
    }

    private static CostCategory category(CostItem cost) {
        return switch (cost.getCategory()) {
            case CAPITAL -> CostCategory.CAPITAL;
            case OPERATION -> CostCategory.OPERATION;
            case ENERGY -> CostCategory.ENERGY;
            case CONSUMABLES -> CostCategory.CONSUMABLES;
            case CAPITAL_MAINTENANCE -> CostCategory.CAPITAL_MAINTENANCE;
            case COST_OF_CAPITAL -> CostCategory.COST_OF_CAPITAL;
            case DIRECT_SUPPORT -> CostCategory.DIRECT_SUPPORT;
            case INDIRECT_SUPPORT -> CostCategory.INDIRECT_SUPPORT;
            case UNSTATED -> cost.getFirstYear() == 0 && cost.getInterval() == null ? CostCategory.CAPITAL
                    : CostCategory.OPERATION;
        };
    }

    private boolean entered(CostCategory category) {
        return site.getCosts().stream().anyMatch(cost -> cost.getAmount() != null && category(cost) == category);
    }

    /** Energy of the pumps, unless a cost of energy was entered. */
    private void energy(Inputs inputs) {
        if (entered(CostCategory.ENERGY)) {
            return;
        }
        for (Pump pump : site.getPumps()) {
            inputs.finding("pump.running", "yearlyEnergyCost", pump.getId()).ifPresent(finding -> add(CostLine.yearly(
                    "Energy of " + Names.of(pump), CostCategory.ENERGY,
                    ((FindingValue.Number) finding.value()).quantity().si()),
                    "energy of " + Names.of(pump) + ", from the running of pumps"));
        }
    }

    /** Work and material of the upkeep tasks, unless such costs were entered. */
    private void upkeep() {
        double hours = 0;
        double material = 0;
        for (UpkeepTask task : site.getUpkeep()) {
            double times = timesPerYear(task);
            hours += task.getEffort() == null ? 0 : times * task.getEffort().in(Units.H);
            material += task.getCost() == null ? 0 : times * task.getCost().si();
        }
        if (!entered(CostCategory.OPERATION) && economy.getLabourPrice() != null) {
            add(CostLine.yearly("Work of the upkeep", CostCategory.LABOUR, hours * economy.getLabourPrice().si()),
                    "work of the upkeep tasks at the price of an hour");
        }
        if (!entered(CostCategory.CONSUMABLES)) {
            add(CostLine.yearly("Material of the upkeep", CostCategory.CONSUMABLES, material),
                    "what the upkeep tasks cost each time");
        }
    }

    private static double timesPerYear(UpkeepTask task) {
        double byInterval = task.getInterval() == null ? 0 : Units.YR.toSi(1) / task.getInterval().si();
        return byInterval + task.getDueOn().size() + (task.isBeforeFirstRain() ? 1 : 0);
    }

    /** Who lives on the water: as entered, else of the shared scheme, else the most of one use by people. */
    double people() {
        if (economy.getPeople() != null) {
            return economy.getPeople().si();
        }
        if (site.getScheme() != null && site.getScheme().getFamilies() > 0
                && site.getScheme().getPeoplePerFamily() != null) {
            return site.getScheme().getFamilies() * site.getScheme().getPeoplePerFamily().si();
        }
        return site.getUses().stream().filter(SiteCosts::byPeople)
                .mapToDouble(use -> Given.si(use, SitePackage.Literals.USE__COUNT, 1)).max().orElse(0);
    }

    private static boolean byPeople(Use use) {
        return use.isInUse() && switch (use.getPurpose()) {
            case DRINKING, COOKING, WASHING, FLUSHING, LAUNDRY -> true;
            default -> false;
        };
    }
}
