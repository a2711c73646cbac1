package org.roofspring.cli.internal;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

import org.roofspring.calc.Caution;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.Source;
import org.roofspring.calc.standard.TreatmentRiskCalculation;
import org.roofspring.calc.standard.TreatmentVerdictCalculation;
import org.roofspring.calc.standard.answer.AnswerBuilder;
import org.roofspring.calc.standard.treatment.SiteReading;
import org.roofspring.site.Site;
import org.roofspring.site.TreatmentTrain;
import org.roofspring.site.Use;
import org.roofspring.treatment.safety.WaterTests;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What the treatment of a site achieves for each use, and what it asks for. */
@Command(name = "train",
        description = "Whether the water of a site is fit for its uses, step by step, and what has to be done for it.")
public final class TrainCommand extends AnswerCommand {
    @Parameters(paramLabel = "SITE", description = "a .site file")
    private Path file;

    @Option(names = "--use", paramLabel = "ID", description = "one use only, by its identifier or name")
    private String use;

    private SiteInput input;

    @Override
    String name(String elementId) {
        return input.name(elementId);
    }

    @Override
    Outcome answer() throws IOException {
        input = SiteInput.load(file);
        Site site = input.site();
        Use wanted = use == null ? null : wanted(site);
        return switch (input.outcome(new TreatmentVerdictCalculation())) {
            case Outcome.Completed verdict -> {
                Outcome.Completed outcome = withRisk(verdict);
                yield outdated(site, wanted == null ? outcome : only(outcome, site, wanted));
            }
            case Outcome.NotComputable none -> none;
        };
    }

    /** The risk as well, where germs in the raw water are assumed. */
    private Outcome.Completed withRisk(Outcome.Completed verdict) {
        TreatmentRiskCalculation risk = new TreatmentRiskCalculation();
        if (!risk.check(input.snapshot()).applies()) {
            return verdict;
        }
        AnswerBuilder answer = new AnswerBuilder(null).include(verdict);
        switch (input.outcome(risk)) {
            case Outcome.Completed completed -> answer.include(completed);
            case Outcome.NotComputable none -> none.problems().forEach(problem -> answer.caution(new Caution(
                    "risk.no-answer", Caution.Severity.WARNING, problem.elementId(), "No risk could be worked out: {0}",
                    List.of(problem.text()), "", Source.definition("what the raw water says"))));
        }
        return answer.build();
    }

    private Use wanted(Site site) {
        return site.getUses().stream().filter(one -> use.equals(one.getId()) || use.equals(one.getName())).findFirst()
                .orElseThrow(() -> new Failures.BadInputException("--use: there is no use \"" + use + "\" in " + file
                        + "; accepted are " + String.join(", ", site.getUses().stream().map(Use::getId).toList())));
    }

    /** What is about the use, the trains it draws through and their steps. */
    private static Outcome.Completed only(Outcome.Completed outcome, Site site, Use use) {
        FindingValue.Table reduction = outcome.finding("reduction", use.getId())
                .map(finding -> (FindingValue.Table) finding.value())
                .orElseThrow(() -> new Failures.NoAnswerException("No verdict is given on " + use.getId()
                        + ": its purpose is " + use.getPurpose().getLiteral()
                        + (use.isInUse() ? "" : ", and it is not in use")));
        Set<String> about = new HashSet<>(Set.of(use.getId()));
        int stepColumn = reduction.columns().indexOf("Step");
        reduction.rows().forEach(row -> about.add((String) row.get(stepColumn)));
        site.getTrains().stream()
                .filter(train -> train.getSteps().stream().anyMatch(step -> about.contains(step.getId())))
                .map(TreatmentTrain::getId).forEach(about::add);
        return new Outcome.Completed(
                outcome.findings().stream().filter(finding -> about.contains(finding.elementId())).toList(),
                outcome.workings().stream().filter(working -> about.contains(working.elementId())).toList(),
                outcome.cautions().stream().filter(caution -> caution.elementId() == null
                        || about.contains(caution.elementId()) || caution.code().startsWith("hazard.")).toList());
    }

    /** The calculation counts to the latest day noted in the site; who asks today has to know how long ago it is. */
    private static Outcome.Completed outdated(Site site, Outcome.Completed outcome) {
        LocalDate noted = SiteReading.of(site).day().orElse(null);
        if (noted == null || !noted.plusDays(WaterTests.DEFAULT_VALID_DAYS).isBefore(LocalDate.now())) {
            return outcome;
        }
        List<Caution> cautions = new ArrayList<>(outcome.cautions());
        cautions.add(new Caution("verdict.outdated", Caution.Severity.WARNING, null,
                "The latest day noted in this site is {0}, more than a year ago: no water test counts any more, and "
                        + "filters and lamps have aged since.", List.of(noted.toString()), "",
                Source.commonPractice(WaterTests.VALIDITY_SOURCE.citation())));
        return new Outcome.Completed(outcome.findings(), outcome.workings(), cautions);
    }
}
