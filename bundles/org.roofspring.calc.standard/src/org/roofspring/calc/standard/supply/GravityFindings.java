package org.roofspring.calc.standard.supply;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;

import org.roofspring.calc.Caution;
import org.roofspring.calc.Caution.Severity;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.FindingValue.Verdict.Level;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.Source;
import org.roofspring.calc.Working.Input;
import org.roofspring.calc.Working.Step;
import org.roofspring.calc.standard.answer.AnswerBuilder;
import org.roofspring.calc.standard.water.FilterLosses;
import org.roofspring.calc.standard.water.GravityNetwork;
import org.roofspring.calc.standard.water.PipeLosses;
import org.roofspring.calc.standard.water.TankWater;
import org.roofspring.hydraulics.WaterProperties;
import org.roofspring.hydraulics.gravity.GravityFlow;
import org.roofspring.hydraulics.gravity.GravityFlow.OutletFlow;
import org.roofspring.hydraulics.gravity.GravitySolver;
import org.roofspring.hydraulics.gravity.GravityState;
import org.roofspring.hydraulics.gravity.StandpostHead;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.PressureVessel;
import org.roofspring.site.Tank;
import org.roofspring.site.Tap;
import org.roofspring.site.TapKind;
import org.roofspring.site.TreatmentStep;
import org.roofspring.site.TreatmentTrain;

/**
 * The taps beyond one tank or vessel, all that run together in a peak solved at once: what each gets with clean and with
 * fouled filters, the weakest, how high the tank must stand to serve it, and the grade line.
 */
public final class GravityFindings {
    private static final Source TREE = Source.definition(
            "head along each way; all open taps solved together, losses after Darcy-Weisbach and Colebrook-White");
    private static final Source ENERGY = Source.definition("energy along the way");

    private final GravityNetwork network;
    private final double temperatureC;
    private final double levelM;
    private final GravityState newState;
    private final GravityState wornState;
    private final GravityFlow fresh;
    private final GravityFlow worn;
    private final AnswerBuilder answer;

    private GravityFindings(GravityNetwork network, double temperatureC, BooleanSupplier cancelled) {
        this.network = network;
        this.temperatureC = temperatureC;
        levelM = network.usualLowLevelM(WaterProperties.at(temperatureC));
        newState = new GravityState(levelM, temperatureC, false);
        wornState = new GravityState(levelM, temperatureC, true);
        fresh = GravitySolver.open(network.tree(), newState, allOutlets(), cancelled);
        worn = GravitySolver.open(network.tree(), wornState, allOutlets(), cancelled);
        answer = new AnswerBuilder(network.source().getId());
    }

    /**
     * The findings of a network that is built.
     *
     * @param temperatureC of the water, 0 to 60
     */
    public static GravityFindings of(GravityNetwork network, double temperatureC, BooleanSupplier cancelled) {
        GravityFindings findings = new GravityFindings(network, temperatureC, cancelled);
        findings.taps();
        findings.weakest();
        findings.least(cancelled);
        findings.gradeLines();
        findings.cautions();
        return findings;
    }

    /** What there is to say. */
    public Outcome.Completed outcome() {
        return answer.build();
    }

    /** Flow of one outlet of each tap with aged pipe and fouled filters [m3/s]. */
    public Map<Tap, Double> flowOfOneM3PerS() {
        Map<Tap, Double> flows = new LinkedHashMap<>();
        network.outlets().forEach((tap, outlet) -> flows.put(tap, of(worn, tap).flowM3PerS() / GravityNetwork.open(tap)));
        return flows;
    }

    private Set<String> allOutlets() {
        return network.outlets().values().stream().map(outlet -> outlet.id()).collect(Collectors.toSet());
    }

    private OutletFlow of(GravityFlow flow, Tap tap) {
        String id = network.outlets().get(tap).id();
        return flow.outlets().stream().filter(each -> each.outlet().id().equals(id)).findFirst().orElseThrow();
    }

    private void taps() {
        List<List<Object>> rows = new ArrayList<>();
        for (Tap tap : network.outlets().keySet()) {
            OutletFlow clean = of(fresh, tap);
            OutletFlow fouled = of(worn, tap);
            AnswerBuilder each = new AnswerBuilder(tap.getId());
            numbers(each, tap, clean, fresh, "", ", clean and new");
            numbers(each, tap, fouled, worn, "Fouled", ", fouled and aged");
            answer.include(each.build());
            rows.add(Arrays.asList(tap.getName(), GravityNetwork.open(tap) + " of " + Math.max(1, tap.getCount()),
                    flow(clean.outlet().wantedFlowM3PerS()), flow(clean.flowM3PerS()), flow(fouled.flowM3PerS()),
                    head(clean.residualHeadM()), head(fouled.residualHeadM()),
                    Quantity.ofSi(fouled.shareOfWanted(), Units.PERCENT)));
        }
        answer.add("taps", "Taps running together", new FindingValue.Table(List.of("Tap", "Open", "Wanted", "Flow, clean",
                "Flow, fouled", "Head, clean", "Head, fouled", "Fouled over wanted"), rows));
    }

    private static Quantity flow(double flowM3PerS) {
        return Quantity.ofSi(flowM3PerS, Units.L_PER_MIN);
    }

    private static Quantity head(double headM) {
        return Quantity.of(headM, Units.M);
    }

    private void numbers(AnswerBuilder each, Tap tap, OutletFlow result, GravityFlow all, String suffix, String how) {
        double tapM = network.tree().node(result.outlet().node()).elevationM();
        double lossM = levelM - tapM - result.residualHeadM();
        Input water = new Input("zw", levelMeaning(), Quantity.of(levelM, Units.M));
        Input level = new Input("zt", "level of the tap", tap.getLevel(), tap.getId(), "level");
        Input loss = new Input("hl", "head lost on the way at the flows of all open taps", Quantity.of(lossM, Units.M));
        Quantity residual = head(result.residualHeadM());
        Step headStep = Step.of("h", "head left at the tap", "zw - zt - hl", residual, ENERGY, water, level, loss);
        each.number("residualHead" + suffix, "Head left at the tap" + how, residual, headStep);
        Quantity wanted = flow(result.outlet().wantedFlowM3PerS());
        Quantity got = flow(result.flowM3PerS());
        each.number("flow" + suffix, "Flow of " + GravityNetwork.open(tap) + " open" + how, got, headStep,
                Step.of("Q", "flow at which the open taps take the head that is left", tapRule(tap), got, TREE,
                        new Input("h", "head left", residual), new Input("Qw", "flow wanted of them together", wanted),
                        new Input("hm", "head they take at it", head(result.outlet().wantedHeadM())),
                        new Input("Qa", "flow of all taps beyond this tank", flow(all.totalFlowM3PerS()))));
    }

    private static String tapRule(Tap tap) {
        return tap.getOrifice() != null ? "Cd A sqrt(2 g h), Cd = 0.61" : tap.getLossCoefficient() != null
                ? "h = K v^2 / (2 g)" : "Qw sqrt(h / hm)";
    }

    private String levelMeaning() {
        return network.source() instanceof PressureVessel ? "level of the vessel and the head of its cut-in pressure"
                : ((Tank) network.source()).getStartHeight() != null ? "level of the water when the pump starts"
                : "level of the water half way between outlet and top";
    }

    private void weakest() {
        OutletFlow weakClean = fresh.weakest();
        OutletFlow weakFouled = worn.weakest();
        List<String> reasons = new ArrayList<>();
        worn.outlets().stream().filter(each -> each.shareOfWanted() < 1 - 1e-9).forEach(each -> reasons.add(String.format(
                java.util.Locale.ROOT, "%s gets %.0f %% of what it wants when filters are due for a change and pipe is aged",
                each.outlet().id(), 100 * each.shareOfWanted())));
        fresh.outlets().stream().filter(each -> each.shareOfWanted() < 1 - 1e-9).forEach(each -> reasons.add(String.format(
                java.util.Locale.ROOT, "%s gets %.0f %% even with clean filters and new pipe", each.outlet().id(),
                100 * each.shareOfWanted())));
        Level level = weakClean.shareOfWanted() < 1 - 1e-9 ? Level.BAD
                : weakFouled.shareOfWanted() < 1 - 1e-9 ? Level.CONDITIONAL : Level.GOOD;
        String text = switch (level) {
            case GOOD -> "Every tap gets its flow; the weakest is " + weakFouled.outlet().id();
            case CONDITIONAL -> "The weakest tap, " + weakFouled.outlet().id() + ", falls short when filters are fouled";
            case BAD -> "The weakest tap, " + weakFouled.outlet().id() + ", falls short";
        };
        answer.add("weakestTap", "Weakest tap", new FindingValue.Verdict(level, text, reasons));
    }

    /** The lowest water, and so the lowest stand, that serves the weakest tap with aged pipe and fouled filters. */
    private void least(BooleanSupplier cancelled) {
        OptionalDouble leastM = GravitySolver.leastWaterLevelM(network.tree(), wornState, allOutlets(), cancelled);
        if (leastM.isEmpty()) {
            answer.caution(new Caution("gravity.never", Severity.WARNING, network.source().getId(), "No height of the tank"
                    + " up to {0} over the taps would give the weakest tap its flow: widen the pipes or open fewer taps.",
                    List.of(Quantity.of(GravitySolver.HIGHEST_TANK_M, Units.M)), "", TREE));
            return;
        }
        Quantity least = head(leastM.getAsDouble());
        Step step = Step.of("zl", "lowest water at which every open tap gets its flow, with aged pipe and fouled filters",
                "Q(zl) = Qw at the weakest tap", least, TREE);
        answer.number("leastWaterLevel", "Lowest water that serves the weakest tap", least, step);
        Input now = new Input("zw", levelMeaning(), Quantity.of(levelM, Units.M));
        Input wanted = new Input("zl", "lowest water that serves the weakest tap", least);
        if (network.source() instanceof PressureVessel vessel) {
            double pa = WaterProperties.at(temperatureC).pressurePa(leastM.getAsDouble() - vessel.getLevel().si());
            Quantity cutIn = Quantity.ofSi(Math.max(0, pa), Units.KPA);
            answer.number("leastCutIn", "Lowest cut-in pressure that serves the weakest tap", cutIn, step, Step.of("pl",
                    "pressure at the vessel", "rho g (zl - zv)", cutIn, ENERGY, wanted,
                    new Input("zv", "level of the vessel", vessel.getLevel(), vessel.getId(), "level")));
            return;
        }
        Tank tank = (Tank) network.source();
        Quantity floor = head(TankWater.floorM(tank) + leastM.getAsDouble() - levelM);
        answer.number("leastFloorLevel", "Lowest floor that serves the weakest tap", floor, step, Step.of("zf",
                "floor moved as far as the water may", "z0 + zl - zw", floor, ENERGY, wanted, now,
                new Input("z0", "level of the floor", Quantity.of(TankWater.floorM(tank), Units.M), tank.getId(),
                        "baseLevel")));
        if (tank.getSiting() != null && tank.getSiting().getStandHeight() != null) {
            Quantity stand = head(Math.max(0, tank.getSiting().getStandHeight().si() + leastM.getAsDouble() - levelM));
            answer.number("leastStandHeight", "Lowest stand that serves the weakest tap", stand, step, Step.of("s",
                    "stand raised or lowered as far as the water may", "max(0, s0 + zl - zw)", stand, ENERGY, wanted, now,
                    new Input("s0", "height of the stand", tank.getSiting().getStandHeight(), tank.getSiting().getId(),
                            "standHeight")));
        }
    }

    private void gradeLines() {
        GradeWays ways = new GradeWays(network, wornState, worn);
        for (Tap tap : network.outlets().keySet()) {
            answer.include(ways.curves(tap));
        }
        ways.cautions().forEach(answer::caution);
    }

    private void cautions() {
        network.runs().stream().filter(run -> !PipeLosses.withoutLoss(run).isEmpty()).forEach(run -> warn(
                "pipe.unknown-fitting", run.getId(), "{0} has a fitting whose loss is neither given nor known from its kind;"
                        + " it is taken as nil. Enter its loss coefficient.", Source.definition("how the model was read"),
                String.valueOf(run.getName())));
        network.trains().forEach(this::train);
        for (Tap tap : network.outlets().keySet()) {
            OutletFlow fouled = of(worn, tap);
            if (fouled.residualHeadM() < 0) {
                warn("gravity.air", tap.getId(), "When {0} is opened with the others it draws air instead of giving water:"
                        + " the grade line is {1} below it.", TREE, tap.getName(), head(-fouled.residualHeadM()));
            }
            if (tap.getKind() == TapKind.STANDPOST) {
                standpost(tap, fouled.residualHeadM());
            }
        }
    }

    private void train(String reach, TreatmentTrain train) {
        for (TreatmentStep step : FilterLosses.withoutLoss(train)) {
            warn("gravity.no-filter-loss", step.getId(), "The loss of head of {0}, or the flow that it holds at, is not"
                    + " given; it is taken as nil.", Source.definition("how the model was read"), step.getName());
        }
        double flowM3PerS = fresh.flowByReach().get(reach);
        for (TreatmentStep step : FilterLosses.inPipe(train)) {
            if (step.getMaxFlow() != null && flowM3PerS > step.getMaxFlow().si() * (1 + 1e-9)) {
                answer.caution(new Caution("treatment.too-fast", Severity.DANGER, step.getId(), "With all taps open {0} passes"
                        + " {1}, which works up to {2} only: faster, it lets through what it should hold back. Fit a flow"
                        + " limiter or a larger one.", List.of(flow(flowM3PerS), step.getName(),
                                step.getMaxFlow().as(Units.L_PER_MIN)), "Ask your local health authority.",
                        Source.definition("highest flow of the step, as entered")));
            }
        }
    }

    private void standpost(Tap tap, double headM) {
        StandpostHead usual = StandpostHead.USUAL;
        StandpostHead.Verdict verdict = usual.judge(Math.max(0, headM));
        if (verdict != StandpostHead.Verdict.GOOD) {
            boolean bad = verdict == StandpostHead.Verdict.TOO_LOW || verdict == StandpostHead.Verdict.TOO_HIGH;
            answer.caution(new Caution("gravity.standpost", bad ? Severity.WARNING : Severity.INFO, tap.getId(), "At the"
                    + " standpost {0} the head is {1}; {2} to {3} is desired, and {4} to {5} the outer limits.",
                    List.of(tap.getName(), head(headM), head(usual.lowDesiredM()), head(usual.highDesiredM()),
                            head(usual.leastM()), head(usual.mostM())), "", Source.fromMemory(usual.source())));
        }
    }

    private void warn(String code, String elementId, String text, Source source, Object... arguments) {
        answer.caution(new Caution(code, Severity.WARNING, elementId, text, List.of(arguments), "", source));
    }
}
