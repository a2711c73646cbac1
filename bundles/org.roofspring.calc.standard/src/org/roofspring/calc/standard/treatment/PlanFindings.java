package org.roofspring.calc.standard.treatment;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.roofspring.calc.Caution;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.FindingValue.Table;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.Source;
import org.roofspring.calc.Working.Input;
import org.roofspring.calc.Working.Step;
import org.roofspring.calc.standard.answer.AnswerBuilder;
import org.roofspring.calc.standard.water.Given;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.InspectionAnswer;
import org.roofspring.site.SafetyMeasure;
import org.roofspring.site.SitePackage.Literals;
import org.roofspring.treatment.safety.InspectionQuestion;
import org.roofspring.treatment.safety.InspectionScore;
import org.roofspring.treatment.safety.PlanRow;
import org.roofspring.treatment.safety.SafetyPlan;
import org.roofspring.treatment.train.StepLibrary;
import org.roofspring.treatment.train.TrainEvaluator;
import org.roofspring.treatment.train.TrainResult;
import org.roofspring.treatment.train.TrainStep;

/** The water safety plan, the sanitary inspection and the water tests of a site. */
final class PlanFindings {
    private PlanFindings() {
    }

    /** The site's own measures first, then what the plan for each use adds; each line once. */
    static Outcome.Completed plan(SiteReading site, List<UseAppraisal> appraisals) {
        List<List<Object>> rows = new ArrayList<>();
        for (SafetyMeasure measure : site.site().getSafetyPlan()) {
            rows.add(Arrays.asList(text(measure.getHazard(), SiteTerms.name(measure)), text(measure.getControl(), ""),
                    text(measure.getLimit(), ""), text(measure.getCheck(), ""), text(measure.getAction(), ""),
                    text(measure.getWho(), ""), "this site"));
        }
        Set<PlanRow> usual = new LinkedHashSet<>();
        for (UseAppraisal appraisal : appraisals) {
            usual.addAll(SafetyPlan.of(wholeTrain(site, appraisal), appraisal.situation()).rows());
        }
        usual.forEach(row -> rows.add(List.of(row.hazard(), row.control(), row.limit(), row.check(), row.action(),
                row.who(), "draft, complete it on site")));
        return new AnswerBuilder(null).add("safetyPlan", "Water safety plan", new Table(List.of("Hazard", "Control",
                "Limit", "Check", "Action", "Who", "From"), rows)).build();
    }

    /** With the screens and diverters before the tank, which the verdict credits with nothing. */
    private static TrainResult wholeTrain(SiteReading site, UseAppraisal appraisal) {
        List<TrainStep> steps = new ArrayList<>();
        site.site().getScreens().stream().filter(screen -> screen.isInUse() && screen.getMesh() != null).forEach(
                screen -> steps.add(named(StepLibrary.meshScreen(screen.getMesh().si()), screen.getId(),
                        SiteTerms.name(screen))));
        site.site().getDiverters().stream().filter(diverter -> diverter.isInUse()).forEach(diverter -> steps.add(
                named(StepLibrary.firstFlush(Given.value(diverter, Literals.FIRST_FLUSH_DIVERTER__DEPTH)
                        .map(depth -> depth.in(Units.MM)).orElse(1.0)), diverter.getId(), SiteTerms.name(diverter))));
        appraisal.train().steps().forEach(step -> steps.add(step.step()));
        List<TrainStep> shown = steps.size() > 100 ? steps.subList(steps.size() - 100, steps.size()) : steps;
        return TrainEvaluator.evaluate(shown, appraisal.water().cold(), appraisal.flow());
    }

    private static TrainStep named(TrainStep step, String id, String name) {
        return new TrainStep(id, name, step.treatment(), step.removal(), step.service(), step.running());
    }

    /** The score, and every question with its answer. */
    static Outcome.Completed inspection(SiteReading site) {
        AnswerBuilder answer = new AnswerBuilder(null);
        if (site.inspection().isEmpty()) {
            answer.text("inspection", "Sanitary inspection", "none was entered; walk the site with the questions of "
                    + "the sanitary inspection and write the answers down");
            return answer.build();
        }
        SiteInspection latest = site.inspection().get();
        InspectionScore score = latest.score();
        Source source = SiteTerms.source(InspectionScore.SOURCE);
        Quantity highest = Quantity.of(score.highest());
        answer.number("inspectionScore", "Faults of the inspection, with open questions", highest,
                Step.of("n", "faults found and questions left open, of " + InspectionQuestion.values().length,
                        "f + u", highest, source,
                        new Input("f", "faults found", Quantity.of(score.lowest()), latest.inspection().getId(),
                                "answers"),
                        new Input("u", "questions without an answer", Quantity.of(score.unanswered().size()))));
        String text = score.level().label() + " risk on " + latest.inspection().getDate() + " ("
                + (score.unanswered().isEmpty() ? score.lowest() : score.lowest() + " to " + score.highest())
                + " of " + InspectionQuestion.values().length + " faults)";
        List<String> reasons = new ArrayList<>();
        score.faults().forEach(fault -> reasons.add(fault.text() + " Yes."));
        reasons.add(source.toString());
        answer.add("inspection", "Sanitary inspection", new FindingValue.Verdict(switch (score.level()) {
            case LOW -> FindingValue.Verdict.Level.GOOD;
            case INTERMEDIATE -> FindingValue.Verdict.Level.CONDITIONAL;
            case HIGH, VERY_HIGH -> FindingValue.Verdict.Level.BAD;
        }, text, reasons));
        List<List<Object>> rows = new ArrayList<>();
        for (InspectionQuestion question : InspectionQuestion.values()) {
            rows.add(List.of(SiteInspection.code(question), question.text(), score.faults().contains(question)
                    ? "yes, a fault" : score.unanswered().contains(question) ? "not answered" : "no",
                    latest.remark(question)));
        }
        for (InspectionAnswer other : latest.unscored()) {
            rows.add(List.of(text(other.getQuestion(), ""), "not part of the score", other.getAnswer().getLiteral(),
                    text(other.getRemark(), "")));
        }
        answer.add("inspectionAnswers", "Questions of the sanitary inspection",
                new Table(List.of("Code", "Question", "Answer", "Seen"), rows));
        return answer.build();
    }

    /** Every test with its limit, and what a bad one asks for. */
    static Outcome.Completed tests(SiteReading site) {
        AnswerBuilder answer = new AnswerBuilder(null);
        List<List<Object>> rows = new ArrayList<>();
        List<TestResult> newestFirst = site.tests().results().stream().sorted(Comparator.comparing(TestResult::date,
                Comparator.nullsFirst(Comparator.naturalOrder())).reversed()).toList();
        for (TestResult test : newestFirst) {
            boolean bad = test.within().filter(within -> !within).isPresent();
            rows.add(Arrays.asList((test.date() == null ? "not dated" : test.date().toString()) + ", "
                    + (test.element() == null ? "place not said" : SiteTerms.name(test.element())) + ", by "
                    + test.laboratory(), test.label(), test.asWritten(),
                    test.limit().map(limit -> limit.text(test.unit())).orElse("none known"),
                    test.within().map(within -> within ? "yes" : "no").orElse("cannot be judged"),
                    test.date() == null ? "" : SiteTests.countsUntil(test.date()).toString(),
                    bad ? test.limit().orElseThrow().action() : test.problem().map(SiteTerms::sentence).orElse(""),
                    test.limit().map(limit -> SiteTerms.source(limit.source()).toString()).orElse("")));
        }
        answer.add("waterTests", "Water tests", new Table(List.of("Sample", "Of", "Result", "Limit", "Within",
                "Counts until", "To do", "Source of the limit"), rows));
        laxer(site, answer);
        return answer.build();
    }

    /** A limit above the default is the user's choice, and is said. */
    private static void laxer(SiteReading site, AnswerBuilder answer) {
        Set<String> said = new LinkedHashSet<>();
        for (TestResult test : site.tests().results()) {
            boolean laxer = test.known().isPresent() && test.limit().isPresent()
                    && test.limit().get().high().isPresent()
                    && test.limit().get().high().getAsDouble() > test.known().get().defaultLimit().high()
                            .orElse(Double.POSITIVE_INFINITY);
            if (laxer && said.add(test.label())) {
                answer.caution(new Caution("test.laxer-limit", Caution.Severity.WARNING, null,
                        "The limit for {0} in this site, {1}, is laxer than the usual one, {2}.",
                        List.of(test.label(), test.limit().get().text(test.unit()),
                                test.known().get().defaultLimit().text(test.unit())), "",
                        SiteTerms.source(test.known().get().defaultLimit().source())));
            }
        }
    }

    private static String text(String text, String otherwise) {
        return text == null ? otherwise : text;
    }
}
