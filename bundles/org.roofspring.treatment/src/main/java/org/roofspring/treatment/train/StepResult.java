package org.roofspring.treatment.train;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

import org.roofspring.treatment.LogReductions;
import org.roofspring.treatment.PathogenGroup;
import org.roofspring.treatment.internal.Checks;

/**
 * What a step does in its place.
 *
 * @param step            as given
 * @param entering        water that enters
 * @param leaving         water that leaves
 * @param conditions      what has to hold, and whether it does
 * @param credits         credit by group while all conditions hold, with the chosen source
 * @param earned          credit after conditions, caps and the share of time out
 * @param cumulative      of the train up to and with this step
 * @param notes           why something is not added, in plain sentences
 * @param cleanHeadLossM  at the peak flow, new [m]
 * @param fouledHeadLossM at the peak flow, due for a change [m]
 * @param untilChangeM3   volume left until a change [m3]; empty where nothing wears by volume
 * @param untilChangeS    time left until a change [s]; empty where nothing wears
 */
public record StepResult(TrainStep step, WaterState entering, WaterState leaving, List<Condition> conditions,
        Map<PathogenGroup, Credit> credits, LogReductions earned, LogReductions cumulative, List<String> notes,
        double cleanHeadLossM, double fouledHeadLossM, OptionalDouble untilChangeM3, OptionalDouble untilChangeS) {
    public StepResult {
        conditions = Checks.list("conditions", conditions);
        credits = Checks.map("credits", credits);
        notes = Checks.list("notes", notes);
    }

    /** Conditions that do not hold. */
    public List<Condition> failed() {
        return conditions.stream().filter(condition -> !condition.met()).toList();
    }

    /** True where the step would earn something if all its conditions held all the time. */
    public boolean isBarrier() {
        return credits.values().stream().anyMatch(credit -> credit.log() > 0)
                || step.treatment() instanceof Chlorination;
    }

    /** True where a barrier earns less than it could: a condition fails, or it is out at times. */
    public boolean interrupted() {
        return isBarrier() && (!failed().isEmpty() || step.running().outageRatio() > 0);
    }
}
