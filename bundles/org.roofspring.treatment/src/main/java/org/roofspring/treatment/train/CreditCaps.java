package org.roofspring.treatment.train;

import org.roofspring.treatment.Source;
import org.roofspring.treatment.internal.Checks;

/**
 * Caps past which no credit is added, editable.
 *
 * @param perStep  for one step and group, above 0 to 20 [log]
 * @param perTrain for a whole train and group, {@code perStep} to 20 [log]
 * @param source   of the caps
 */
public record CreditCaps(double perStep, double perTrain, Source source) {
    public static final CreditCaps DEFAULT = new CreditCaps(6, 9,
            Source.assumed("no household step is credited with more than 6 log, no train with more than 9 log"));

    public CreditCaps {
        Checks.positive("cap of a step (perStep)", perStep, 20, "log");
        Checks.within("cap of a train (perTrain)", perTrain, perStep, 20, "log");
        Checks.present("source", source);
    }
}
