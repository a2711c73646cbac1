package org.roofspring.calc.standard.treatment;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;

import org.roofspring.site.StepKind;
import org.roofspring.site.TapKind;
import org.roofspring.site.TreatmentTrain;
import org.roofspring.site.Use;
import org.roofspring.site.WaterParameter;
import org.roofspring.treatment.LogRange;
import org.roofspring.treatment.LogReductions;
import org.roofspring.treatment.PathogenGroup;
import org.roofspring.treatment.Removal;
import org.roofspring.treatment.Source;
import org.roofspring.treatment.safety.Judge;
import org.roofspring.treatment.safety.Situation;
import org.roofspring.treatment.safety.UseTarget;
import org.roofspring.treatment.safety.Verdict;
import org.roofspring.treatment.train.StepResult;
import org.roofspring.treatment.train.TrainEvaluator;
import org.roofspring.treatment.train.TrainFlow;
import org.roofspring.treatment.train.TrainResult;
import org.roofspring.treatment.train.TrainStep;

/**
 * What may be said of the water of one use, and all that it rests on.
 *
 * @param use       the use
 * @param way       of its water
 * @param steps     in the order of flow, over all trains it passes
 * @param water     before the first step
 * @param hazards   of materials and surroundings
 * @param situation what the kernel was told
 * @param target    log reductions asked for
 * @param flow      that the steps are judged at
 * @param train     what the steps that treat do
 * @param tooTurbid steps that earn nothing because the water is more turbid than the site allows them
 * @param verdict   the kernel's, with what only the site knows added
 */
public record UseAppraisal(Use use, WaterWay way, List<ReadStep> steps, SourceWater water, SiteHazards hazards,
        Situation situation, UseTarget target, TrainFlow flow, TrainResult train, Set<String> tooTurbid,
        Verdict verdict) {
    private static final double SLACK = 1 + 1e-6;

    /**
     * Appraises a use of the site that a verdict is given on.
     *
     * @throws UnreadableException where values of a step contradict each other
     */
    public static UseAppraisal of(SiteReading site, Use use) {
        WaterWay way = site.ways().get(use);
        List<ReadStep> steps = way.trains().stream().flatMap(train -> site.steps(train).stream()).toList();
        SourceWater water = SourceWater.of(site, use);
        SiteHazards hazards = SiteHazards.of(use, way, water.cold().ph(), site.countedTo());
        Situation situation = new Situation(SiteReading.kernelUse(use.getPurpose()).orElseThrow(), use.isVulnerable(),
                use.getTaps().stream().anyMatch(tap -> tap.isInUse() && tap.getKind() == TapKind.SHOWER),
                keptBehind(use, way, steps), hazards.kinds(), hazards.viruses().keySet(),
                site.tests().of(use, way), site.inspection().map(SiteInspection::score));
        UseTarget target = situation.defaultTarget();
        Set<String> tooTurbid = new HashSet<>();
        TrainFlow flow = flow(site, way);
        TrainResult train = evaluate(steps, water, flow, tooTurbid);
        // Without a step the kernel's sentences on "the train" would speak of nothing; the lack is named here instead.
        UseTarget judgedBy = steps.isEmpty() ? new UseTarget(LogReductions.NONE, target.source()) : target;
        Verdict kernel = Judge.judge(train, water.warm(), situation, judgedBy);
        UseAppraisal first = new UseAppraisal(use, way, steps, water, hazards, situation, target, flow, train,
                tooTurbid, kernel);
        return new UseAppraisal(use, way, steps, water, hazards, situation, target, flow, train, tooTurbid,
                first.withSite(site));
    }

    private static boolean keptBehind(Use use, WaterWay way, List<ReadStep> steps) {
        return !steps.isEmpty() && (use.isContainers() || !way.stores().isEmpty()
                || way.trains().stream().anyMatch(TreatmentTrain::isBatch)
                || steps.stream().anyMatch(step -> step.model().getKind() == StepKind.SAFE_STORAGE));
    }

    /** That of the train which is asked for most, where the water passes several. */
    private static TrainFlow flow(SiteReading site, WaterWay way) {
        List<TrainDemand> demands = way.trains().stream().map(site::demand).toList();
        return new TrainFlow(demands.stream().mapToDouble(TrainDemand::designM3PerS).max().orElse(0),
                demands.stream().mapToDouble(TrainDemand::dailyM3).max().orElse(0),
                way.trains().stream().mapToDouble(site::storedM3).sum(), OptionalDouble.empty());
    }

    /** A step that the site allows less turbid water only earns nothing in more turbid water. */
    private static TrainResult evaluate(List<ReadStep> steps, SourceWater water, TrainFlow asked,
            Set<String> tooTurbid) {
        List<TrainStep> kernel = steps.stream().flatMap(step -> step.kernel().stream()).toList();
        TrainResult result = TrainEvaluator.evaluate(kernel, water.cold(), asked);
        List<TrainStep> limited = new ArrayList<>();
        for (StepResult step : result.steps()) {
            ReadStep read = steps.stream().filter(one -> one.model().getId().equals(step.step().id())).findFirst()
                    .orElseThrow();
            boolean over = step.failed().isEmpty() && tooTurbid(read, step);
            limited.add(over ? step.step().withRemoval(Removal.none(Source.derived("no credit above the turbidity "
                    + "that the site allows this step"))) : step.step());
            if (over) {
                tooTurbid.add(step.step().id());
            }
        }
        return tooTurbid.isEmpty() ? result : TrainEvaluator.evaluate(limited, water.cold(), asked);
    }

    /** Whether the water that enters is more turbid than the site allows the step. */
    static boolean tooTurbid(ReadStep step, StepResult result) {
        return step.model().getMaxTurbidity() != null
                && result.entering().turbidityNtu() > step.model().getMaxTurbidity().si() * SLACK;
    }

    /** The verdict with what only the site knows. */
    private Verdict withSite(SiteReading site) {
        List<String> reasons = new ArrayList<>();
        List<String> conditions = new ArrayList<>(verdict.conditions());
        boolean swallowed = situation.use().swallowed();
        boolean garden = situation.use() == org.roofspring.treatment.safety.Use.GARDEN;
        if (steps.isEmpty() && !LogReductions.NONE.reaches(target.logs())) {
            reasons.add("No treatment stands between the tank and this use; " + asked() + " are asked for.");
        }
        reasons.addAll(verdict.reasons());
        if (!garden) {
            way.bypassing().forEach(tap -> conditions.add("No water for this use is drawn at " + SiteTerms.name(tap)
                    + ", where a pipe passes the treatment by."));
            steps.forEach(step -> step.conditions().forEach(text -> conditions.add(SiteTerms.sentence(text))));
            steps.stream().filter(step -> tooTurbid.contains(step.model().getId())).forEach(step -> conditions.add(
                    step.name() + " earns no credit until the water that enters it is at most "
                            + SiteTerms.shown(step.model().getMaxTurbidity().si()) + " NTU."));
            flows(site, conditions);
        }
        if (!water.unmeasured().isEmpty()) {
            conditions.add("The stored water is tested; taken without a test: "
                    + String.join(", ", water.unmeasured()) + ".");
        }
        if (swallowed) {
            materials(site, reasons, conditions);
        }
        site.tests().otherBad(use, way).forEach(bad -> {
            String sentence = SiteTerms.sentence(bad.label() + " is " + bad.asWritten() + ", the limit "
                    + bad.limit().orElseThrow().text(bad.unit())) + " " + bad.limit().orElseThrow().action();
            (swallowed && bad.limit().orElseThrow().health() ? reasons : conditions).add(sentence);
        });
        if (!garden) {
            site.tests().unreadable(use, way).forEach(test -> conditions.add("The test of " + test.label()
                    + " is written so that it can be judged: "
                    + test.problem().orElse("the day of its sample is not given") + "."));
        }
        Verdict.Outcome outcome = !reasons.isEmpty() ? Verdict.Outcome.NOT_SUITABLE
                : conditions.isEmpty() ? Verdict.Outcome.SUITABLE : Verdict.Outcome.SUITABLE_IF;
        return new Verdict(outcome, verdict.use(), reasons, conditions.stream().distinct().toList(), verdict.basis(),
                verdict.cautions());
    }

    private String asked() {
        return Arrays.stream(PathogenGroup.values()).filter(group -> target.logs().of(group) > 0)
                .map(group -> SiteTerms.shown(target.logs().of(group)) + " log of " + group.label())
                .collect(Collectors.joining(", "));
    }

    private void flows(SiteReading site, List<String> conditions) {
        for (TreatmentTrain train : way.trains()) {
            TrainDemand demand = site.demand(train);
            if (demand.assumedFlow()) {
                conditions.add("The flow through " + SiteTerms.name(train) + " is not more than "
                        + StepReader.litresAMinute(demand.designM3PerS())
                        + ", one tap: neither it nor its taps say how much flows.");
            }
            OptionalDouble limit = site.steps(train).stream().flatMap(step -> step.kernel().stream())
                    .map(step -> step.service().flowLimitM3PerS()).filter(OptionalDouble::isPresent)
                    .mapToDouble(OptionalDouble::getAsDouble).min();
            if (limit.isPresent() && demand.tapsM3PerS().isPresent()
                    && demand.tapsM3PerS().getAsDouble() > limit.getAsDouble() * SLACK) {
                conditions.add("A flow limiter keeps what passes " + SiteTerms.name(train) + " at "
                        + StepReader.litresAMinute(limit.getAsDouble()) + " or less: its taps together can draw "
                        + StepReader.litresAMinute(demand.tapsM3PerS().getAsDouble()) + ".");
            }
        }
    }

    private void materials(SiteReading site, List<String> reasons, List<String> conditions) {
        if (!hazards.treatedTimber().isEmpty()) {
            String where = SiteHazards.names(hazards.treatedTimber());
            if (site.tests().proves(WaterParameter.ARSENIC, use, way)) {
                conditions.add("Timber that may be treated is in touch with the water (" + where
                        + "): arsenic is tested again each year, and the timber is replaced.");
            } else {
                reasons.add("Timber that may be treated with arsenic, copper or tar is in touch with the water ("
                        + where + "), and no current test shows arsenic to be within limits; no step of the train is "
                        + "credited with it.");
            }
        }
        if (!hazards.colouring().isEmpty()) {
            conditions.add("Thatch and planted roofs colour the water (" + SiteHazards.names(hazards.colouring())
                    + "): colour, which shades light and uses up chlorine, is tested and low.");
        }
        if (!hazards.unstated().isEmpty()) {
            conditions.add("What covers or makes up these parts is known, and gives nothing off: "
                    + SiteHazards.names(hazards.unstated()) + ".");
        }
    }

    /** What the kernel says of a step; empty for one that treats nothing. */
    Optional<StepResult> result(ReadStep step) {
        return train.steps().stream().filter(result -> result.step().id().equals(step.model().getId())).findFirst();
    }

    /** The same way with every step at the high end of its range: well kept, at its best. */
    LogReductions atBest() {
        List<TrainStep> best = train.steps().stream().map(StepResult::step).map(step -> step.withRemoval(new Removal(
                high(step.removal().bacteria()), high(step.removal().viruses()), high(step.removal().giardia()),
                high(step.removal().cryptosporidium())))).toList();
        return TrainEvaluator.evaluate(best, water.cold(), flow).total();
    }

    private static LogRange high(LogRange range) {
        return new LogRange(range.high(), range.high(), range.source());
    }

    /** Whether every group reaches its target. */
    boolean meetsTarget() {
        return train.total().reaches(target.logs());
    }
}
