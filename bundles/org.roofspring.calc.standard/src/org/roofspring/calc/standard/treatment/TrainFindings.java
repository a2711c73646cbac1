package org.roofspring.calc.standard.treatment;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

import org.roofspring.calc.Caution;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.Source;
import org.roofspring.calc.Working.Input;
import org.roofspring.calc.Working.Step;
import org.roofspring.calc.standard.answer.AnswerBuilder;
import org.roofspring.calc.standard.answer.KernelTerms;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.StepKind;
import org.roofspring.site.TreatmentTrain;
import org.roofspring.treatment.disinfection.DisinfectionCautions;
import org.roofspring.treatment.train.StepResult;
import org.roofspring.treatment.train.TrainEvaluator;
import org.roofspring.treatment.train.TrainFlow;
import org.roofspring.treatment.train.TrainResult;
import org.roofspring.treatment.train.UpkeepTask;

/** What a train costs in head, flow and work, whatever its water is used for. */
final class TrainFindings {
    private static final double DAY_S = 86_400;

    private final SiteReading site;
    private final TreatmentTrain train;
    private final TrainDemand demand;
    private final List<ReadStep> steps;
    private final AnswerBuilder answer;

    private TrainFindings(SiteReading site, TreatmentTrain train) {
        this.site = site;
        this.train = train;
        this.demand = site.demand(train);
        this.steps = site.steps(train);
        this.answer = new AnswerBuilder(train.getId());
    }

    static Outcome.Completed of(SiteReading site, TreatmentTrain train) {
        TrainFindings findings = new TrainFindings(site, train);
        TrainResult result = findings.evaluate();
        findings.heads();
        findings.flowLimit(result);
        findings.stored();
        findings.work();
        findings.changes(result);
        findings.assumed();
        findings.cautions();
        return findings.answer.build();
    }

    /** Alone, in the stored water: the dirtiest that it can get. */
    private TrainResult evaluate() {
        TrainFlow flow = new TrainFlow(demand.designM3PerS(), demand.dailyM3(), site.storedM3(train),
                OptionalDouble.empty());
        return TrainEvaluator.evaluate(steps.stream().flatMap(step -> step.kernel().stream()).toList(),
                SourceWater.of(site, demand).cold(), flow);
    }

    private void heads() {
        head("headLossClean", "Head loss when clean", "headLossClean", true);
        head("headLossFouled", "Head loss when due for a change", "headLossFouled", false);
    }

    private void head(String id, String title, String feature, boolean clean) {
        List<Step> parts = new ArrayList<>();
        List<Input> losses = new ArrayList<>();
        Quantity flow = Quantity.ofSi(demand.designM3PerS(), Units.L_PER_MIN);
        double total = 0;
        for (ReadStep step : steps) {
            var loss = step.headLoss();
            double reference = clean ? loss.cleanHeadM() : loss.fouledHeadM();
            if (reference == 0) {
                continue;
            }
            double head = clean ? loss.cleanHeadM(demand.designM3PerS()) : loss.fouledHeadM(demand.designM3PerS());
            String symbol = "h" + (losses.size() + 1);
            parts.add(Step.of(symbol, step.name(), "hr (Q / Qr)^n", Quantity.of(head, Units.M),
                    SiteTerms.source(loss.source()),
                    new Input("hr", "head loss at the reference flow", Quantity.of(reference, Units.M),
                            step.model().getId(), feature),
                    new Input("Q", "design flow", flow, train.getId(), "designFlow"),
                    new Input("Qr", "reference flow", Quantity.ofSi(loss.flowM3PerS(), Units.L_PER_MIN),
                            step.model().getId(), "referenceFlow"),
                    new Input("n", "exponent, 1 for fine pores to 2 for a housing", Quantity.of(loss.exponent()))));
            losses.add(new Input(symbol, step.name(), Quantity.of(head, Units.M)));
            total += head;
        }
        Quantity sum = Quantity.of(total, Units.M);
        parts.add(Step.of("h", title.substring(0, 1).toLowerCase(Locale.ROOT) + title.substring(1)
                + " at the design flow", losses.isEmpty() ? "0" : String.join(" + ",
                        losses.stream().map(Input::symbol).toList()), sum,
                Source.definition(demand.train().isBatch() ? "a batch passes no pipe" : "losses in a row add up"),
                losses.toArray(Input[]::new)));
        answer.number(id, title, sum, parts.toArray(Step[]::new));
    }

    private void flowLimit(TrainResult result) {
        result.flowLimitM3PerS().ifPresent(limit -> {
            List<Input> limits = new ArrayList<>();
            for (ReadStep step : steps) {
                step.kernel().map(one -> one.service().flowLimitM3PerS()).filter(OptionalDouble::isPresent)
                        .ifPresent(one -> limits.add(new Input("q" + (limits.size() + 1), step.name(),
                                Quantity.ofSi(one.getAsDouble(), Units.L_PER_MIN), step.model().getId(), "maxFlow")));
            }
            Quantity value = Quantity.ofSi(limit, Units.L_PER_MIN);
            answer.number("flowLimit", "Highest flow", value, Step.of("Q", "smallest of the steps", "min("
                    + String.join(", ", limits.stream().map(Input::symbol).toList()) + ")", value,
                    Source.definition("the narrowest step limits the train"), limits.toArray(Input[]::new)));
        });
    }

    private void stored() {
        if (demand.dailyM3() <= 0) {
            return;
        }
        double stored = site.storedM3(train);
        Quantity days = Quantity.of(stored / demand.dailyM3(), Units.D);
        answer.number("storedDays", "Days of use in the store of treated water", days,
                Step.of("t", "days that the treated water lasts", "V / D", days, Source.definition("volume over use"),
                        new Input("V", "storage vessels and tanks behind the treatment",
                                Quantity.ofSi(stored, Units.L)),
                        new Input("D", "use on a day with full use", Quantity.ofSi(demand.dailyM3() / DAY_S,
                                Units.L_PER_D))));
    }

    private void work() {
        List<List<Object>> rows = new ArrayList<>();
        List<Input> inputs = new ArrayList<>();
        double total = 0;
        for (ReadStep step : steps) {
            for (UpkeepTask task : step.tasks()) {
                Quantity week = Quantity.ofSi(task.weeklyDurationS(), Units.MIN);
                rows.add(List.of(step.name(), task.text(), Quantity.ofSi(task.intervalS(), Units.D),
                        Quantity.ofSi(task.durationS(), Units.MIN), week, task.weekly(),
                        SiteTerms.source(task.source()).toString()));
                inputs.add(new Input("w" + (inputs.size() + 1), step.name() + ": " + task.text(), week,
                        step.model().getId(), null));
                total += task.weeklyDurationS();
            }
        }
        Quantity work = Quantity.ofSi(total, Units.MIN);
        answer.number("weeklyWork", "Work in a week", work, Step.of("w", "time of each task x 7 d / its interval",
                inputs.isEmpty() ? "0" : String.join(" + ", inputs.stream().map(Input::symbol).toList()), work,
                Source.commonPractice("usual intervals and times; times differ with the person and the site"),
                inputs.toArray(Input[]::new)));
        answer.add("work", "Work that the train asks for", new FindingValue.Table(List.of("On", "Task", "Every",
                "Takes", "In a week", "At least weekly", "Source"), rows));
    }

    private void changes(TrainResult result) {
        for (StepResult step : result.steps()) {
            AnswerBuilder about = new AnswerBuilder(step.step().id());
            step.untilChangeM3().ifPresent(left -> {
                Quantity volume = Quantity.ofSi(left, Units.L);
                double whole = step.step().service().volumeUntilChangeM3(step.entering().turbidityNtu()).orElse(0);
                about.number("volumeUntilChange", "Water until the next change", volume, Step.of("V",
                        "left of what it lasts", "max(0, Vn - Vp)", volume,
                        step.step().service().dirtCapacityKg().isPresent()
                                ? SiteTerms.source(step.step().service().source())
                                : SiteTerms.user("volume after which it is changed"),
                        new Input("Vn", "when new: the rated volume, or what the dirt of water with "
                                + SiteTerms.shown(step.entering().turbidityNtu()) + " NTU leaves of it",
                                Quantity.ofSi(whole, Units.L), step.step().id(), "changeVolume"),
                        new Input("Vp", "passed since the last change, by the calendars of the uses",
                                Quantity.ofSi(step.step().running().passedVolumeM3(), Units.L), step.step().id(),
                                "lastChanged")));
            });
            step.untilChangeS().ifPresent(left -> {
                Quantity time = Quantity.ofSi(left, Units.D);
                List<Input> inputs = new ArrayList<>();
                step.untilChangeM3().ifPresent(volume -> inputs.add(new Input("V", "water until the next change",
                        Quantity.ofSi(volume, Units.L))));
                inputs.add(new Input("D", "use on a day with full use",
                        Quantity.ofSi(demand.dailyM3() / DAY_S, Units.L_PER_D)));
                step.step().service().lifeS().ifPresent(life -> inputs.add(new Input("T", "time after which it is "
                        + "changed", Quantity.ofSi(life, Units.D), step.step().id(), "changeInterval")));
                inputs.add(new Input("t", "time since the last change",
                        Quantity.ofSi(step.step().running().inServiceS(), Units.D), step.step().id(),
                        "lastChanged"));
                about.number("timeUntilChange", "Days until the next change", time, Step.of("d",
                        "days of full use that are left", "min(V / D, T - t)", time,
                        Source.definition("whichever comes first"), inputs.toArray(Input[]::new)));
            });
            answer.include(about.build());
        }
    }

    private void assumed() {
        List<List<Object>> rows = new ArrayList<>();
        steps.stream().flatMap(step -> step.assumed().stream()).forEach(one -> rows.add(row(one)));
        SourceWater.of(site, demand).assumed().forEach(one -> rows.add(row(one)));
        answer.add("assumed", "Taken for want of a value",
                new FindingValue.Table(List.of("Of", "What", "Taken as", "Source"), rows));
    }

    private static List<Object> row(Assumed one) {
        return Arrays.asList(one.where(), one.what(), one.takenAs(), SiteTerms.source(one.source()).toString());
    }

    private void cautions() {
        if (demand.uses().isEmpty()) {
            answer.caution(new Caution("train.unused", Caution.Severity.INFO, train.getId(),
                    "No use draws its water through {0}; name it in a use, or lead the pipe to a tap through it.",
                    List.of(SiteTerms.name(train)), "", Source.definition("how the pipes were read")));
        }
        for (ReadStep step : steps) {
            String id = step.model().getId();
            Source practice = Source.commonPractice("use of " + step.name());
            if (step.model().getKind() == StepKind.UV_LAMP) {
                DisinfectionCautions.uv().forEach(one -> answer.caution(KernelTerms.caution(id, one, practice)));
            } else if (step.model().getKind() == StepKind.BOILING) {
                DisinfectionCautions.boil().forEach(one -> answer.caution(KernelTerms.caution(id, one, practice)));
            } else if (step.model().getKind() == StepKind.SOLAR) {
                DisinfectionCautions.solar().forEach(one -> answer.caution(KernelTerms.caution(id, one, practice)));
            }
        }
    }
}
