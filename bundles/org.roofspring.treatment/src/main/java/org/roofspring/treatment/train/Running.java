package org.roofspring.treatment.train;

import java.util.OptionalDouble;

import org.roofspring.treatment.internal.Checks;

/**
 * How a step is really run.
 *
 * @param outageRatio      share of the time in which water passes untreated (no power, bypassed, under repair), 0 to 1
 * @param passedVolumeM3   since the last change, 0 to 1e9 [m3]
 * @param inServiceS       since the last change, 0 to 3.2e9 [s]
 * @param turbidityNtu     measured where the water enters, 0 to 10,000 [NTU]; empty to take what the steps before leave
 */
public record Running(double outageRatio, double passedVolumeM3, double inServiceS, OptionalDouble turbidityNtu) {
    /** New, and never out. */
    public static final Running NEW = new Running(0, 0, 0, OptionalDouble.empty());

    public Running {
        Checks.within("share of time out (outageRatio)", outageRatio, 0, 1, "");
        Checks.within("passed volume (passedVolumeM3)", passedVolumeM3, 0, 1e9, "m3");
        Checks.within("time in service (inServiceS)", inServiceS, 0, 3.2e9, "s");
        Checks.present("measured turbidity (turbidityNtu)", turbidityNtu)
                .ifPresent(ntu -> Checks.within("measured turbidity (turbidityNtu)", ntu, 0, 10_000, "NTU"));
    }

    /** New, and out for a share of the time. */
    public static Running out(double outageRatio) {
        return new Running(outageRatio, 0, 0, OptionalDouble.empty());
    }
}
