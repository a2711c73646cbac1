package org.roofspring.treatment.train;

import java.util.List;
import java.util.OptionalDouble;

import org.roofspring.treatment.Caution;
import org.roofspring.treatment.LogReductions;
import org.roofspring.treatment.internal.Checks;

/**
 * A train, step by step.
 *
 * @param steps             in the order of flow
 * @param total             log reduction of the whole train
 * @param cautions          about the order of steps and their running
 * @param cleanHeadLossM    of all steps at the peak flow, new [m]
 * @param fouledHeadLossM   of all steps at the peak flow, due for a change [m]
 * @param residualHeadM     behind the train, fouled [m]; empty where the head before it is unknown
 * @param flowLimitM3PerS   smallest flow limit of the steps [m3/s]; empty where none has one
 * @param storedDays        days of use that the store of treated water covers [d]; empty where nothing is used
 * @param weeklyWorkS       upkeep spread over the weeks [s]
 */
public record TrainResult(List<StepResult> steps, LogReductions total, List<Caution> cautions, double cleanHeadLossM,
        double fouledHeadLossM, OptionalDouble residualHeadM, OptionalDouble flowLimitM3PerS,
        OptionalDouble storedDays, double weeklyWorkS) {
    public TrainResult {
        steps = Checks.list("steps", steps);
        cautions = Checks.list("cautions", cautions);
    }

    /** Water behind the last step, or the given water where there is no step. */
    public WaterState leaving(WaterState source) {
        return steps.isEmpty() ? source : steps.get(steps.size() - 1).leaving();
    }

    /** Tasks that come round at least each week. */
    public List<UpkeepTask> weeklyTasks() {
        return steps.stream().flatMap(result -> result.step().service().tasks().stream()).filter(UpkeepTask::weekly)
                .toList();
    }
}
