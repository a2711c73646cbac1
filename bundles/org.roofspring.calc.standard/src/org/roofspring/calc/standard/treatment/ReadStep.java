package org.roofspring.calc.standard.treatment;

import java.util.List;
import java.util.Optional;

import org.roofspring.site.TreatmentStep;
import org.roofspring.treatment.train.HeadLoss;
import org.roofspring.treatment.train.TrainStep;
import org.roofspring.treatment.train.UpkeepTask;

/**
 * A step of the site in the terms of the kernel.
 *
 * @param model      the step of the site
 * @param name       as people call it
 * @param kernel     the same in the kernel; empty for a step that treats nothing, such as a storage vessel
 * @param headLoss   by flow
 * @param tasks      upkeep
 * @param conditions what has to hold as well for what it is credited with, sentences
 * @param assumed    values that the site does not give
 */
record ReadStep(TreatmentStep model, String name, Optional<TrainStep> kernel, HeadLoss headLoss,
        List<UpkeepTask> tasks, List<String> conditions, List<Assumed> assumed) {
    ReadStep {
        tasks = List.copyOf(tasks);
        conditions = List.copyOf(conditions);
        assumed = List.copyOf(assumed);
    }
}
