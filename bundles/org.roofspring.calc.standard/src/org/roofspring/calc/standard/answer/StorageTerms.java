package org.roofspring.calc.standard.answer;

import org.roofspring.calc.Source;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.storage.SizingAnswer;

/** Sources and sentences that the calculations and commands of storage share. */
public final class StorageTerms {
    /** The daily balance. */
    public static final Source MODEL = Source.published("Fewkes and Butler, Simulating the performance of rainwater "
            + "collection and reuse systems using behavioural models, Building Services Engineering Research and "
            + "Technology, 2000; after Jenkins et al., Feasibility of rainwater collection systems in California, "
            + "1978");
    /** The mass-curve volume. */
    public static final Source SEQUENT_PEAK = Source.published(
            "Fair, Geyer and Okun, Water and Wastewater Engineering, mass-curve method");

    private StorageTerms() {
    }

    /** Why no tank reaches a target, in a sentence. */
    public static String reason(SizingAnswer.NoAnswer none) {
        return switch (none.reason()) {
            case DEMAND_ABOVE_INFLOW -> "No tank reaches the target: the demand over the record, "
                    + Quantity.of(none.demandM3(), Units.M3) + ", is more than the inflow, "
                    + Quantity.of(none.inflowM3(), Units.M3) + "; more roof or less demand is needed.";
            case NO_DEMAND -> "Nothing is demanded, so no reliability can be reached or missed.";
            case TANK_BEYOND_RANGE -> "The tank would be larger than can be computed with (2 000 000 m3).";
        };
    }
}
