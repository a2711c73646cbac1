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
import org.roofspring.quantity.Units;
import org.roofspring.site.PumpData;

/** One pump on the line it is meant for: where it works by design and over the range, and what speaks against it. */
final class CandidateReview {
    /** Shares of the best-efficiency flow within which a pump is usually run; common practice, no source. */
    private static final double LEAST_OF_BEST = 0.7;
    private static final double MOST_OF_BEST = 1.2;

    /**
     * What is asked of a pump apart from its line.
     *
     * @param yearlyM3     lifted in a year [m3]
     * @param busiestDayM3 lifted on the busiest day [m3]
     * @param switchM3     between the switch heights of the tank; absent where not known
     * @param suppliedS    time with power in a mean day [s]
     * @param energyPrice  price of energy, or null
     */
    record Service(double yearlyM3, double busiestDayM3, OptionalDouble switchM3, double suppliedS, Quantity energyPrice) {
    }

    private final PumpData data;
    private final List<StateDuty> duties;
    private final Service service;
    private final Optional<DutyPoint> design;
    private final List<DutyPoint> working = new ArrayList<>();
    private final List<StateDuty> failures = new ArrayList<>();

    /**
     * @param data    in the site
     * @param range   over all states, the design state first
     * @param service what is asked of it
     */
    CandidateReview(PumpData data, WorkingRange range, Service service) {
        this.data = data;
        this.duties = range.duties();
        this.service = service;
        this.design = duties.get(0).outcome().working();
        for (StateDuty duty : duties) {
            duty.outcome().working().ifPresentOrElse(working::add, () -> failures.add(duty));
        }
    }

    PumpData data() {
        return data;
    }

    /** Where it works in the design state. */
    Optional<DutyPoint> design() {
        return design;
    }

    /** Why it does not work in the design state, or what there is to mind about its duty point. */
    String designReason() {
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
    Optional<Band> flowM3PerS() {
        return band(duty -> OptionalDouble.of(duty.flowM3PerS()));
    }

    Optional<Quantity> yearlyEnergy() {
        return design().map(DutyPoint::specificEnergyJPerM3).filter(OptionalDouble::isPresent)
                .map(energy -> Quantity.ofSi(PumpOperation.energyJ(service.yearlyM3(), energy.getAsDouble()), Units.KWH));
    }

    Optional<Quantity> yearlyCost() {
        return service.energyPrice() == null ? Optional.empty()
                : yearlyEnergy().map(energy -> Quantity.of(energy.value() * service.energyPrice().value(), Units.MONEY));
    }

    Optional<Quantity> timeToFill() {
        return design().isEmpty() || service.switchM3().isEmpty() ? Optional.empty()
                : Optional.of(Quantity.ofSi(service.switchM3().getAsDouble() / design().get().flowM3PerS(), Units.MIN));
    }

    Optional<Quantity> startsPerDay() {
        return service.switchM3().isEmpty() ? Optional.empty()
                : Optional.of(Quantity.of(service.busiestDayM3() / service.switchM3().getAsDouble(), Units.PER_D));
    }

    /** NPSH available over required in the worst state [m]. */
    OptionalDouble worstNpshMarginM() {
        return band(DutyPoint::npshMarginM).map(band -> OptionalDouble.of(band.low())).orElse(OptionalDouble.empty());
    }

    /** Good where nothing speaks against it, bad where it does not do the work. */
    Verdict verdict() {
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
                : new Verdict(Level.GOOD, "Suited", List.of("works in all " + duties.size() + " states"));
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
        OptionalDouble worst = worstNpshMarginM();
        if (worst.isEmpty()) {
            doubts.add("NPSH required was not measured at its flow, so its suction is not checked");
        } else if (worst.getAsDouble() < 0) {
            bad.add("it cavitates: on the worst day NPSH available is " + shown(Quantity.of(-worst.getAsDouble(), Units.M))
                    + " short of what it requires");
        } else if (working.stream().anyMatch(CandidateReview::isThin)) {
            doubts.add("its NPSH margin of " + shown(Quantity.of(worst.getAsDouble(), Units.M)) + " on the worst day is thin");
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
        if (data.getRatedPower() != null && shaftW > data.getRatedPower().si()) {
            doubts.add("it asks " + shown(Quantity.of(shaftW, Units.W)) + " of a motor rated at "
                    + shown(data.getRatedPower().as(Units.W)));
        }
    }

    private void running(List<String> bad, List<String> doubts) {
        double flowM3PerS = design().orElseThrow().flowM3PerS();
        double neededS = service.busiestDayM3() / flowM3PerS;
        if (neededS > service.suppliedS()) {
            bad.add("on the busiest day it must run " + shown(Quantity.ofSi(neededS, Units.H)) + ", but there is power for only "
                    + shown(Quantity.ofSi(service.suppliedS(), Units.H)));
        }
        if (data.getMaxStarts() != null && service.switchM3().isPresent()) {
            double mostPerS = PumpOperation.mostStartsPerS(flowM3PerS, service.switchM3().getAsDouble());
            if (mostPerS > data.getMaxStarts().si()) {
                doubts.add("it can start " + shown(Quantity.ofSi(mostPerS, Units.PER_H)) + ", over the "
                        + shown(data.getMaxStarts().as(Units.PER_H)) + " that its motor bears");
            }
        }
    }

    private static String shown(Quantity quantity) {
        return QuantityFormat.metric().format(quantity);
    }
}
