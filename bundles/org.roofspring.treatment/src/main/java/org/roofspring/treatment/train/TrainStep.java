package org.roofspring.treatment.train;

import org.roofspring.treatment.Removal;
import org.roofspring.treatment.internal.Checks;

/**
 * A step of a train.
 *
 * @param id        unique in the train
 * @param name      shown to the user
 * @param treatment what it does
 * @param removal   editable ranges of what it is credited with
 * @param service   what it needs and wears
 * @param running   how it is really run
 */
public record TrainStep(String id, String name, Treatment treatment, Removal removal, StepService service,
        Running running) {
    public TrainStep {
        Checks.text("id", id);
        Checks.text("name", name);
        Checks.present("treatment", treatment);
        Checks.present("removal", removal);
        Checks.present("service", service);
        Checks.present("running", running);
    }

    public TrainStep withRunning(Running other) {
        return new TrainStep(id, name, treatment, removal, service, other);
    }

    public TrainStep withRemoval(Removal other) {
        return new TrainStep(id, name, treatment, other, service, running);
    }

    public TrainStep withService(StepService other) {
        return new TrainStep(id, name, treatment, removal, other, running);
    }

    public TrainStep withId(String other) {
        return new TrainStep(other, name, treatment, removal, service, running);
    }
}
