package org.roofspring.calc.standard.water;

import java.util.List;
import java.util.function.Function;

import org.roofspring.hydraulics.HeadLoss;
import org.roofspring.quantity.Quantity;
import org.roofspring.site.StepKind;
import org.roofspring.site.TreatmentStep;
import org.roofspring.site.TreatmentTrain;

/** The head that the steps of a treatment train take, clean and when they are due for a change. */
public final class FilterLosses {
    private FilterLosses() {
    }

    /** Steps that are in the pipe: none of a train that treats batches. */
    public static List<TreatmentStep> inPipe(TreatmentTrain train) {
        return train.isBatch() ? List.of() : train.getSteps().stream().filter(TreatmentStep::isActive).toList();
    }

    /** Steps in the pipe whose loss is not given; it is taken as nil. */
    public static List<TreatmentStep> withoutLoss(TreatmentTrain train) {
        return inPipe(train).stream()
                .filter(step -> reference(train, step) == null || step.getHeadLossClean() == null).toList();
    }

    /** All steps clean. */
    public static HeadLoss clean(TreatmentTrain train) {
        return sum(train, TreatmentStep::getHeadLossClean);
    }

    /** All steps due for cleaning or change; one that has no loss for that stays as clean. */
    public static HeadLoss fouled(TreatmentTrain train) {
        return sum(train, FilterLosses::whenFouled);
    }

    private static Quantity whenFouled(TreatmentStep step) {
        Quantity clean = step.getHeadLossClean();
        Quantity fouled = step.getHeadLossFouled();
        return fouled == null || clean != null && fouled.si() < clean.si() ? clean : fouled;
    }

    private static HeadLoss sum(TreatmentTrain train, Function<TreatmentStep, Quantity> lossOf) {
        HeadLoss all = HeadLoss.none();
        for (TreatmentStep step : inPipe(train)) {
            Quantity loss = lossOf.apply(step);
            Quantity reference = reference(train, step);
            if (loss != null && reference != null) {
                // a pressure head is entered in metres of water at 1000 kg/m3
                double headM = loss.si() / 9806.65;
                all = all.then(HeadLoss.rated(Math.max(1e-9, reference.si()), headM, exponent(step.getKind())));
            }
        }
        return all;
    }

    private static Quantity reference(TreatmentTrain train, TreatmentStep step) {
        return step.getReferenceFlow() != null ? step.getReferenceFlow() : train.getDesignFlow();
    }

    /** Power of the flow that a loss goes with: 1 through fine beds, 2 through openings; common practice, no source. */
    static double exponent(StepKind kind) {
        return switch (kind) {
            case CERAMIC, CERAMIC_SILVER, SLOW_SAND, RAPID_SAND, MICROFILTRATION, ULTRAFILTRATION, REVERSE_OSMOSIS -> 1;
            case SEDIMENT_CARTRIDGE, GRANULAR_CARBON, CARBON_BLOCK, CALCITE_CONTACT -> 1.5;
            case MESH_SCREEN, SETTLING, UV_LAMP, BOILING, SOLAR, CHLORINATION, SAFE_STORAGE, OTHER, UNSTATED -> 2;
        };
    }
}
