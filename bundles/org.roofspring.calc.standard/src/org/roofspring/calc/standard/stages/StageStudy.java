package org.roofspring.calc.standard.stages;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SortedSet;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EObject;
import org.roofspring.calc.Caution;
import org.roofspring.calc.Caution.Severity;
import org.roofspring.calc.CalculationContext;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.Inputs;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.Source;
import org.roofspring.calc.Working.Input;
import org.roofspring.calc.Working.Step;
import org.roofspring.calc.standard.answer.AnswerBuilder;
import org.roofspring.calc.standard.water.Given;
import org.roofspring.calc.standard.water.Names;
import org.roofspring.calc.standard.water.SiteStorage;
import org.roofspring.economy.stages.StageOption;
import org.roofspring.economy.stages.StagePlan;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.Component;
import org.roofspring.site.CostCategory;
import org.roofspring.site.CostItem;
import org.roofspring.site.Option;
import org.roofspring.site.Site;
import org.roofspring.site.SitePackage;
import org.roofspring.site.Stage;
import org.roofspring.site.snapshot.SiteSnapshot;
import org.roofspring.storage.BalanceResult;
import org.roofspring.storage.YieldRule;

/**
 * Stages and options of a site: what each delivers and costs, in which order to build, and what a budget buys. The
 * first
 * stage is built before all others; each set of stages runs the storage over the whole record.
 */
public final class StageStudy {
    private static final Source METHOD = Source.definition("exact: dynamic programming over the sets of at most "
            + StagePlan.MOST_OPTIONS + " stages, the greatest mean share over the money spent; the budget by looking at"
            + " every set");
    private static final Source MODEL = Source.definition("the storage run over the record with the changes of the"
            + " stage, duty of pumps and losses of gutters as in the design");

    private final SiteSnapshot design;
    private final Inputs inputs;
    private final BooleanSupplier cancelled;
    private final List<Stage> stages;
    private final AnswerBuilder answer = new AnswerBuilder(null);

    private StageStudy(SiteSnapshot design, Inputs inputs, BooleanSupplier cancelled) {
        this.design = design;
        this.inputs = inputs;
        this.cancelled = cancelled;
        stages = active(design.site());
    }

    /** Stages that are looked at, by date; those without a date come last, in their own order. */
    public static List<Stage> active(Site site) {
        return site.getStages().stream().filter(Stage::isActive).sorted(Comparator.comparing(Stage::getDate,
                Comparator.nullsLast(Comparator.naturalOrder()))).toList();
    }

    /** Options that are looked at. */
    public static List<Option> options(Site site) {
        return site.getOptions().stream().filter(Option::isActive).toList();
    }

    /** What a site with some of its stages does. */
    private record Service(double supplied, double demand, double fullDays, OptionalDouble reliability) {
        static final Service NONE = new Service(0, 0, 0, OptionalDouble.empty());
    }

    /**
     * The findings about a site with stages or options.
     *
     * @param budgetCur money there is; empty for the budget of the target, if any
     */
    public static Outcome of(SiteSnapshot snapshot, Inputs inputs, OptionalDouble budgetCur,
            CalculationContext context) {
        StageStudy study = new StageStudy(snapshot, inputs, context.cancelled());
        try {
            Service whole = study.service(snapshot.site());
            if (!study.stages.isEmpty()) {
                study.stages(budgetCur);
            }
            study.options(whole);
        } catch (IllegalArgumentException e) {
            return new Outcome.NotComputable(new Outcome.Problem("The stages cannot be weighed: " + e.getMessage()
                    + "."));
        }
        return study.answer.build();
    }

    private Service service(Site site) {
        if (!SiteStorage.check(site).applies()) {
            return Service.NONE;
        }
        BalanceResult result = SiteStorage.system(site, inputs).run(YieldRule.YAS, cancelled).whole();
        double years = SiteStorage.rain(inputs).days() * Units.D.toSi(1) / Units.YR.toSi(1);
        return new Service(result.totals().suppliedM3() / years, result.totals().demandM3() / years,
                result.counts().fullDays() / years, result.timeReliability());
    }

    private SiteSnapshot with(SortedSet<Integer> built) {
        return design.withAll(built.stream().map(index -> stages.get(index).getId()).toList());
    }

    private void stages(OptionalDouble budgetCur) {
        List<StageOption> costs = new ArrayList<>();
        double first = capital(design.withAll(List.of(stages.getFirst().getId())).site());
        for (int i = 0; i < stages.size(); i++) {
            Stage stage = stages.get(i);
            double cost = i == 0 ? first : Math.max(0, capital(design.withAll(List.of(stages.getFirst().getId(),
                    stage.getId())).site()) - first);
            cost = cost == 0 && stage.getBudget() != null ? stage.getBudget().si() : cost;
            costs.add(new StageOption(Names.of(stage), cost, i == 0 ? Set.of() : Set.of(0)));
            if (stage.getChanges().isEmpty()) {
                answer.caution(new Caution("stages.empty", Severity.WARNING, stage.getId(),
                        "{0} changes nothing: it costs money and gives no water.", List.of(Names.of(stage)), "",
                        MODEL));
            }
        }
        Site all = design.withAll(stages.stream().map(Stage::getId).toList()).site();
        double wanted = service(all).demand();
        StagePlan plan = StagePlan.of(costs, built -> built.isEmpty() || wanted <= 0 ? 0
                : Math.min(1, service(with(built).site()).supplied() / wanted), cancelled);
        planned(costs, wanted);
        List<List<Object>> order = new ArrayList<>();
        plan.order().forEach(step -> order.add(List.of(costs.get(step.option()).name(),
                Quantity.of(costs.get(step.option()).costCur(), Units.MONEY), Quantity.of(step.spentCur(), Units.MONEY),
                Quantity.ofSi(step.reliability(), Units.PERCENT))));
        Input demand = new Input("D", "demand of a mean year with all stages", Quantity.of(wanted, Units.M3));
        answer.add("order", "Order that gives most for the money", new FindingValue.Table(List.of("Stage", "Cost",
                "Spent",
                "Share of the whole demand"), order), Step.of("s",
                "share of the demand with all stages that is supplied",
                        "Y / D", null, METHOD, demand));
        List<List<Object>> frontier = new ArrayList<>();
        plan.frontier().forEach(bought -> frontier.add(List.of(Quantity.of(bought.costCur(), Units.MONEY),
                names(costs, bought), Quantity.ofSi(bought.reliability(), Units.PERCENT))));
        answer.add("frontier", "What each budget buys", new FindingValue.Table(List.of("Money", "Stages",
                "Share of the whole demand"), frontier), Step.of("s", "the sets that nothing as cheap beats", "Y / D",
                null,
                        METHOD, demand));
        OptionalDouble budget = budgetCur.isPresent() ? budgetCur : targetBudget();
        if (budget.isPresent()) {
            StagePlan.Bought bought = plan.bestFor(budget.getAsDouble());
            Quantity money = Quantity.of(budget.getAsDouble(), Units.MONEY);
            answer.text("budgetBuys", "The budget buys", bought.options().isEmpty() ? "no stage" : names(costs,
                    bought));
            Input given = new Input("B", "budget", money);
            answer.share("budgetShare", "Share of the whole demand for the budget", bought.reliability(), Step.of("s",
                    "the best set of stages that costs no more than B", "Y / D", Quantity.ofSi(bought.reliability(),
                            Units.PERCENT), METHOD, given, demand));
            Quantity spent = Quantity.of(bought.costCur(), Units.MONEY);
            answer.number("budgetSpent", "Spent of the budget", spent, Step.of("k", "cost of these stages", "sum",
                    spent,
                    METHOD, given));
        }
    }

    private OptionalDouble targetBudget() {
        Site site = design.site();
        return site.getTarget() == null || site.getTarget().getBudget() == null ? OptionalDouble.empty()
                : OptionalDouble.of(site.getTarget().getBudget().si());
    }

    private static String names(List<StageOption> costs, StagePlan.Bought bought) {
        return bought.options().stream().map(index -> costs.get(index).name()).collect(Collectors.joining(" + "));
    }

    /** The stages one after the other, as planned. */
    private void planned(List<StageOption> costs, double wanted) {
        List<List<Object>> rows = new ArrayList<>();
        List<String> built = new ArrayList<>();
        double spent = 0;
        for (int i = 0; i < stages.size(); i++) {
            built.add(stages.get(i).getId());
            spent += costs.get(i).costCur();
            Service service = service(design.withAll(built).site());
            List<Object> row = new ArrayList<>(List.of(Names.of(stages.get(i)), stages.get(i).getDate() == null ? ""
                    : stages.get(i).getDate().toString(), Quantity.of(costs.get(i).costCur(), Units.MONEY),
                    Quantity.of(spent, Units.MONEY)));
            row.addAll(cells(service));
            row.add(wanted > 0 ? Quantity.ofSi(service.supplied() / wanted, Units.PERCENT) : null);
            rows.add(row);
        }
        answer.add("stages", "Stages as planned", new FindingValue.Table(List.of("Stage", "Date", "Cost", "Spent",
                "Water of a year", "Days met in full, of a year", "Share of its days met", "Share of the whole demand"),
                rows), Step.of("k",
                "capital costs of parts that a stage brings into use; where it brings none, the money"
                        + " set aside for it", "sum of k, or budget", null, MODEL));
    }

    private static List<Object> cells(Service service) {
        List<Object> cells = new ArrayList<>(List.of(Quantity.of(service.supplied(), Units.M3),
                Quantity.of(service.fullDays(), Units.D)));
        cells.add(service.reliability().isPresent() ? Quantity.ofSi(service.reliability().getAsDouble(), Units.PERCENT)
                : null);
        return cells;
    }

    /** Each option on top of the design. */
    private void options(Service whole) {
        List<List<Object>> rows = new ArrayList<>();
        double capital = capital(design.site());
        List<Object> asDesigned = new ArrayList<>(List.of("The design as it stands", Quantity.of(0, Units.MONEY)));
        asDesigned.addAll(cells(whole));
        rows.add(asDesigned);
        for (Option option : options(design.site())) {
            Site changed = design.with(option.getId()).site();
            List<Object> row = new ArrayList<>(List.of(Names.of(option),
                    Quantity.of(capital(changed) - capital, Units.MONEY)));
            row.addAll(cells(service(changed)));
            rows.add(row);
        }
        answer.add("options", "Options on top of the design", new FindingValue.Table(List.of("Option", "Capital more",
                "Water of a year", "Days met in full, of a year", "Share of days met"), rows), Step.of("Y",
                        "what the tanks supply in a mean year", "Y", Quantity.of(whole.supplied(), Units.M3), MODEL));
    }

    /** Capital costs of what is in use [currency]. */
    private static double capital(Site site) {
        return site.getCosts().stream().filter(cost -> cost.getAmount() != null
                && cost.getCategory() == CostCategory.CAPITAL && inUse(cost)).mapToDouble(cost -> cost.getAmount().si()
                        * Given.si(cost, SitePackage.Literals.COST_ITEM__QUANTITY, 1)).sum();
    }

    private static boolean inUse(CostItem cost) {
        for (EObject part = cost.getElement(); part != null; part = part.eContainer()) {
            if (part instanceof Component component) {
                return component.isInUse();
            }
        }
        return true;
    }
}
