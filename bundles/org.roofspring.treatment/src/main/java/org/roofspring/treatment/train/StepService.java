package org.roofspring.treatment.train;

import java.util.List;
import java.util.OptionalDouble;

import org.roofspring.treatment.Source;
import org.roofspring.treatment.internal.Checks;

/**
 * What a step needs and wears: flow, head, life, upkeep. Limits that do not apply are empty.
 *
 * @param flowLimitM3PerS     largest flow at which it works, above 0 to 1 [m3/s]
 * @param dailyLimitM3        largest volume in a day, above 0 to 1e6 [m3]
 * @param headLoss            by flow
 * @param neededHeadM         least head before the step, 0 to 1000 [m]
 * @param lifeVolumeM3        volume until it is changed, above 0 to 1e9 [m3]
 * @param lifeS               time until it is changed, above 0 to 3.2e9 [s]
 * @param dirtCapacityKg      dry dirt it holds, above 0 to 1e6 [kg]
 * @param turbidityLeftRatio  share of the turbidity that passes, 0 to 1
 * @param tasks               upkeep
 * @param source              of these figures
 */
public record StepService(OptionalDouble flowLimitM3PerS, OptionalDouble dailyLimitM3, HeadLoss headLoss,
        OptionalDouble neededHeadM, OptionalDouble lifeVolumeM3, OptionalDouble lifeS, OptionalDouble dirtCapacityKg,
        double turbidityLeftRatio, List<UpkeepTask> tasks, Source source) {

    /**
     * Suspended matter for each NTU [kg/m3]: about 1 mg/L, which varies several-fold with the particles.
     */
    public static final double SOLIDS_KG_PER_M3_NTU = 1e-3;

    public StepService {
        optional("flow limit (flowLimitM3PerS)", flowLimitM3PerS, 1, "m3/s");
        optional("daily limit (dailyLimitM3)", dailyLimitM3, 1e6, "m3");
        Checks.present("headLoss", headLoss);
        optional("needed head (neededHeadM)", neededHeadM, 1000, "m");
        optional("life in volume (lifeVolumeM3)", lifeVolumeM3, 1e9, "m3");
        optional("life in time (lifeS)", lifeS, 3.2e9, "s");
        optional("dirt capacity (dirtCapacityKg)", dirtCapacityKg, 1e6, "kg");
        Checks.within("share of turbidity left (turbidityLeftRatio)", turbidityLeftRatio, 0, 1, "");
        tasks = Checks.list("tasks", tasks);
        Checks.present("source", source);
    }

    private static void optional(String name, OptionalDouble value, double high, String unit) {
        Checks.present(name, value).ifPresent(given -> Checks.positive(name, given, high, unit));
    }

    /**
     * Volume until a change, when new: the least of the rated volume and what the dirt capacity allows.
     *
     * @param turbidityNtu of the water that enters, 0 to 10,000 [NTU]
     * @return [m3]; empty where neither limits it
     */
    public OptionalDouble volumeUntilChangeM3(double turbidityNtu) {
        Checks.within("turbidity (turbidityNtu)", turbidityNtu, 0, 10_000, "NTU");
        double heldKgPerM3 = turbidityNtu * (1 - turbidityLeftRatio) * SOLIDS_KG_PER_M3_NTU;
        double byDirt = dirtCapacityKg.isPresent() && heldKgPerM3 > 0
                ? dirtCapacityKg.getAsDouble() / heldKgPerM3 : Double.POSITIVE_INFINITY;
        double volume = Math.min(byDirt, lifeVolumeM3.orElse(Double.POSITIVE_INFINITY));
        return Double.isInfinite(volume) ? OptionalDouble.empty() : OptionalDouble.of(volume);
    }
}
