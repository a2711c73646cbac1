package org.roofspring.calc.standard.pumping;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

import org.roofspring.calc.FindingValue.Verdict;
import org.roofspring.calc.FindingValue.Verdict.Level;
import org.roofspring.hydraulics.Band;
import org.roofspring.hydraulics.pump.DutyOutcome;
import org.roofspring.hydraulics.pump.DutyPoint;
import org.roofspring.hydraulics.pump.NpshMargin;
import org.roofspring.hydraulics.pump.PumpOperation;
import org.roofspring.hydraulics.pump.WorkingRange;
import org.roofspring.hydraulics.pump.WorkingRange.StateDuty;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.QuantityFormat;
import org.roofspring.quantity.Unit;
import org.roofspring.quantity.Units;

/** One pump on the line it is meant for: where it works by design and over the range, and what speaks against it. */
public final class CandidateReview {
    /** Shares of the best-efficiency flow within which a pump is usually run; common practice, no source. */
    private static final double LEAST_OF_BEST = 0.7;
    private static final double MOST_OF_BEST = 1.2;

    /**
     * What a motor bears.
     *
     * @param ratedPower on its plate, or null where not known
     * @param maxStarts  in a time, or null where not known
     */
    public record Limits(Quantity ratedPower, Quantity maxStarts) {
        public static final Limits UNKNOWN = new Limits(null, null);
    }

    /**
     * What is asked of a pump apart from its line.
     *
     * @param yearlyM3     lifted in a year [m3]
     * @param busiestDayM3 lifted on the busiest day [m3]
     * @param switchM3     between the switch heights of the tank; absent where not known
     * @param suppliedS    time with power in a mean day [s]
     * @param energyPrice  price of energy, or null
     */
    public record Service(double yearlyM3, double busiestDayM3, OptionalDouble switchM3, double suppliedS,
            Quantity energyPrice) {
        /** Nothing is known but the line. */
        public static final Service UNKNOWN = new Service(0, 0, OptionalDouble.empty(), 86_400, null);
    }

    private final Limits limits;
    private final List<StateDuty> duties;
    private final Service service;
    private final Optional<DutyPoint> design;
    private final List<DutyPoint> working = new ArrayList<>();
    private final List<StateDuty> failures = new ArrayList<>();

    /**
     * @param limits  of its motor
     * @param range   over all states, the design state first
     * @param service what is asked of it
     */
    public CandidateReview(Limits limits, WorkingRange range, Service service) {
        this.limits = limits;
        this.duties = range.duties();
        this.service = service;
        this.design = duties.get(0).outcome().working();
        for (StateDuty duty : duties) {
            duty.outcome().working().ifPresentOrElse(working::add, () -> failures.add(duty));
        }
    }

    /** Where it works in the design state. */
    public Optional<DutyPoint> design() {
        return design;
    }

    /** Why it does not work in the design state, or what there is to mind about its duty point. */
    public String designReason() {
        return duties.get(0).outcome().reason();
    }

    /** Span of a value over the states in which it works and the value is known. */
    Optional<Band> band(Function<DutyPoint, OptionalDouble> value) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (DutyPoint duty : working) {
            OptionalDouble known = value.apply(duty);
            if (known.isPresent()) {
                low = Math.min(low, known.getAsDouble());
                high = Math.max(high, known.getAsDouble());
            }
        }
        return low <= high ? Optional.of(new Band(low, high)) : Optional.empty();
    }

    /** Span of the flow [m3/s]. */
    public Optional<Band> flowM3PerS() {
        return band(duty -> OptionalDouble.of(duty.flowM3PerS()));
    }

    /** Flow in the design state. */
    public Optional<Quantity> flow() {
        return design.map(duty -> Quantity.ofSi(duty.flowM3PerS(), Units.L_PER_S));
    }

    /** Head in the design state. */
    public Optional<Quantity> head() {
        return design.map(duty -> Quantity.of(duty.headM(), Units.M));
    }

    /** Efficiency in the design state, where measured. */
    public Optional<Quantity> efficiency() {
        return known(DutyPoint::efficiency, 0, Units.PERCENT);
    }

    /** How far the flow is from that of the best efficiency, as a share of it. */
    public Optional<Quantity> offBest() {
        return known(DutyPoint::flowOverBest, -1, Units.PERCENT);
    }

    /** Power taken by the motor, else at the shaft. */
    public Optional<Quantity> power() {
        return known(duty -> duty.inputPowerW().isPresent() ? duty.inputPowerW() : duty.shaftPowerW(), 0, Units.W);
    }

    /** Energy for each volume, at the motor or else at the shaft. */
    public Optional<Quantity> specificEnergy() {
        return known(DutyPoint::specificEnergyJPerM3, 0, Units.WH_PER_M3);
    }

    private Optional<Quantity> known(Function<DutyPoint, OptionalDouble> value, double shift, Unit unit) {
        return design.map(value).filter(OptionalDouble::isPresent)
                .map(known -> Quantity.ofSi(known.getAsDouble() + shift, unit));
    }

    /** Energy for the volume of a year. */
    public Optional<Quantity> yearlyEnergy() {
        return specificEnergy()
                .map(energy -> Quantity.ofSi(PumpOperation.energyJ(service.yearlyM3(), energy.si()), Units.KWH));
    }

    public Optional<Quantity> yearlyCost() {
        return service.energyPrice() == null ? Optional.empty()
                : yearlyEnergy().map(energy -> Quantity.of(energy.value() * service.energyPrice().value(), Units.MONEY));
    }

    public Optional<Quantity> timeToFill() {
        return design().isEmpty() || service.switchM3().isEmpty() ? Optional.empty()
                : Optional.of(Quantity.ofSi(service.switchM3().getAsDouble() / design().get().flowM3PerS(), Units.MIN));
    }

    public Optional<Quantity> startsPerDay() {
        return service.switchM3().isEmpty() ? Optional.empty()
                : Optional.of(Quantity.of(service.busiestDayM3() / service.switchM3().getAsDouble(), Units.PER_D));
    }

    /** Least NPSH margin of all states, where NPSH required was measured. */
    public Optional<Quantity> worstNpshMargin() {
        return band(DutyPoint::npshMarginM).map(margin -> Quantity.of(margin.low(), Units.M));
    }

    /** Good where nothing speaks against it, bad where it does not do the work. */
    public Verdict verdict() {
        List<String> bad = new ArrayList<>();
        List<String> doubts = new ArrayList<>();
        duty(bad, doubts);
        if (bad.isEmpty()) {
            suction(bad, doubts);
            best(doubts);
            motor(doubts);
            running(bad, doubts);
        }
        List<String> reasons = new ArrayList<>(bad);
        reasons.addAll(doubts);
        return !bad.isEmpty() ? new Verdict(Level.BAD, "Not suited", reasons)
                : !doubts.isEmpty() ? new Verdict(Level.CONDITIONAL, "With reserve", reasons)
                : new Verdict(Level.GOOD, "Suited", List.of(duties.size() > 1
                ? "works in all " + duties.size() + " states" : "works on this line"));
    }

    private void duty(List<String> bad, List<String> doubts) {
        if (design.isEmpty()) {
            bad.add(designReason());
            return;
        }
        if (!designReason().isEmpty()) {
            doubts.add(designReason());
        }
        // a pump that runs out still lifts water, only how much was not measured
        addFailures(failures.stream().filter(duty -> duty.outcome() instanceof DutyOutcome.RunsOut).toList(), doubts);
        addFailures(failures.stream().filter(duty -> !(duty.outcome() instanceof DutyOutcome.RunsOut)).toList(), bad);
    }

    private void addFailures(List<StateDuty> some, List<String> reasons) {
        if (!some.isEmpty()) {
            reasons.add("in " + some.size() + " of " + duties.size() + " states of level, water and age it has no duty"
                    + " point: " + some.get(0).outcome().reason());
        }
    }

    private void suction(List<String> bad, List<String> doubts) {
        Optional<Quantity> worst = worstNpshMargin();
        String when = duties.size() > 1 ? " in the worst state" : "";
        if (worst.isEmpty()) {
            doubts.add("NPSH required was not measured at its flow, so its suction is not checked");
        } else if (worst.get().value() < 0) {
            bad.add("it cavitates: NPSH available is " + shown(Quantity.of(-worst.get().value(), Units.M))
                    + " short of what it requires" + when);
        } else if (working.stream().anyMatch(CandidateReview::isThin)) {
            doubts.add("its NPSH margin of " + shown(worst.get()) + when + " is thin");
        }
    }

    private static boolean isThin(DutyPoint duty) {
        return duty.npshRequiredM().isPresent()
                && duty.npshAvailableM() < NpshMargin.USUAL.neededM(duty.npshRequiredM().getAsDouble());
    }

    private void best(List<String> doubts) {
        OptionalDouble share = design().orElseThrow().flowOverBest();
        if (share.isEmpty()) {
            doubts.add("its efficiency was not measured");
        } else if (share.getAsDouble() < LEAST_OF_BEST || share.getAsDouble() > MOST_OF_BEST) {
            doubts.add("it runs at " + shown(Quantity.ofSi(share.getAsDouble(), Units.PERCENT))
                    + " of its best-efficiency flow, where 70 % to 120 % is usual");
        }
    }

    private void motor(List<String> doubts) {
        double shaftW = band(DutyPoint::shaftPowerW).map(Band::high).orElse(0.0);
        if (limits.ratedPower() != null && shaftW > limits.ratedPower().si()) {
            doubts.add("it asks " + shown(Quantity.of(shaftW, Units.W)) + " of a motor rated at "
                    + shown(limits.ratedPower().as(Units.W)));
        }
    }

    private void running(List<String> bad, List<String> doubts) {
        double flowM3PerS = design().orElseThrow().flowM3PerS();
        double neededS = service.busiestDayM3() / flowM3PerS;
        if (neededS > service.suppliedS()) {
            bad.add("on the busiest day it must run " + shown(Quantity.ofSi(neededS, Units.H)) + ", but there is power for only "
                    + shown(Quantity.ofSi(service.suppliedS(), Units.H)));
        }
        if (limits.maxStarts() != null && service.switchM3().isPresent()) {
            double mostPerS = PumpOperation.mostStartsPerS(flowM3PerS, service.switchM3().getAsDouble());
            if (mostPerS > limits.maxStarts().si()) {
                doubts.add("it can start " + shown(Quantity.ofSi(mostPerS, Units.PER_H)) + ", over the "
                        + shown(limits.maxStarts().as(Units.PER_H)) + " that its motor bears");
            }
        }
    }

    private static String shown(Quantity quantity) {
        return QuantityFormat.metric().format(quantity);
    }
}
