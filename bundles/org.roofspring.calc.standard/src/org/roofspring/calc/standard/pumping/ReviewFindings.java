package org.roofspring.calc.standard.pumping;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BooleanSupplier;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.FindingValue.Verdict;
import org.roofspring.calc.FindingValue.Verdict.Level;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.Outcome.Problem;
import org.roofspring.calc.Source;
import org.roofspring.calc.Working;
import org.roofspring.calc.Working.Input;
import org.roofspring.calc.Working.Step;
import org.roofspring.calc.standard.answer.AnswerBuilder;
import org.roofspring.calc.standard.water.PumpedWater;
import org.roofspring.calc.standard.water.ServedUses;
import org.roofspring.calc.standard.water.TankChain;
import org.roofspring.calc.standard.water.TankWater;
import org.roofspring.hydraulics.Band;
import org.roofspring.hydraulics.pump.DutyPoint;
import org.roofspring.hydraulics.pump.PumpOperation;
import org.roofspring.hydraulics.pump.PumpSet;
import org.roofspring.hydraulics.pump.SystemState;
import org.roofspring.hydraulics.pump.WorkingRange;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.Economy;
import org.roofspring.site.Pump;
import org.roofspring.site.PumpCandidate;
import org.roofspring.site.PumpData;
import org.roofspring.site.Site;

/**
 * A pump and the candidates that are weighed against it, side by side on its line: a table with a row for each, its curve,
 * its verdict, and the band of the system.
 */
public final class ReviewFindings {
    /** Columns of the table {@code candidates}; the last is the identifier of the element that a row is about. */
    public static final List<String> COLUMNS = List.of("Pump", "Flow", "Flow, lowest", "Flow, highest", "Head", "Efficiency",
            "Off best flow", "NPSH margin, worst", "Power", "Energy", "Energy a year", "Cost a year", "Time to fill",
            "Starts a day", "Verdict", "Reasons", "Element");
    private static final int CURVE_POINTS = 33;
    private static final Source RANGE = Source.definition("duty at every corner of level, temperature, barometer and age of pipe");
    private static final Source DEMAND = Source.definition("whole demand of the uses beyond the pump, in a mean year");

    private final Pump pump;
    private final PumpedWater water;
    private final CandidateReview.Service service;
    private final AnswerBuilder answer;
    private final List<List<Object>> rows = new ArrayList<>();

    private ReviewFindings(Site site, Pump pump, PumpedWater water) {
        this.pump = pump;
        this.water = water;
        ServedUses uses = ServedUses.of(site, pump);
        Economy economy = site.getEconomy();
        service = new CandidateReview.Service(uses.yearlyM3(), uses.busiestDayM3(),
                water.filledTank().map(TankWater::switchVolumeM3).orElse(OptionalDouble.empty()),
                PumpOperation.DAY_S * TankChain.supplyShare(pump), economy == null ? null : economy.getEnergyPrice());
        answer = new AnswerBuilder(pump.getId());
    }

    /** The comparison about a pump, or why its line cannot be computed. */
    public static Outcome of(Site site, Pump pump, BooleanSupplier cancelled) {
        try {
            return switch (PumpedWater.read(site, pump)) {
                case PumpedWater.Reading.Missing missing -> new Outcome.NotComputable(missing.sentences().stream()
                        .map(sentence -> new Problem(pump.getId(), null, sentence)).toList(), List.of());
                case PumpedWater.Reading.Found found -> new ReviewFindings(site, pump, found.water()).compare(cancelled);
            };
        } catch (IllegalArgumentException e) {
            return new Outcome.NotComputable(new Problem(pump.getId(), null, pump.getName() + ": " + e.getMessage() + "."));
        }
    }

    private Outcome.Completed compare(BooleanSupplier cancelled) {
        List<SystemState> states = new ArrayList<>(List.of(water.designState()));
        states.addAll(water.states());
        List<PumpData> sound = new ArrayList<>();
        List<PumpSet> sets = new ArrayList<>();
        for (PumpData data : compared()) {
            try {
                sets.add(PumpedWater.pumpSet(pump, data, name(data)));
                sound.add(data);
            } catch (IllegalArgumentException e) {
                refuse(data, e.getMessage());
            }
        }
        List<WorkingRange> ranges = WorkingRange.ofAll(sets, water.line(), states, cancelled);
        for (int i = 0; i < sound.size(); i++) {
            PumpData data = sound.get(i);
            say(data, new CandidateReview(new CandidateReview.Limits(data.getRatedPower(), data.getMaxStarts()),
                    ranges.get(i), service), sets.get(i));
        }
        answer.add("candidates", "Pumps compared", new FindingValue.Table(COLUMNS, rows));
        band(states, sets);
        return answer.build();
    }

    /** The pump itself, where it has points, and its candidates. */
    private List<PumpData> compared() {
        List<PumpData> all = new ArrayList<>();
        if (PumpedWater.hasCurve(pump)) {
            all.add(pump);
        }
        all.addAll(pump.getCandidates());
        return all;
    }

    private static String id(PumpData data) {
        return EcoreUtil.getID(data);
    }

    private static String name(PumpData data) {
        String name = data instanceof PumpCandidate candidate ? candidate.getName() : ((Pump) data).getName() + ", as designed";
        return name == null || name.isBlank() ? id(data) : name;
    }

    /** A pump whose points make no curve is no reason to leave out the others. */
    private void refuse(PumpData data, String why) {
        Verdict verdict = new Verdict(Level.BAD, "No curve", List.of(why));
        answer.include(new AnswerBuilder(id(data)).add("verdict", "Verdict on " + name(data), verdict).build());
        List<Object> row = new ArrayList<>(java.util.Collections.nCopies(COLUMNS.size(), null));
        row.set(0, name(data));
        row.set(COLUMNS.indexOf("Verdict"), verdict.text());
        row.set(COLUMNS.indexOf("Reasons"), why);
        row.set(COLUMNS.size() - 1, id(data));
        rows.add(row);
    }

    private void say(PumpData data, CandidateReview review, PumpSet set) {
        Verdict verdict = review.verdict();
        AnswerBuilder each = new AnswerBuilder(id(data));
        each.add("verdict", "Verdict on " + name(data), verdict);
        each.add("headCurve", "Head of " + name(data), curve(set));
        Outcome.Completed built = each.build();
        answer.include(new Outcome.Completed(built.findings(), List.of(new Working("verdict", id(data),
                "How " + name(data) + " works on this line", steps(review))), List.of()));
        rows.add(Arrays.asList(name(data), review.flow().orElse(null),
                review.flowM3PerS().map(band -> Quantity.ofSi(band.low(), Units.L_PER_S)).orElse(null),
                review.flowM3PerS().map(band -> Quantity.ofSi(band.high(), Units.L_PER_S)).orElse(null),
                review.head().orElse(null), review.efficiency().orElse(null), review.offBest().orElse(null),
                review.worstNpshMargin().orElse(null), review.power().orElse(null), review.specificEnergy().orElse(null),
                review.yearlyEnergy().orElse(null), review.yearlyCost().orElse(null), review.timeToFill().orElse(null),
                review.startsPerDay().orElse(null), verdict.text(), String.join("; ", verdict.reasons()), id(data)));
    }

    private List<Step> steps(CandidateReview review) {
        List<Step> steps = new ArrayList<>();
        if (review.design().isEmpty()) {
            steps.add(new Step("Q", "flow at which the pump's head is the head the system needs",
                    "none: " + review.designReason(), List.of(), "", null,
                    Source.definition("intersection of pump curve and system curve")));
            return steps;
        }
        DutyPoint duty = review.design().get();
        Input flow = new Input("Q", "flow", Quantity.ofSi(duty.flowM3PerS(), Units.L_PER_S));
        Input head = new Input("H", "head", Quantity.of(duty.headM(), Units.M));
        steps.add(Step.of("Q", "flow with the lowest water drawn and new pipe", "Hpump(Q) = Hsystem(Q)", flow.value(),
                Source.definition("intersection of pump curve and system curve"), head));
        review.flowM3PerS().ifPresent(band -> steps.add(Step.of("Qmin", "lowest flow of all states; the highest is "
                + Quantity.ofSi(band.high(), Units.L_PER_S), "smallest over all states", Quantity.ofSi(band.low(), Units.L_PER_S),
                RANGE)));
        review.worstNpshMargin().ifPresent(margin -> steps.add(Step.of("m", "least NPSH margin of all states",
                "smallest of NPSHa - NPSHr", margin, RANGE)));
        review.specificEnergy().ifPresent(energy -> {
            steps.add(Step.of("e", "energy for each volume", "P / Q", energy, Source.definition("energy"),
                    new Input("P", duty.inputPowerW().isPresent() ? "power taken by the motor" : "power at the shaft",
                            review.power().orElseThrow()), flow));
            Quantity year = review.yearlyEnergy().orElseThrow();
            steps.add(Step.of("E", "energy for the demand of a year", "e Vy", year, DEMAND,
                    new Input("e", "energy for each volume", energy),
                    new Input("Vy", "demand of a year", Quantity.of(service.yearlyM3(), Units.M3))));
        });
        review.yearlyCost().ifPresent(cost -> steps.add(Step.of("c", "cost of it", "E p", cost, DEMAND,
                new Input("E", "energy in a year", review.yearlyEnergy().orElseThrow()),
                new Input("p", "price of energy", service.energyPrice()))));
        review.timeToFill().ifPresent(time -> steps.add(Step.of("tf", "time from start to stop height", "Vs / Q", time,
                Source.definition("volume over flow"), new Input("Vs", "volume between the switch heights",
                        Quantity.of(service.switchM3().getAsDouble(), Units.M3)), flow)));
        review.startsPerDay().ifPresent(starts -> steps.add(Step.of("n", "starts on the busiest day", "Vd / Vs", starts,
                Source.definition("volume over volume"),
                new Input("Vd", "demand of the busiest day", Quantity.of(service.busiestDayM3(), Units.M3)),
                new Input("Vs", "volume between the switch heights", Quantity.of(service.switchM3().getAsDouble(), Units.M3)))));
        return steps;
    }

    private static FindingValue.Curve curve(PumpSet set) {
        double[] flows = spread(set.lowestFlowM3PerS(), set.highestFlowM3PerS());
        return new FindingValue.Curve("Flow", Units.L_PER_S, inLitres(flows), Units.M, Arrays.stream(flows).map(set::headM).toArray());
    }

    private static double[] spread(double low, double high) {
        double[] values = new double[CURVE_POINTS];
        for (int i = 0; i < values.length; i++) {
            values[i] = i == values.length - 1 ? high : low + (high - low) * i / (values.length - 1);
        }
        return values;
    }

    private static double[] inLitres(double[] flowsM3PerS) {
        return Arrays.stream(flowsM3PerS).map(flow -> flow * 1000).toArray();
    }

    /** What the system needs, lowest and highest over all states, up to the largest flow of any pump. */
    private void band(List<SystemState> states, List<PumpSet> sets) {
        double mostM3PerS = sets.stream().mapToDouble(PumpSet::highestFlowM3PerS).filter(flow -> flow <= 1000).max().orElse(0);
        if (mostM3PerS <= 0) {
            return;
        }
        double[] flows = spread(0, mostM3PerS);
        double[] low = new double[flows.length];
        double[] high = new double[flows.length];
        for (int i = 0; i < flows.length; i++) {
            Band band = WorkingRange.systemHeadM(water.line(), states, flows[i]);
            low[i] = band.low();
            high[i] = band.high();
        }
        answer.add("systemLowest", "Head the system needs, lowest", new FindingValue.Curve("Flow", Units.L_PER_S, inLitres(flows),
                Units.M, low));
        answer.add("systemHighest", "Head the system needs, highest", new FindingValue.Curve("Flow", Units.L_PER_S, inLitres(flows),
                Units.M, high));
    }
}
