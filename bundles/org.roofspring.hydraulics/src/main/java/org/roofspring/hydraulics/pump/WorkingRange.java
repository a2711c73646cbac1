package org.roofspring.hydraulics.pump;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import java.util.stream.Stream;

import org.roofspring.hydraulics.Band;
import org.roofspring.hydraulics.internal.Require;

/**
 * Where a pump works over the range of levels, temperature, air pressure and age of a line: a band, not one point.
 *
 * @param duties one for each state, in the order of the states, at least one
 */
public record WorkingRange(List<StateDuty> duties) {

    /** A state and what the pump does in it. */
    public record StateDuty(SystemState state, DutyOutcome outcome) {
    }

    public WorkingRange {
        duties = Require.list("duties", duties);
        Require.within("number of states", duties.size(), 1, 1_000_000);
    }

    /** Solves the duty in each state. */
    public static WorkingRange of(PumpSet pumps, PumpedLine line, List<SystemState> states) {
        return ofAll(List.of(Require.present("pumps", pumps)), line, states, () -> false).get(0);
    }

    /**
     * The ranges of many pumps on one line, in their order: what the line asks in a state is prepared once for all.
     *
     * @param cancelled polled for each pump; when true the call ends with a CancellationException
     */
    public static List<WorkingRange> ofAll(List<PumpSet> candidates, PumpedLine line, List<SystemState> states,
            BooleanSupplier cancelled) {
        Require.present("pumped line", line);
        Require.present("cancelled", cancelled);
        List<SystemState> all = Require.list("states", states);
        List<SystemCurve> curves = all.stream().map(line::at).toList();
        List<WorkingRange> ranges = new ArrayList<>();
        for (PumpSet pumps : Require.list("candidates", candidates)) {
            if (cancelled.getAsBoolean()) {
                throw new CancellationException("the working ranges were not solved to their end");
            }
            List<StateDuty> duties = new ArrayList<>(all.size());
            for (int i = 0; i < all.size(); i++) {
                duties.add(new StateDuty(all.get(i), DutySolver.solve(pumps, curves.get(i))));
            }
            ranges.add(new WorkingRange(duties));
        }
        return ranges;
    }

    /** Whether the pump has a working point in every state. */
    public boolean worksThroughout() {
        return duties.stream().allMatch(duty -> duty.outcome.working().isPresent());
    }

    /** The states without a working point, each with its reason. */
    public List<StateDuty> failures() {
        return duties.stream().filter(duty -> duty.outcome.working().isEmpty()).toList();
    }

    /** Span of the working flows [m3/s]; absent where the pump works in no state. */
    public Optional<Band> flowM3PerS() {
        return Band.over(working().mapToDouble(DutyPoint::flowM3PerS).toArray());
    }

    /** Span of the working heads [m]. */
    public Optional<Band> headM() {
        return Band.over(working().mapToDouble(DutyPoint::headM).toArray());
    }

    /** Span of the efficiency, where measured. */
    public Optional<Band> efficiency() {
        return known(DutyPoint::efficiency);
    }

    /** Span of the margin of NPSH [m], where NPSH required was measured. */
    public Optional<Band> npshMarginM() {
        return known(DutyPoint::npshMarginM);
    }

    /** Span of the power taken by the motors [W], where known. */
    public Optional<Band> inputPowerW() {
        return known(DutyPoint::inputPowerW);
    }

    /** Span of the energy for each volume [J/m3], where known. */
    public Optional<Band> specificEnergyJPerM3() {
        return known(DutyPoint::specificEnergyJPerM3);
    }

    /** Span of the head that a line needs at a flow [m] over some states: the band to draw. */
    public static Band systemHeadM(PumpedLine line, List<SystemState> states, double flowM3PerS) {
        Require.present("pumped line", line);
        return Band.over(Require.list("states", states).stream()
                .mapToDouble(state -> line.at(state).headM(flowM3PerS)).toArray())
                .orElseThrow(() -> new IllegalArgumentException("at least one state must be given, not none"));
    }

    private Stream<DutyPoint> working() {
        return duties.stream().flatMap(duty -> duty.outcome.working().stream());
    }

    private Optional<Band> known(Function<DutyPoint, OptionalDouble> value) {
        return Band.over(working().map(value).filter(OptionalDouble::isPresent).mapToDouble(OptionalDouble::getAsDouble)
                .toArray());
    }
}
