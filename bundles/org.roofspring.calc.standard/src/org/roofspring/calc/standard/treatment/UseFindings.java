package org.roofspring.calc.standard.treatment;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.roofspring.calc.Caution;
import org.roofspring.calc.Finding;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.FindingValue.Verdict.Level;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.Source;
import org.roofspring.calc.Working.Input;
import org.roofspring.calc.Working.Step;
import org.roofspring.calc.standard.answer.AnswerBuilder;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.TreatmentTrain;
import org.roofspring.treatment.LogReductions;
import org.roofspring.treatment.PathogenGroup;
import org.roofspring.treatment.safety.Verdict;
import org.roofspring.treatment.train.Condition;
import org.roofspring.treatment.train.Credit;
import org.roofspring.treatment.train.CreditCaps;
import org.roofspring.treatment.train.StepResult;

/** The appraisal of a use as findings: the verdict, the reduction step by step, credits and conditions. */
public final class UseFindings {
    private static final Source RULE = Source.definition("a step out of work for a share of the time lets that share "
            + "through; of two steps of one mechanism the larger counts");

    private final UseAppraisal appraisal;
    private final String useId;
    private final AnswerBuilder answer;

    private UseFindings(UseAppraisal appraisal) {
        this.appraisal = appraisal;
        this.useId = appraisal.use().getId();
        this.answer = new AnswerBuilder(useId);
    }

    /** @param asOf what the verdict's day is, in a sentence */
    public static Outcome.Completed of(UseAppraisal appraisal, String asOf) {
        UseFindings findings = new UseFindings(appraisal);
        findings.verdict(asOf);
        findings.way();
        findings.reduction();
        for (PathogenGroup group : PathogenGroup.values()) {
            findings.total(group);
        }
        findings.conditions();
        findings.credits();
        findings.hazards();
        findings.cautions();
        return findings.answer.build();
    }

    private void verdict(String asOf) {
        Verdict verdict = appraisal.verdict();
        String use = appraisal.situation().use().label();
        List<String> said = new ArrayList<>();
        String text;
        Level level;
        switch (verdict.outcome()) {
            case NOT_SUITABLE -> {
                text = "not suitable for " + use;
                level = Level.BAD;
                said.addAll(verdict.reasons());
                verdict.conditions().forEach(condition -> said.add("Also needed: " + condition));
            }
            case SUITABLE_IF -> {
                text = "suitable for " + use + " if all of this holds";
                level = Level.CONDITIONAL;
                said.addAll(verdict.conditions());
            }
            default -> {
                text = "suitable for " + use + ", on the stated assumptions and as long as every step works as listed";
                level = Level.GOOD;
                said.addAll(verdict.basis());
            }
        }
        said.add(asOf);
        said.add(Verdict.ADVICE);
        answer.add("verdict", "Verdict", new FindingValue.Verdict(level, text, said));
    }

    /** Where the water comes from and what it passes, each part with its element. */
    private void way() {
        WaterWay way = appraisal.way();
        answer.text("drawsThrough", "Drawn through", way.trains().isEmpty() ? "no treatment"
                : String.join(", then ", way.trains().stream().map(SiteTerms::name).toList()));
        List<List<Object>> rows = new ArrayList<>();
        way.tanks().stream().filter(tank -> !way.stores().contains(tank)).forEach(tank -> rows.add(List.of(
                SiteTerms.name(tank), "tank", tank.getId())));
        way.trains().forEach(train -> rows.add(List.of(SiteTerms.name(train), "treatment train", train.getId())));
        way.stores().forEach(tank -> rows.add(List.of(SiteTerms.name(tank), "store of treated water", tank.getId())));
        answer.add("way", "Way of the water", new FindingValue.Table(List.of("Passes", "Is a", "Element"), rows));
    }

    /** From the tank to the use: what has been taken out behind each step, and what is asked for. */
    private void reduction() {
        List<List<Object>> rows = new ArrayList<>();
        LogReductions reached = LogReductions.NONE;
        rows.add(row("Tank", reached, "", ""));
        for (ReadStep step : appraisal.steps()) {
            Optional<StepResult> result = appraisal.result(step);
            reached = result.map(StepResult::cumulative).orElse(reached);
            rows.add(row(step.name(), reached, says(step, result), step.model().getId()));
        }
        rows.add(row("Asked for", appraisal.target().logs(), appraisal.meetsTarget() ? "reached"
                : "not reached: " + missing(), ""));
        answer.add("reduction", "Log reduction behind each step", new FindingValue.Table(List.of("Behind", "Bacteria",
                "Viruses", "Giardia", "Cryptosporidium", "Says", "Step"), rows));
    }

    private static List<Object> row(String name, LogReductions logs, String says, String stepId) {
        List<Object> row = new ArrayList<>(List.of(name));
        for (PathogenGroup group : PathogenGroup.values()) {
            row.add(Quantity.of(logs.of(group)));
        }
        row.add(says);
        row.add(stepId);
        return row;
    }

    private String says(ReadStep step, Optional<StepResult> result) {
        if (result.isEmpty()) {
            return "treats nothing";
        }
        List<String> says = new ArrayList<>();
        if (appraisal.tooTurbid().contains(step.model().getId())) {
            says.add("No credit: the water that enters has " + SiteTerms.shown(result.get().entering().turbidityNtu())
                    + " NTU, more than the " + SiteTerms.shown(step.model().getMaxTurbidity().si())
                    + " NTU it is allowed.");
        }
        List<Condition> failed = result.get().failed();
        if (!failed.isEmpty()) {
            says.add((result.get().isBarrier() ? "No credit: " : "Not as it should be: ") + String.join(" ",
                    failed.stream().map(Condition::text).toList()));
        }
        says.addAll(result.get().notes());
        if (says.isEmpty() && result.get().earned().equals(LogReductions.NONE)) {
            says.add("not a barrier to organisms");
        }
        return says.isEmpty() ? "all conditions hold" : String.join(" ", says);
    }

    private String missing() {
        return String.join(", ", Arrays.stream(PathogenGroup.values())
                .filter(group -> appraisal.train().total().of(group) < appraisal.target().logs().of(group) - 1e-9)
                .map(PathogenGroup::label).toList());
    }

    private void total(PathogenGroup group) {
        List<Step> steps = new ArrayList<>();
        List<Input> earned = new ArrayList<>();
        int number = 1;
        for (StepResult result : appraisal.train().steps()) {
            Credit credit = result.credits().get(group);
            double log = result.earned().of(group);
            if (credit.log() == 0 && log == 0) {
                continue;
            }
            String symbol = "L" + number++;
            Quantity value = Quantity.of(log);
            Input full = new Input("L", "credit while it works, " + credit.text(), Quantity.of(credit.log()),
                    result.step().id(), null);
            steps.add(result.failed().isEmpty()
                    ? Step.of(symbol, result.step().name() + ", by " + result.step().treatment().mechanism().label(),
                            "-log10((1 - o) 10^-L + o)", value, SiteTerms.source(credit.source()), full,
                            new Input("o", "share of the time out of work", Quantity.ofSi(
                                    result.step().running().outageRatio(), Units.PERCENT), result.step().id(),
                                    "availability"))
                    : Step.of(symbol, result.step().name() + " earns nothing while a condition fails", "0", value,
                            SiteTerms.source(credit.source()), full));
            earned.add(new Input(symbol, result.step().name(), value, result.step().id(), null));
        }
        Quantity total = Quantity.of(appraisal.train().total().of(group));
        steps.add(Step.of("Lt", "log reduction of the way to this use", earned.isEmpty() ? "0"
                : "min(Lc, sum over mechanisms of the largest of " + String.join(", ",
                        earned.stream().map(Input::symbol).toList()) + ")", total, earned.isEmpty() ? RULE
                                : SiteTerms.source(CreditCaps.DEFAULT.source()), withCap(earned)));
        answer.number("log" + title(group), "Log reduction of " + group.label(), total, steps.toArray(Step[]::new));
    }

    private static Input[] withCap(List<Input> earned) {
        List<Input> inputs = new ArrayList<>(earned);
        if (!earned.isEmpty()) {
            inputs.add(new Input("Lc", "cap of a train", Quantity.of(CreditCaps.DEFAULT.perTrain())));
        }
        return inputs.toArray(Input[]::new);
    }

    private static String title(PathogenGroup group) {
        return switch (group) {
            case BACTERIA -> "Bacteria";
            case VIRUSES -> "Viruses";
            case GIARDIA -> "Giardia";
            case CRYPTOSPORIDIUM -> "Cryptosporidium";
        };
    }

    private void conditions() {
        List<List<Object>> rows = new ArrayList<>();
        for (ReadStep step : appraisal.steps()) {
            String id = step.model().getId();
            appraisal.result(step).ifPresent(result -> {
                result.conditions().forEach(
                        condition -> rows.add(List.of(step.name(), condition.text(), condition.met(), id)));
                if (step.model().getMaxTurbidity() != null) {
                    rows.add(List.of(step.name(), "The water that enters has at most "
                            + SiteTerms.shown(step.model().getMaxTurbidity().si()) + " NTU, as this site allows it.",
                            !UseAppraisal.tooTurbid(step, result), id));
                }
            });
        }
        if (!rows.isEmpty()) {
            answer.add("conditions", "Conditions of the steps",
                    new FindingValue.Table(List.of("Of", "Condition", "Holds", "Step"), rows));
        }
    }

    /** Which source credits what, and what another source would have given. */
    private void credits() {
        List<List<Object>> rows = new ArrayList<>();
        for (StepResult result : appraisal.train().steps()) {
            for (PathogenGroup group : PathogenGroup.values()) {
                Credit credit = result.credits().get(group);
                if (credit.log() > 0 || credit.alternative().filter(other -> other.log() > 0).isPresent()) {
                    rows.add(List.of(result.step().name(), group.label(), Quantity.of(credit.log()),
                            Quantity.of(result.earned().of(group)), SiteTerms.source(credit.source()).toString(),
                            credit.alternative().filter(other -> other.log() != credit.log())
                                    .map(other -> SiteTerms.shown(other.log()) + " log by "
                                            + SiteTerms.source(other.source())).orElse("")));
                }
            }
        }
        rows.add(Arrays.asList("Target", "all", null, null,
                SiteTerms.source(appraisal.target().source()).toString(), ""));
        answer.add("credits", "Credits and their sources", new FindingValue.Table(List.of("Of", "Group",
                "While it works", "Counted", "Source", "Not used"), rows));
    }

    private void hazards() {
        List<List<Object>> rows = new ArrayList<>();
        appraisal.hazards().chemical().forEach((hazard, from) -> rows.add(List.of(hazard.label(),
                from.isEmpty() ? "stored water" : SiteHazards.names(from),
                switch (hazard.effect()) {
                    case BLOCKS -> "blocks drinking and cooking until a test is within limits";
                    case CONDITIONS -> "drinking and cooking only with a test and this control";
                }, SiteTerms.sentence(hazard.control()), SiteTerms.source(hazard.source()).toString())));
        appraisal.hazards().viruses().forEach((pathway, from) -> rows.add(List.of("viruses by " + pathway.label(),
                SiteHazards.names(from), "drinking and cooking only behind a barrier to viruses",
                "Close the way in, or treat with a barrier to viruses.",
                SiteTerms.source(org.roofspring.treatment.safety.UseTarget.PROTECTIVE).toString())));
        if (!rows.isEmpty()) {
            answer.add("hazards", "Hazards of materials and surroundings", new FindingValue.Table(List.of("Hazard",
                    "From", "Effect", "Control", "Source"), rows));
        }
    }

    private void cautions() {
        Source source = SiteTerms.source(appraisal.target().source());
        appraisal.verdict().cautions().forEach(caution -> {
            answer.caution(SiteTerms.caution(about(caution.code()), caution, source(caution.code(), source)));
        });
        for (TreatmentTrain train : appraisal.way().trains()) {
            if (appraisal.use().getTrain() == train && !appraisal.way().bypassing().isEmpty()) {
                answer.caution(new Caution("train.bypassed", Caution.Severity.WARNING, train.getId(),
                        "A pipe leads to {0} past {1}, which its water is said to pass.",
                        List.of(SiteTerms.name(appraisal.way().bypassing().get(0)), SiteTerms.name(train)), "",
                        Source.definition("how the pipes were read")));
            }
        }
    }

    /** The roof or tank that a hazard comes from; nothing where it is about the water of the whole site. */
    private String about(String code) {
        return code.startsWith("hazard.") || code.startsWith("test.") ? appraisal.hazards().elementId(code) : useId;
    }

    /** Why a caution is said. */
    private Source source(String code, Source otherwise) {
        if (code.startsWith("hazard.")) {
            return appraisal.hazards().kinds().stream()
                    .filter(hazard -> code.equals("hazard." + hazard.name().toLowerCase(Locale.ROOT)))
                    .map(hazard -> SiteTerms.source(hazard.source())).findFirst()
                    .orElse(Source.fromMemory("WHO Guidelines for Drinking-water Quality, 4th ed, corrosion"));
        }
        if (code.equals("legionella")) {
            return Source.fromMemory("WHO 2007, Legionella and the Prevention of Legionellosis");
        }
        return code.startsWith("order.") ? Source.commonPractice("order of treatment steps") : otherwise;
    }

    /** The verdict among the findings of an outcome. */
    public static Optional<FindingValue.Verdict> verdict(Outcome.Completed outcome, String useId) {
        return outcome.finding("verdict", useId).map(Finding::value).map(FindingValue.Verdict.class::cast);
    }
}
