package org.roofspring.treatment.train;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

import org.roofspring.treatment.Caution;

/** Mistakes in the order of steps. They are cautions: the order itself changes no credit unless a condition fails. */
public final class StepOrder {

    /** One thing that should not come before another. */
    private record Rule(String code, Caution.Severity severity, Predicate<Treatment> first, Predicate<Treatment> later,
            Predicate<Treatment> clearedBy, String text) {
        Rule(String code, Caution.Severity severity, Predicate<Treatment> first, Predicate<Treatment> later,
                String text) {
            this(code, severity, first, later, treatment -> false, text);
        }
    }

    private static final List<Rule> RULES = List.of(
            new Rule("order.sun-after-carbon", Caution.Severity.WARNING, GranularCarbon.class::isInstance,
                    SolarBottles.class::isInstance,
                    "Sun after carbon: carbon sheds bacteria and fines into the bottles; put the carbon last or leave "
                            + "it out."),
            new Rule("order.chlorine-before-silver", Caution.Severity.WARNING, Chlorination.class::isInstance,
                    t -> t instanceof Ceramic ceramic && ceramic.silver(), GranularCarbon.class::isInstance,
                    "Chlorine before a ceramic with silver: chlorine attacks the silver, and the ceramic holds back "
                            + "the residual; chlorinate behind it."),
            new Rule("order.uv-before-sediment", Caution.Severity.WARNING,
                    t -> t instanceof UvLamp || t instanceof SolarBottles, StepOrder::takesSediment,
                    "Light before the sediment filter: particles shade organisms; put the filter before the lamp or "
                            + "the bottles."),
            new Rule("order.carbon-after-chlorine", Caution.Severity.WARNING, Chlorination.class::isInstance,
                    GranularCarbon.class::isInstance,
                    "Carbon after chlorine: the carbon takes out the residual, so nothing protects the water that is "
                            + "stored behind it."),
            new Rule("order.chlorine-before-membrane", Caution.Severity.WARNING, Chlorination.class::isInstance,
                    t -> t instanceof Membrane membrane && membrane.kind().harmedByChlorine(),
                    GranularCarbon.class::isInstance,
                    "Chlorine before a thin-film membrane: chlorine destroys it; put carbon between them or "
                            + "chlorinate behind it."),
            new Rule("order.chlorine-before-sand", Caution.Severity.WARNING, Chlorination.class::isInstance,
                    SlowSand.class::isInstance, GranularCarbon.class::isInstance,
                    "Chlorine before slow sand: chlorine kills the living layer that does the work."),
            new Rule("order.fine-before-coarse", Caution.Severity.INFO, Cartridge.class::isInstance,
                    MeshScreen.class::isInstance,
                    "A cartridge before a mesh screen: the cartridge clogs with what the screen should hold."),
            new Rule("order.inlet-not-first", Caution.Severity.INFO,
                    t -> !(t instanceof MeshScreen || t instanceof FirstFlush), FirstFlush.class::isInstance,
                    "A first-flush diverter behind another treatment: it belongs before the tank."),
            new Rule("order.filter-after-boiling", Caution.Severity.WARNING, Boil.class::isInstance,
                    t -> !(t instanceof Chlorination), "A step after boiling: boiled water picks up organisms from "
                            + "filters and vessels; boil last and keep it in the covered pot."));

    private StepOrder() {
    }

    /** Cautions about the order, in the order of the rules; each at most once. */
    public static List<Caution> cautions(List<TrainStep> steps) {
        List<Caution> cautions = new ArrayList<>();
        for (Rule rule : RULES) {
            if (occurs(rule, steps)) {
                cautions.add(new Caution(rule.code(), rule.severity(), rule.text()));
            }
        }
        finerFirst(steps).ifPresent(cautions::add);
        return cautions;
    }

    private static boolean occurs(Rule rule, List<TrainStep> steps) {
        boolean seen = false;
        for (TrainStep step : steps) {
            if (seen && rule.later().test(step.treatment())) {
                return true;
            }
            seen = rule.first().test(step.treatment()) || seen && !rule.clearedBy().test(step.treatment());
        }
        return false;
    }

    private static boolean takesSediment(Treatment treatment) {
        return treatment instanceof Cartridge || treatment instanceof Ceramic || treatment instanceof SlowSand
                || treatment instanceof Settling || treatment instanceof MeshScreen;
    }

    private static Optional<Caution> finerFirst(List<TrainStep> steps) {
        double finest = Double.POSITIVE_INFINITY;
        for (TrainStep step : steps) {
            if (step.treatment() instanceof Cartridge cartridge) {
                if (cartridge.ratingM() > finest * (1 + 1e-9)) {
                    return Optional.of(Caution.info("order.finer-first",
                            "A coarser cartridge behind a finer one has nothing left to hold; put the coarse one "
                                    + "first."));
                }
                finest = Math.min(finest, cartridge.ratingM());
            }
        }
        return Optional.empty();
    }
}
