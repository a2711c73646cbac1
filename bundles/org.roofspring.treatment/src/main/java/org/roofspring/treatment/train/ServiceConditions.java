package org.roofspring.treatment.train;

import java.util.ArrayList;
import java.util.List;

import org.roofspring.treatment.internal.Checks;

/** Conditions from a step's flow, head and life. */
final class ServiceConditions {
    private ServiceConditions() {
    }

    static List<Condition> of(TrainStep step, WaterState entering, TrainFlow flow, double headLostBeforeM) {
        StepService service = step.service();
        List<Condition> conditions = new ArrayList<>();
        service.flowLimitM3PerS().ifPresent(limit -> conditions.add(Condition.of("service.flow",
                flow.peakFlowM3PerS() <= limit * (1 + 1e-9), "The flow is at most " + litresAMinute(limit),
                litresAMinute(flow.peakFlowM3PerS()))));
        service.dailyLimitM3().ifPresent(limit -> conditions.add(Condition.of("service.day",
                flow.dailyVolumeM3() <= limit * (1 + 1e-9), "It makes at most " + litres(limit) + " a day",
                litres(flow.dailyVolumeM3()) + " asked for")));
        service.volumeUntilChangeM3(entering.turbidityNtu()).ifPresent(volume -> conditions.add(Condition.of(
                "service.volume", step.running().passedVolumeM3() <= volume,
                "It is changed after " + litres(volume), litres(step.running().passedVolumeM3()) + " passed")));
        service.lifeS().ifPresent(life -> conditions.add(Condition.of("service.age",
                step.running().inServiceS() <= life, "It is changed after " + days(life),
                days(step.running().inServiceS()) + " in service")));
        if (service.neededHeadM().isPresent() && flow.availableHeadM().isPresent()) {
            double needed = service.neededHeadM().getAsDouble();
            double head = flow.availableHeadM().getAsDouble() - headLostBeforeM;
            conditions.add(Condition.of("service.head", head >= needed,
                    "It has at least " + Checks.shown(needed) + " m of head before it", Checks.shown(head) + " m"));
        }
        return conditions;
    }

    private static String litresAMinute(double flowM3PerS) {
        return Checks.shown(flowM3PerS * 60_000) + " L/min";
    }

    private static String litres(double volumeM3) {
        return Checks.shown(volumeM3 * 1000) + " L";
    }

    private static String days(double durationS) {
        return Checks.shown(durationS / 86_400) + " days";
    }
}
