package org.roofspring.calc.standard;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.osgi.service.component.annotations.Component;
import org.roofspring.calc.Applicability;
import org.roofspring.calc.Calculation;
import org.roofspring.calc.CalculationContext;
import org.roofspring.calc.CalculationInfo;
import org.roofspring.calc.Caution;
import org.roofspring.calc.Caution.Severity;
import org.roofspring.calc.Finding;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.Inputs;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.Source;
import org.roofspring.calc.standard.answer.AnswerBuilder;
import org.roofspring.calc.standard.pumping.ReviewFindings;
import org.roofspring.calc.standard.review.Basis;
import org.roofspring.calc.standard.review.PumpBasis;
import org.roofspring.calc.standard.review.SignOffs;
import org.roofspring.site.NamedElement;
import org.roofspring.site.Pump;
import org.roofspring.site.PumpCandidate;
import org.roofspring.site.PumpKind;
import org.roofspring.site.Site;
import org.roofspring.site.snapshot.SiteSnapshot;

/**
 * Every candidate for every pump side by side on the line of this site, and whether the sign-offs of reviewers stand. Costs
 * are for the whole demand, so that the comparison does not wait for the storage balance.
 */
@Component
@CalculationInfo(id = "pump.review", version = "1", title = "Pump review", reads = { "Pump", "PumpCandidate", "PumpPoint",
        "SupplyTime", "PipeRun", "Fitting", "PressureVessel", "Junction.id", "Tap.id", "TreatmentTrain.id", "Tank",
        "LevelVolumePoint", "Use", "UseCalendar", "UsePeriod", "Holiday", "Economy.energyPrice", "Remark.id",
        "Remark.kind", "Remark.element", "Remark.author", "Remark.fingerprint", "Remark.restsOn", "Site.altitude",
        "Site.waterTemperatureMin", "Site.waterTemperatureUsual", "Site.waterTemperatureMax" })
public final class PumpReviewCalculation implements Calculation {
    @Override
    public Applicability check(SiteSnapshot snapshot) {
        return reviewed(snapshot.site()).isEmpty() ? Applicability.no("There is no pump with candidates to weigh against it.")
                : Applicability.yes();
    }

    private static List<Pump> reviewed(Site site) {
        return site.getPumps().stream().filter(pump -> pump.isInUse() && pump.getKind() != PumpKind.HAND_PUMP
                && !pump.getCandidates().isEmpty()).toList();
    }

    @Override
    public Outcome calculate(SiteSnapshot snapshot, Inputs inputs, CalculationContext context) {
        Site site = snapshot.site();
        AnswerBuilder all = new AnswerBuilder(null);
        List<Outcome.Problem> problems = new ArrayList<>();
        for (Pump pump : reviewed(site)) {
            switch (ReviewFindings.of(site, pump, context.cancelled())) {
                case Outcome.Completed completed -> all.include(completed);
                case Outcome.NotComputable none -> problems.addAll(none.problems());
            }
        }
        signOffs(snapshot, all);
        problems.forEach(problem -> all.caution(new Caution("pump.no-review", Severity.WARNING, problem.elementId(), "{0}",
                List.of(problem.text()), "", Source.definition("pump and system"))));
        return problems.size() < reviewed(site).size() ? all.build()
                : new Outcome.NotComputable(problems, all.build().cautions());
    }

    private static void signOffs(SiteSnapshot snapshot, AnswerBuilder all) {
        Map<NamedElement, Optional<Basis>> bases = new HashMap<>();
        List<Finding> findings = SignOffs.findings(snapshot.site().getRemarks(),
                element -> bases.computeIfAbsent(element, key -> basis(snapshot.site(), key)),
                id -> snapshot.find(id, NamedElement.class).map(NamedElement::getName).orElse(id));
        all.include(new Outcome.Completed(findings, List.of(), List.of()));
        findings.stream().filter(finding -> ((FindingValue.Verdict) finding.value()).level() == FindingValue.Verdict.Level.BAD)
                .forEach(finding -> all.caution(new Caution("review.out-of-date", Severity.WARNING, finding.elementId(),
                        "{0} is out of date: {1}. Look at it again before anything is bought.", List.of(finding.title(),
                                String.join("; ", ((FindingValue.Verdict) finding.value()).reasons())), "",
                        Source.definition("what the sign-off rests on"))));
    }

    private static Optional<Basis> basis(Site site, NamedElement element) {
        return switch (element) {
            case PumpCandidate candidate -> Optional.of(PumpBasis.of(site, candidate));
            case Pump pump -> Optional.of(PumpBasis.of(site, pump));
            default -> Optional.empty();
        };
    }
}
