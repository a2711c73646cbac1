package org.roofspring.treatment.train;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;

import org.roofspring.treatment.Caution;
import org.roofspring.treatment.LogReductions;
import org.roofspring.treatment.PathogenGroup;
import org.roofspring.treatment.internal.Checks;

/** Follows the water through a train, step by step. */
public final class TrainEvaluator {
    private static final int MAX_STEPS = 200;

    private TrainEvaluator() {
    }

    /** With the default caps. */
    public static TrainResult evaluate(List<TrainStep> steps, WaterState source, TrainFlow flow) {
        return evaluate(steps, source, flow, CreditCaps.DEFAULT);
    }

    /**
     * @param steps  from the tank to the use, each with its own id, at most 200; a train that branches is evaluated
     *               once for each use
     * @param source water in the tank
     * @param flow   what is asked of the train
     * @param caps   past which nothing is added
     * @throws IllegalArgumentException for an id that occurs twice
     */
    public static TrainResult evaluate(List<TrainStep> steps, WaterState source, TrainFlow flow, CreditCaps caps) {
        List<TrainStep> train = Checks.list("steps", steps);
        Checks.present("source", source);
        Checks.present("flow", flow);
        Checks.present("caps", caps);
        requireDistinct(train);
        List<StepResult> results = new ArrayList<>();
        Map<Mechanism, LogReductions> byMechanism = new EnumMap<>(Mechanism.class);
        Map<Mechanism, String> credited = new EnumMap<>(Mechanism.class);
        WaterState water = source;
        double cleanM = 0;
        double fouledM = 0;
        for (TrainStep step : train) {
            StepResult result = step(step, water, flow, caps, byMechanism, credited, fouledM);
            results.add(result);
            water = result.leaving();
            cleanM += result.cleanHeadLossM();
            fouledM += result.fouledHeadLossM();
        }
        LogReductions total = sum(byMechanism, caps);
        List<Caution> cautions = new ArrayList<>(StepOrder.cautions(train));
        OptionalDouble residualHeadM = flow.availableHeadM().isPresent()
                ? OptionalDouble.of(flow.availableHeadM().getAsDouble() - fouledM) : OptionalDouble.empty();
        if (residualHeadM.isPresent() && residualHeadM.getAsDouble() < 0) {
            cautions.add(Caution.warning("train.head", "The fouled steps take more head than there is before them; at "
                    + "the peak flow the tap runs slowly or dry before the elements are due for a change."));
        }
        return new TrainResult(results, total, cautions, cleanM, fouledM, residualHeadM, flowLimit(train),
                flow.dailyVolumeM3() > 0 ? OptionalDouble.of(flow.storedTreatedM3() / flow.dailyVolumeM3())
                        : OptionalDouble.empty(),
                train.stream().flatMap(step -> step.service().tasks().stream())
                        .mapToDouble(UpkeepTask::weeklyDurationS).sum());
    }

    private static StepResult step(TrainStep step, WaterState water, TrainFlow flow, CreditCaps caps,
            Map<Mechanism, LogReductions> byMechanism, Map<Mechanism, String> credited, double headLostBeforeM) {
        Treatment treatment = step.treatment();
        StepService service = step.service();
        WaterState entering = step.running().turbidityNtu().isPresent()
                ? water.withTurbidity(step.running().turbidityNtu().getAsDouble()) : water;
        List<Condition> conditions = new ArrayList<>(treatment.conditions(entering));
        conditions.addAll(ServiceConditions.of(step, entering, flow, headLostBeforeM));
        Map<PathogenGroup, Credit> credits = new EnumMap<>(PathogenGroup.class);
        for (PathogenGroup group : PathogenGroup.values()) {
            credits.put(group, treatment.credit(group, entering, step.removal()));
        }
        boolean holds = conditions.stream().allMatch(Condition::met);
        LogReductions earned = holds ? LogReductions.byGroup(group -> Availability.effectiveLog(
                Math.min(credits.get(group).log(), caps.perStep()), step.running().outageRatio())) : LogReductions.NONE;
        List<String> notes = new ArrayList<>();
        String same = credited.get(treatment.mechanism());
        if (!earned.equals(LogReductions.NONE)) {
            if (same != null) {
                notes.add("Works by " + treatment.mechanism().label() + " as " + same
                        + " does; of the two only the larger credit counts.");
            }
            credited.putIfAbsent(treatment.mechanism(), step.name());
        }
        byMechanism.merge(treatment.mechanism(), earned, (a, b) -> a.combine(b, Math::max));
        if (holds && step.running().outageRatio() > 0) {
            notes.add("Out for " + Checks.shown(step.running().outageRatio() * 100)
                    + " % of the time, in which everything passes; its credit is reduced accordingly.");
        }
        WaterState leaving = entering.withTurbidity(entering.turbidityNtu() * service.turbidityLeftRatio())
                .withFreeChlorine(treatment.freeChlorineAfter(entering));
        OptionalDouble leftM3 = volumeLeft(step, entering);
        return new StepResult(step, entering, leaving, conditions, credits, earned, sum(byMechanism, caps), notes,
                service.headLoss().cleanHeadM(flow.peakFlowM3PerS()),
                service.headLoss().fouledHeadM(flow.peakFlowM3PerS()), leftM3, timeLeft(step, leftM3, flow));
    }

    private static LogReductions sum(Map<Mechanism, LogReductions> byMechanism, CreditCaps caps) {
        return LogReductions.byGroup(group -> Math.min(caps.perTrain(),
                byMechanism.values().stream().mapToDouble(logs -> logs.of(group)).sum()));
    }

    private static OptionalDouble volumeLeft(TrainStep step, WaterState entering) {
        OptionalDouble whole = step.service().volumeUntilChangeM3(entering.turbidityNtu());
        return whole.isPresent()
                ? OptionalDouble.of(Math.max(0, whole.getAsDouble() - step.running().passedVolumeM3()))
                : OptionalDouble.empty();
    }

    private static OptionalDouble timeLeft(TrainStep step, OptionalDouble leftM3, TrainFlow flow) {
        double byVolume = leftM3.isPresent() && flow.dailyVolumeM3() > 0
                ? leftM3.getAsDouble() / flow.dailyVolumeM3() * 86_400 : Double.POSITIVE_INFINITY;
        double byTime = step.service().lifeS().isPresent()
                ? Math.max(0, step.service().lifeS().getAsDouble() - step.running().inServiceS())
                : Double.POSITIVE_INFINITY;
        double left = Math.min(byVolume, byTime);
        return Double.isInfinite(left) ? OptionalDouble.empty() : OptionalDouble.of(left);
    }

    private static OptionalDouble flowLimit(List<TrainStep> train) {
        return train.stream().map(step -> step.service().flowLimitM3PerS()).filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble).min();
    }

    private static void requireDistinct(List<TrainStep> train) {
        if (train.size() > MAX_STEPS) {
            throw new IllegalArgumentException("steps must be at most " + MAX_STEPS + ", not " + train.size());
        }
        Set<String> ids = new HashSet<>();
        for (TrainStep step : train) {
            if (!ids.add(step.id())) {
                throw new IllegalArgumentException("steps must each have their own id; \"" + step.id()
                        + "\" occurs twice");
            }
        }
    }
}
