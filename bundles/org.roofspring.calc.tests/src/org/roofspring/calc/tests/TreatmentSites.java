package org.roofspring.calc.tests;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.BooleanSupplier;

import org.roofspring.calc.CalculationContext;
import org.roofspring.calc.Finding;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.Inputs;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.standard.TreatmentVerdictCalculation;
import org.roofspring.quantity.Quantity;
import org.roofspring.site.Site;
import org.roofspring.site.SiteFactory;
import org.roofspring.site.StepKind;
import org.roofspring.site.TreatmentStep;
import org.roofspring.site.io.SiteFiles;
import org.roofspring.site.snapshot.SiteSnapshot;

/** The committed cases of treatment, what is right or wrong in them, and verdicts on them. */
final class TreatmentSites {
    static final Path FOLDER = DemoSites.FOLDER.resolve("cases/treatment");
    static final String USE = "use-drinking";
    private static final List<String> GROUPS = List.of("Bacteria", "Viruses", "Giardia", "Cryptosporidium");

    private TreatmentSites() {
    }

    static Site load(String name) {
        try {
            return SiteFiles.load(FOLDER.resolve(name + ".site"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A site in which nothing is wrong: lamp, absolute cartridge, tested water, harmless materials. */
    static Site sound() {
        Site site = load("lamp-without-power");
        step(site, "step-uv").setAvailability(null);
        step(site, "step-uv").setAvailability(Quantity.valueOf("100 %"));
        return site;
    }

    static TreatmentStep step(Site site, String id) {
        return site.getTrains().get(0).getSteps().stream().filter(step -> step.getId().equals(id)).findFirst()
                .orElseThrow();
    }

    static TreatmentStep addStep(Site site, int index, StepKind kind, String id) {
        TreatmentStep step = SiteFactory.eINSTANCE.createTreatmentStep();
        step.setId(id);
        step.setName(id);
        step.setKind(kind);
        site.getTrains().get(0).getSteps().add(index, step);
        return step;
    }

    static Outcome outcome(Site site) {
        return new TreatmentVerdictCalculation().calculate(SiteSnapshot.of(site, 1, null), Inputs.none(),
                new CalculationContext() {
                    @Override
                    public BooleanSupplier cancelled() {
                        return () -> false;
                    }

                    @Override
                    public long randomSeed() {
                        return 42;
                    }
                });
    }

    static Outcome.Completed completed(Site site) {
        if (outcome(site) instanceof Outcome.Completed completed) {
            return completed;
        }
        throw new AssertionError("no answer: " + outcome(site));
    }

    static FindingValue.Verdict verdict(Site site) {
        return value(completed(site), "verdict", USE, FindingValue.Verdict.class);
    }

    static FindingValue.Table table(Outcome.Completed outcome, String id, String elementId) {
        return value(outcome, id, elementId, FindingValue.Table.class);
    }

    static double number(Outcome.Completed outcome, String id, String elementId) {
        return value(outcome, id, elementId, FindingValue.Number.class).quantity().value();
    }

    private static <V extends FindingValue> V value(Outcome.Completed outcome, String id, String elementId,
            Class<V> kind) {
        return outcome.finding(id, elementId).map(Finding::value).map(kind::cast)
                .orElseThrow(() -> new AssertionError("there is no " + id + " of " + elementId));
    }

    /** Log reduction by group, in the order of the columns. */
    static double[] logs(Outcome.Completed outcome) {
        return GROUPS.stream().mapToDouble(group -> number(outcome, "log" + group, USE)).toArray();
    }

    /** What is asked for by group, from the last row of the table of reductions. */
    static double[] target(Outcome.Completed outcome) {
        FindingValue.Table table = table(outcome, "reduction", USE);
        List<Object> last = table.rows().get(table.rows().size() - 1);
        return GROUPS.stream().mapToDouble(group -> ((Quantity) last.get(table.columns().indexOf(group))).value())
                .toArray();
    }
}
