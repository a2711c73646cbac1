package org.roofspring.calc.engine;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.roofspring.calc.Caution;
import org.roofspring.calc.Outcome;

/**
 * What came out of one calculation for one revision of a site.
 *
 * @param descriptor  which calculation
 * @param status      how it ended
 * @param outcome     present for {@link Status#COMPLETED} and {@link Status#NO_ANSWER}
 * @param reasons     why there is no answer; empty when completed
 * @param fault       present for {@link Status#FAULT}
 * @param fingerprint of everything that was read
 * @param revision    of the site that it was computed from
 */
public record CalculationResult(CalculationDescriptor descriptor, Status status, Outcome outcome, List<String> reasons,
        PluginFault fault, String fingerprint, long revision) {

    /** How a calculation ended. */
    public enum Status {
        COMPLETED, NO_ANSWER, NOT_APPLICABLE, FAULT
    }

    public CalculationResult {
        Objects.requireNonNull(descriptor);
        Objects.requireNonNull(status);
        reasons = List.copyOf(reasons);
        Objects.requireNonNull(fingerprint);
    }

    static CalculationResult of(CalculationDescriptor descriptor, Outcome outcome, String fingerprint, long revision) {
        return switch (outcome) {
            case Outcome.Completed completed -> new CalculationResult(descriptor, Status.COMPLETED, completed, List.of(),
                    null, fingerprint, revision);
            case Outcome.NotComputable none -> new CalculationResult(descriptor, Status.NO_ANSWER, none,
                    none.problems().stream().map(Outcome.Problem::text).toList(), null, fingerprint, revision);
        };
    }

    static CalculationResult notApplicable(CalculationDescriptor descriptor, List<String> reasons, String fingerprint,
            long revision) {
        return new CalculationResult(descriptor, Status.NOT_APPLICABLE, null, reasons, null, fingerprint, revision);
    }

    static CalculationResult fault(CalculationDescriptor descriptor, PluginFault fault, long revision) {
        return new CalculationResult(descriptor, Status.FAULT, null, List.of(fault.text()), fault, "", revision);
    }

    CalculationResult at(long newRevision) {
        return new CalculationResult(descriptor, status, outcome, reasons, fault, fingerprint, newRevision);
    }

    /** The answer, if there is one. */
    public Optional<Outcome.Completed> completed() {
        return outcome instanceof Outcome.Completed completed ? Optional.of(completed) : Optional.empty();
    }

    /** Cautions, which hold even without an answer. */
    public List<Caution> cautions() {
        return outcome == null ? List.of() : outcome.cautions();
    }
}
