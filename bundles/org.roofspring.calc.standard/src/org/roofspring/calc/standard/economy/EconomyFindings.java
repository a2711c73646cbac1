package org.roofspring.calc.standard.economy;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.roofspring.calc.Caution;
import org.roofspring.calc.Caution.Severity;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.FindingValue.Verdict;
import org.roofspring.calc.FindingValue.Verdict.Level;
import org.roofspring.calc.Inputs;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.Source;
import org.roofspring.calc.Working.Input;
import org.roofspring.calc.Working.Step;
import org.roofspring.calc.standard.answer.AnswerBuilder;
import org.roofspring.calc.standard.water.Names;
import org.roofspring.calc.standard.water.SiteStorage;
import org.roofspring.economy.lifecycle.BreakEven;
import org.roofspring.economy.lifecycle.CostCategory;
import org.roofspring.economy.lifecycle.CostLine;
import org.roofspring.economy.lifecycle.LifeCycleCost;
import org.roofspring.economy.lifecycle.Sensitivity;
import org.roofspring.economy.lifecycle.SupplyPlan;
import org.roofspring.economy.lifecycle.Terms;
import org.roofspring.economy.lifecycle.UncertainInput;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.AlternativeSupply;
import org.roofspring.site.Site;
import org.roofspring.site.SupplyKind;
import org.roofspring.site.TopUp;

/** What the water costs over the years, beside other ways to get it. */
public final class EconomyFindings {
    private static final Source FACTORS = Source.fromMemory("NIST Handbook 135, Life-Cycle Costing Manual, 1995");
    private static final Source CATEGORIES = Source.published("Fonseca et al., 2010, Life-cycle costs approach:"
            + " glossary and cost components, as quoted by others");
    private static final Source MODEL = Source.definition("how the model was read");
    private static final Source BOUNDS = Source.definition("bounds chosen by this program: rate from 0 to twice itself"
            + " or 10 %, the others from half to one and a half times what was entered");
    private static final double LOW = 0.5;
    private static final double HIGH = 1.5;

    private final Site site;
    private final SiteCosts costs;
    private final Terms terms;
    private final double demandM3;
    private final double suppliedM3;
    private final LifeCycleCost own;
    private final AnswerBuilder answer = new AnswerBuilder(null);

    private EconomyFindings(Site site, Inputs inputs) {
        this.site = site;
        costs = new SiteCosts(site, inputs);
        terms = costs.terms();
        double years = SiteStorage.rain(inputs).days() * Units.D.toSi(1) / Units.YR.toSi(1);
        demandM3 = inputs.number("storage.balance", "demand").si() / years;
        suppliedM3 = inputs.number("storage.balance", "supplied").si() / years;
        own = LifeCycleCost.of(new SupplyPlan("This design", costs.lines(), suppliedM3, costs.people()), terms);
    }

    /** The findings about a site with costs and a storage balance. */
    public static Outcome of(Site site, Inputs inputs) {
        EconomyFindings findings;
        try {
            findings = new EconomyFindings(site, inputs);
            findings.whole();
            findings.categories();
            findings.supplies();
        } catch (IllegalArgumentException e) {
            // the kernel's sentence says which amount, life or rate is out of range
            return new Outcome.NotComputable(new Outcome.Problem("The costs cannot be reckoned: " + e.getMessage()
                    + "."));
        }
        findings.cautions();
        return findings.answer.build();
    }

    private Quantity money(double amount) {
        return Quantity.of(amount, Units.MONEY);
    }

    private void whole() {
        boolean nominal = terms.basis() == Terms.Basis.NOMINAL;
        answer.text("basis", "Prices", nominal
                ? "nominal: the rate holds inflation, which is taken out first; results in money of the base year"
                : "real: without inflation, in money of the base year");
        Input rate = new Input("r", nominal ? "rate without inflation, (1 + d) / (1 + i) - 1" : "rate",
                Quantity.ofSi(terms.realRate(), Units.PERCENT));
        Quantity present = money(own.presentCur());
        answer.number("presentCost", "Present value of all costs", present,
                Step.of("K", "each payment brought back to the year of building, less what is left at the end",
                        "sum of k (1 + r)^-t - R", present, FACTORS, costs.rateInput(), rate, costs.horizonInput(),
                        new Input("R", "present value of what is left", money(own.residualPresentCur()))));
        Quantity annual = money(own.annualCur());
        answer.number("annualCost", "Cost of each year", annual, Step.of("A", "equal cost of each year",
                "K r / (1 - (1 + r)^-n)", annual, FACTORS, new Input("K", "present value", present), rate,
                costs.horizonInput()));
        own.costCurPerM3().ifPresent(each -> {
            Quantity unit = Quantity.of(each, Units.MONEY_PER_M3);
            answer.number("costPerM3", "Cost of a m3 delivered", unit, Step.of("c",
                    "present value of cost over present value of water", "K / W", unit, FACTORS,
                    new Input("K", "present value of cost", present), new Input("W", "present value of the water of all"
                            + " years", Quantity.of(own.presentWaterM3(), Units.M3))));
        });
        own.annualCurPerPerson().ifPresent(each -> answer.number("annualCostPerPerson", "Cost for each person and year",
                money(each), Step.of("a", "annual cost over people", "A / p", money(each), Source.definition("mean"),
                        new Input("A", "annual cost", annual), new Input("p", "people", Quantity.of(costs.people())))));
        Quantity residual = money(own.residualPresentCur());
        answer.number("residual", "Present value of what is left", residual, Step.of("R", "part of the price that the "
                + "life has not used up, by a straight line", "sum of k (1 - u) (1 + r)^-n", residual, FACTORS, rate,
                costs.horizonInput()));
        double tariff = costs.economy().getTariff() == null ? 0 : costs.economy().getTariff().si();
        if (tariff > 0 && own.costCurPerM3().isPresent()) {
            double share = tariff / Math.max(own.costCurPerM3().getAsDouble(), 1e-9);
            answer.share("tariffCover", "Share of the cost that the tariff covers", share, Step.of("s",
                    "tariff over cost of a m3", "p / c", Quantity.ofSi(share, Units.PERCENT),
                    Source.definition("share"),
                    new Input("p", "tariff", costs.economy().getTariff()),
                    new Input("c", "cost of a m3", Quantity.of(own.costCurPerM3().getAsDouble(), Units.MONEY_PER_M3))));
        }
    }

    private void categories() {
        List<List<Object>> rows = new ArrayList<>();
        own.presentByCategoryCur().forEach((category, present) -> rows.add(List.of(category.words(),
                category.component(), money(present), Quantity.ofSi(own.presentOutlaysCur() > 0
                        ? present / own.presentOutlaysCur() : 0, Units.PERCENT))));
        answer.add("categories", "Cost by kind", new FindingValue.Table(
                List.of("Kind", "Component", "Present value", "Share"), rows),
                Step.of("K", "present value of the payments of each kind, before what is left", "sum of k (1 + r)^-t",
                        money(own.presentOutlaysCur()), CATEGORIES));
        List<List<Object>> years = new ArrayList<>();
        double[] real = own.realOutlaysCur();
        double[] paid = own.paidOutlaysCur();
        double[] cumulated = own.cumulatedPresentCur();
        for (int year = 0; year < real.length; year++) {
            years.add(List.of(Quantity.of(year), money(real[year]), money(paid[year]), money(cumulated[year])));
        }
        answer.add("years", "Cost year by year", new FindingValue.Table(List.of("Year", "In money of the base year",
                "As paid", "Present value so far"), years), Step.of("k", "what falls due in a year", "sum", null,
                MODEL));
    }

    private void supplies() {
        List<LifeCycleCost> others = site.getAlternatives().stream().filter(other -> other.getPrice() != null
                || other.getCapital() != null || other.getYearlyCost() != null).map(this::other).toList();
        LifeCycleCost whole = wholeDemand();
        List<List<Object>> rows = new ArrayList<>();
        rows.add(row(whole, null, "-"));
        for (int i = 0; i < others.size(); i++) {
            rows.add(row(others.get(i), reliability(others.get(i).plan().name()), breakEven(whole, others.get(i))));
        }
        answer.add("supplies", "Supplies on the same demand", new FindingValue.Table(List.of("Supply", "Present value",
                "Cost of a year", "Cost of a m3", "Can be had on", "This design is no dearer"), rows),
                Step.of("K",
                "each supply delivers the whole demand of a mean year; what this design misses is bought at"
                        + " the price of a tanker, where one is known", "sum of k (1 + r)^-t - R",
                        money(whole.presentCur()), FACTORS, new Input("D", "demand of a mean year",
                                Quantity.of(demandM3, Units.M3)), new Input("S", "supplied by this design",
                                Quantity.of(suppliedM3, Units.M3))));
        Optional<LifeCycleCost> best = others.stream().min(Comparator.comparingDouble(LifeCycleCost::presentCur));
        best.ifPresent(other -> {
            boolean cheaper = whole.presentCur() <= other.presentCur();
            answer.add("cheapest", "Cheapest supply", new Verdict(cheaper ? Level.GOOD : Level.CONDITIONAL,
                    cheaper ? "This design is the cheapest of the supplies compared."
                            : other.plan().name() + " is cheaper than this design.",
                    List.of("Money alone: see on how many days each can be had. The year from which this design is no dearer"
                            + " counts what was paid; the present value also counts what is left at the end.")));
        });
        sensitivity(whole, best);
    }

    private List<Object> row(LifeCycleCost cost, Quantity reliability, String breakEven) {
        OptionalDouble each = cost.costCurPerM3();
        return Arrays.asList(cost.plan().name(), money(cost.presentCur()), money(cost.annualCur()),
                each.isPresent() ? Quantity.of(each.getAsDouble(), Units.MONEY_PER_M3) : null, reliability, breakEven);
    }

    private Quantity reliability(String name) {
        return site.getAlternatives().stream().filter(other -> Names.of(other).equals(name)).findFirst()
                .map(AlternativeSupply::getReliability).orElse(null);
    }

    private static String breakEven(LifeCycleCost own, LifeCycleCost other) {
        return switch (BreakEven.of(own, other)) {
            case BreakEven.FromYear from -> from.year() == 0 ? "from the start" : "from year " + from.year();
            case BreakEven.Never never -> "never within " + own.terms().horizonYears() + " years";
        };
    }

    /** This design with its shortage bought, where anyone sells. */
    private LifeCycleCost wholeDemand() {
        List<CostLine> lines = new ArrayList<>(costs.lines());
        double missingM3 = Math.max(0, demandM3 - suppliedM3);
        OptionalDouble price = tankerPrice();
        if (missingM3 > 0 && price.isPresent()) {
            lines.add(CostLine.yearly("Shortage, bought", CostCategory.WATER_BOUGHT, missingM3 * price.getAsDouble()));
        }
        boolean whole = missingM3 == 0 || price.isPresent();
        return LifeCycleCost.of(new SupplyPlan(price.isPresent() && missingM3 > 0 ? "This design, shortage bought"
                : "This design", lines, whole ? demandM3 : suppliedM3, costs.people()), terms);
    }

    private OptionalDouble tankerPrice() {
        OptionalDouble load = site.getTopUps().stream().filter(topUp -> topUp.getPrice() != null
                && topUp.getLoad() != null && topUp.getLoad().si() > 0).mapToDouble(EconomyFindings::perM3).min();
        return load.isPresent() ? load : site.getAlternatives().stream().filter(other -> other.getPrice() != null
                && other.getKind() == SupplyKind.TANKER).mapToDouble(other -> other.getPrice().si()).min();
    }

    private static double perM3(TopUp topUp) {
        return topUp.getPrice().si() / topUp.getLoad().si();
    }

    private LifeCycleCost other(AlternativeSupply other) {
        List<CostLine> lines = new ArrayList<>();
        if (other.getCapital() != null) {
            lines.add(other.getCapitalLife() == null
                    ? CostLine.once("Building", CostCategory.CAPITAL, other.getCapital().si())
                    : CostLine.asset("Building", other.getCapital().si(), other.getCapitalLife().in(Units.YR)));
        }
        if (other.getPrice() != null) {
            lines.add(CostLine.yearly("Water", CostCategory.WATER_BOUGHT, demandM3 * other.getPrice().si()));
        }
        if (other.getYearlyCost() != null) {
            lines.add(CostLine.yearly("Fixed cost", CostCategory.OPERATION, other.getYearlyCost().si()));
        }
        if (other.getEnergy() != null && costs.economy().getEnergyPrice() != null) {
            lines.add(CostLine.yearly("Energy", CostCategory.ENERGY, demandM3 * other.getEnergy().in(Units.KWH_PER_M3)
                    * costs.economy().getEnergyPrice().in(Units.MONEY_PER_KWH)));
        }
        return LifeCycleCost.of(new SupplyPlan(Names.of(other), lines, demandM3, costs.people()), terms);
    }

    /** Rate, building, running, lives and the other supply's cost, one at a time. */
    private void sensitivity(LifeCycleCost whole, Optional<LifeCycleCost> best) {
        double rate = terms.discountRate();
        List<UncertainInput> inputs = new ArrayList<>(List.of(
                new UncertainInput("Discount rate", rate, 0, Math.min(0.5, Math.max(0.1, 2 * rate))),
                new UncertainInput("Cost of building and renewing", 1, LOW, HIGH),
                new UncertainInput("Cost of running", 1, LOW, HIGH), new UncertainInput("Lives", 1, LOW, HIGH)));
        best.ifPresent(other -> inputs.add(new UncertainInput("Cost of " + other.plan().name(), 1, LOW, HIGH)));
        Sensitivity sensitivity = new Sensitivity(inputs, values -> {
            Terms moved = terms.withDiscountRate(values[0]);
            double cost = LifeCycleCost.of(new SupplyPlan("moved", whole.plan().costs().stream()
                    .map(line -> moved(line, values)).toList(), 1, 0), moved).presentCur();
            return best.isEmpty() ? cost : cost - values[4] * LifeCycleCost.of(best.get().plan(), moved).presentCur();
        });
        String against = best.map(other -> " less " + other.plan().name()).orElse("");
        List<List<Object>> bars = sensitivity.tornado().stream().map(bar -> List.<Object>of(bar.input().name(),
                shown(bar.input().low()), shown(bar.input().high()), money(bar.atLow()),
                money(bar.atHigh()), money(bar.swing()))).toList();
        answer.add("tornado", "What the cost depends on", new FindingValue.Table(List.of("Input", "Low", "High",
                "Present value" + against + " at low", "At high", "Difference"), bars),
                Step.of("K", "one input moved, all others as entered", "K(x)", null, BOUNDS));
        if (best.isPresent()) {
            List<List<Object>> flips = sensitivity.flips().stream().map(flip -> List.<Object>of(flip.input().name(),
                    shown(flip.input().base()), flip.value().isPresent()
                            ? shown(flip.value().getAsDouble())
                            : "does not turn between " + text(flip.input().low()) + " and "
                                    + text(flip.input().high()))).toList();
            answer.add("flips", "Where the cheaper supply changes", new FindingValue.Table(List.of("Input",
                    "As entered",
                    "Answer turns at"), flips), Step.of("x", "where the present values of this design and "
                            + best.get().plan().name() + " are equal, by bisection", "K(x) = K'(x)", null, BOUNDS));
        }
    }

    private static CostLine moved(CostLine line, double[] values) {
        double factor = line.lifeYears().isPresent() || line.category() == CostCategory.CAPITAL ? values[1] : values[2];
        OptionalDouble life = scaled(line.lifeYears(), values[3]);
        OptionalDouble interval = line.lifeYears().isPresent() ? scaled(line.intervalYears(), values[3])
                : line.intervalYears();
        return new CostLine(line.name(), line.category(), line.amountCur() * factor, line.firstYears(), interval, life,
                line.yearlyChange());
    }

    private static OptionalDouble scaled(OptionalDouble years, double factor) {
        return years.isEmpty() ? years : OptionalDouble.of(Math.clamp(years.getAsDouble() * factor, 0.01, 200));
    }

    private static Quantity shown(double value) {
        return Quantity.ofSi(value, Units.PERCENT);
    }

    private static String text(double value) {
        return Math.round(value * 1000) / 10.0 + " %";
    }

    private void cautions() {
        if (!costs.renewed().isEmpty()) {
            say("economy.renewed",
                    "Taken as renewed at the same price at the end of its life, for want of a renewal of "
                    + "its own: {0}.", String.join(", ", costs.renewed()));
        }
        if (!costs.added().isEmpty()) {
            say("economy.added", "Counted besides the costs that were entered: {0}.", String.join("; ", costs.added()));
        }
        if (demandM3 - suppliedM3 > 1e-6 && tankerPrice().isEmpty()) {
            answer.caution(new Caution("economy.shortage-unpriced", Severity.WARNING, null,
                    "This design misses {0} of a mean year, and no price of bought water is known: its cost is that of "
                    + "less water than the others deliver.", List.of(Quantity.of(demandM3 - suppliedM3, Units.M3)), "",
                    MODEL));
        }
    }

    private void say(String code, String pattern, String words) {
        answer.caution(new Caution(code, Severity.INFO, null, pattern, List.of(words), "", MODEL));
    }
}
