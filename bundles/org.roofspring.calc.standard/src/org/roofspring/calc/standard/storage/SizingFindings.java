package org.roofspring.calc.standard.storage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.BooleanSupplier;

import org.roofspring.calc.Caution;
import org.roofspring.calc.Caution.Severity;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.FindingValue.Verdict;
import org.roofspring.calc.FindingValue.Verdict.Level;
import org.roofspring.calc.Source;
import org.roofspring.calc.Working.Input;
import org.roofspring.calc.Working.Step;
import org.roofspring.calc.standard.answer.AnswerBuilder;
import org.roofspring.calc.standard.answer.StorageTerms;
import org.roofspring.calc.standard.water.WholeSystem;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.storage.ReliabilityCurve;
import org.roofspring.storage.SequentPeak;
import org.roofspring.storage.SizingAnswer;
import org.roofspring.storage.SweepSettings;
import org.roofspring.storage.TankSizing;
import org.roofspring.storage.YieldRule;

/** How much tank the whole site needs, as one store: the volume for the target, the curve, the mass-curve volume. */
public final class SizingFindings {
    private static final int CURVE_POINTS = 41;
    private static final int PASSES = 2;

    private final WholeSystem system;
    private final WaterNeed need;
    private final SiteTarget target;
    private final BooleanSupplier cancelled;
    private final SizingAnswer sized;

    SizingFindings(WholeSystem system, WaterNeed need, SiteTarget target, BooleanSupplier cancelled) {
        this.system = system;
        this.need = need;
        this.target = target;
        this.cancelled = cancelled;
        sized = TankSizing.smallestTank(need.inflowM3(), need.demandM3(), YieldRule.YAS, target.timeReliability(),
                cancelled);
    }

    /** Usable volume that reaches the target [m3]; empty when none does. */
    OptionalDouble requiredM3() {
        return sized instanceof SizingAnswer.Sized answer ? OptionalDouble.of(answer.volumeM3())
                : OptionalDouble.empty();
    }

    /** Volume of all tanks that can be drawn now [m3]. */
    double presentM3() {
        return system.usableM3();
    }

    /** @param reached share of days met in full by the whole site as it stands; empty without demand */
    void add(AnswerBuilder answer, OptionalDouble reached) {
        double deadM3 = system.chain().stages().stream().flatMap(List::stream)
                .mapToDouble(tank -> tank.getCapacity().si()).sum() - presentM3();
        Quantity present = Quantity.of(presentM3(), Units.M3);
        answer.number("presentVolume", "Usable volume of the tanks as they are", present,
                Step.of("S", "capacity above the outlets", "sum of capacity - dead volume", present,
                        Source.definition("sum over the tanks in use")));
        Quantity asked = Quantity.ofSi(target.timeReliability(), Units.PERCENT);
        answer.number("target", "Target: share of days met in full", asked, Step.of("R", "what the site aims at",
                "as entered, or else the default of the model", asked, Source.definition("the target of the site"),
                target.timeReliabilityInput()));
        requiredM3().ifPresent(volumeM3 -> required(answer, volumeM3, deadM3));
        answer.add("verdict", "Whether the tanks are large enough", verdict(reached));
        sequentPeak(answer);
        curve(answer);
        answer.caution(new Caution("storage.sizing-plain", Severity.INFO, null,
                "The required volume is that of one tight, covered tank that every use draws on: evaporation, leaks, "
                        + "pumps between tanks, rationing and water bought in are not in it. The storage balance "
                        + "has them.",
                List.of(), "", Source.definition("what the sizing counts")));
    }

    private void required(AnswerBuilder answer, double volumeM3, double deadM3) {
        Quantity volume = Quantity.of(volumeM3, Units.M3);
        answer.number("requiredVolume", "Usable volume that reaches the target", volume,
                Step.of("S", "halving on the exact daily simulation of all inflow and demand, yield after spillage, "
                        + "warmed up over one pass of the record", "smallest S with Rt(S) >= R", volume,
                        StorageTerms.MODEL, target.timeReliabilityInput(),
                        volume("Q", "inflow over the record", need.totalInflowM3()),
                        volume("D", "demand over the record", need.totalDemandM3())));
        Quantity capacity = Quantity.of(volumeM3 + deadM3, Units.M3);
        answer.number("requiredCapacity", "Capacity that this takes, dead volume included", capacity,
                Step.of("C", "capacity up to the overflow", "S + Vd", capacity, Source.definition("sum"),
                        new Input("S", "usable volume", volume), volume("Vd", "dead volume of the tanks", deadM3)));
    }

    private Verdict verdict(OptionalDouble reached) {
        if (reached.isEmpty()) {
            return new Verdict(Level.CONDITIONAL, "Nothing is asked for, so no volume is too small.", List.of());
        }
        double share = reached.getAsDouble();
        List<String> reasons = new ArrayList<>();
        reasons.add("As built, the site meets " + percent(share) + " of the days with demand; the target is "
                + percent(target.timeReliability()) + ".");
        if (!(sized instanceof SizingAnswer.Sized answer)) {
            reasons.add(StorageTerms.reason((SizingAnswer.NoAnswer) sized));
            return share >= target.timeReliability() ? new Verdict(Level.GOOD, "The tanks reach the target.", reasons)
                    : new Verdict(Level.BAD, "No tank reaches the target.", reasons);
        }
        reasons.add("One tank of " + cubicMetres(answer.volumeM3()) + " usable would reach it; there are "
                + cubicMetres(presentM3()) + ".");
        if (share >= target.timeReliability()) {
            return new Verdict(Level.GOOD, "The tanks reach the target.", reasons);
        }
        if (presentM3() < answer.volumeM3()) {
            return new Verdict(Level.BAD, "The tanks are too small for the target.", reasons);
        }
        reasons.add("Rationed days count as short, and evaporation, leaks and the way from tank to tank take their "
                + "part; "
                + "the storage balance shows it use by use.");
        return new Verdict(Level.CONDITIONAL, "The tanks are large enough, but something else keeps the target from "
                + "being reached.", reasons);
    }

    private void sequentPeak(AnswerBuilder answer) {
        SequentPeak peak = SequentPeak.of(need.inflowM3(), need.demandM3(), PASSES);
        if (!peak.sustainable()) {
            return;
        }
        Quantity volume = Quantity.of(peak.volumeM3(), Units.M3);
        String stretch = "from " + need.firstDay().plusDays(peak.firstDay() % need.days()) + " to "
                + need.firstDay().plusDays(peak.lastDay() % need.days());
        answer.number("sequentPeak", "Volume that meets every day (sequent peak)", volume,
                Step.of("K", "largest running deficit, the record taken twice; " + stretch,
                        "K(t) = max(0, K(t-1) + D - Q); max K", volume, StorageTerms.SEQUENT_PEAK));
    }

    /** The usable volumes of the curve, from none to half as much again as there is or is needed [m3]. */
    double[] volumesM3() {
        double largestM3 = Math.max(1.5 * presentM3(), 1.5 * requiredM3().orElse(0));
        double[] volumesM3 = new double[CURVE_POINTS];
        for (int i = 0; i < CURVE_POINTS; i++) {
            volumesM3[i] = largestM3 * i / (CURVE_POINTS - 1);
        }
        return volumesM3;
    }

    private void curve(AnswerBuilder answer) {
        double[] volumesM3 = volumesM3();
        // the tanks as they are come last, beside the evenly spaced volumes of the curve
        double[] withPresent = Arrays.copyOf(volumesM3, CURVE_POINTS + 1);
        withPresent[CURVE_POINTS] = presentM3();
        ReliabilityCurve curve = ReliabilityCurve.of(need.inflowM3(), need.demandM3(), withPresent,
                SweepSettings.warm(YieldRule.YAS), cancelled);
        if (curve.demandDays() == 0) {
            return;
        }
        double[] share = new double[CURVE_POINTS];
        List<List<Object>> rows = new ArrayList<>();
        for (int i = 0; i < CURVE_POINTS; i++) {
            share[i] = curve.timeReliability(i).orElseThrow();
            rows.add(Arrays.asList(Quantity.of(volumesM3[i], Units.M3), Quantity.ofSi(share[i], Units.PERCENT),
                    Quantity.ofSi(curve.volumetricReliability(i).orElseThrow(), Units.PERCENT),
                    Quantity.of(curve.demandDays() - curve.fullDays(i), Units.D)));
        }
        Step step = Step.of("Rt", "share of days met in full by one plain tank, yield after spillage, warmed up over "
                + "one pass of the record, for each volume", "full days / days with demand", null, StorageTerms.MODEL,
                volume("Q", "inflow over the record", need.totalInflowM3()),
                volume("D", "demand over the record", need.totalDemandM3()));
        answer.add("reliabilityCurve", "Share of days met over usable volume",
                new FindingValue.Curve("Usable volume", Units.M3, volumesM3, Units.ONE, share), step);
        answer.add("reliabilityTable", "Reliability over usable volume", new FindingValue.Table(
                List.of("Usable volume", "Days met in full", "Demand supplied", "Days short in the record"), rows),
                step);
        Quantity present = Quantity.ofSi(curve.timeReliability(CURVE_POINTS).orElseThrow(), Units.PERCENT);
        answer.number("presentReliability", "Share of days one plain tank of it meets", present,
                Step.of("Rt", "on the curve, at the usable volume there is", "full days / days with demand", present,
                        StorageTerms.MODEL, volume("S", "usable volume", presentM3())));
    }

    static Input volume(String symbol, String meaning, double volumeM3) {
        return new Input(symbol, meaning, Quantity.of(volumeM3, Units.M3));
    }

    private static String percent(double ratio) {
        return Math.floor(ratio * 1000) / 10 + " %";
    }

    private static String cubicMetres(double volumeM3) {
        return String.format(java.util.Locale.ROOT, volumeM3 < 10 ? "%.3f m3" : "%.1f m3", volumeM3);
    }
}
