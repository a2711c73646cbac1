package org.roofspring.treatment.train;

import java.util.OptionalDouble;

import org.roofspring.treatment.internal.Checks;

/**
 * The water that is asked of a train.
 *
 * @param peakFlowM3PerS    through the pipe, 0 to 1 [m3/s]
 * @param dailyVolumeM3     0 to 1e6 [m3]
 * @param storedTreatedM3   water kept after the last step, 0 to 1e6 [m3]
 * @param availableHeadM    before the first step at the peak flow, -1000 to 1000 [m]; empty where unknown
 */
public record TrainFlow(double peakFlowM3PerS, double dailyVolumeM3, double storedTreatedM3,
        OptionalDouble availableHeadM) {
    public TrainFlow {
        Checks.within("peak flow (peakFlowM3PerS)", peakFlowM3PerS, 0, 1, "m3/s");
        if (dailyVolumeM3 != 0) {
            Checks.positive("daily volume (dailyVolumeM3)", dailyVolumeM3, 1e6, "m3");
        }
        Checks.within("treated store (storedTreatedM3)", storedTreatedM3, 0, 1e6, "m3");
        Checks.present("available head (availableHeadM)", availableHeadM)
                .ifPresent(head -> Checks.within("available head (availableHeadM)", head, -1000, 1000, "m"));
    }
}
