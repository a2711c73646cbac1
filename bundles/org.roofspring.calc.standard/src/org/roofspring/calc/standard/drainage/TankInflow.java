package org.roofspring.calc.standard.drainage;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

import org.roofspring.calc.Caution;
import org.roofspring.calc.Caution.Severity;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.Source;
import org.roofspring.calc.Working.Input;
import org.roofspring.calc.Working.Step;
import org.roofspring.calc.standard.answer.AnswerBuilder;
import org.roofspring.calc.standard.answer.KernelTerms;
import org.roofspring.calc.standard.water.Names;
import org.roofspring.calc.standard.water.PipePaths;
import org.roofspring.drainage.NoAnswerException;
import org.roofspring.drainage.tank.CalmedInlet;
import org.roofspring.drainage.tank.FloatingIntake;
import org.roofspring.drainage.tank.OverflowCheck;
import org.roofspring.drainage.tank.OverflowPipe;
import org.roofspring.drainage.tank.Vent;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.PipeRun;
import org.roofspring.site.Pump;
import org.roofspring.site.Site;
import org.roofspring.site.Tank;
import org.roofspring.site.TankCover;

/**
 * Whether a full tank lets go of all that comes in at once, breathes, and takes and gives water without stirring its
 * sediment.
 */
public final class TankInflow {
    private static final Source SUM = Source.definition("all inlets running at once");
    private static final Source OVERFLOW = Source.fromMemory("Chow, Open-Channel Hydraulics, 1959, culverts with "
            + "inlet control");
    private static final Source MESH = Source.commonPractice("half of a vent's mesh is open and clean, assumed");
    private static final double MESH_OPEN_RATIO = 0.5;
    private static final double LEAST_FLOW_M3_PER_S = 1e-9;

    private final Site site;
    private final ToDoubleFunction<Tank> roofsM3PerS;
    private final Function<Pump, OptionalDouble> pumpedM3PerS;
    private final PipePaths paths;

    /**
     * @param site         the frozen site
     * @param roofsM3PerS  what roofs send to each tank in the design storm
     * @param pumpedM3PerS what each pump lifts, where it is known
     */
    public TankInflow(Site site, ToDoubleFunction<Tank> roofsM3PerS, Function<Pump, OptionalDouble> pumpedM3PerS) {
        this.site = site;
        this.roofsM3PerS = roofsM3PerS;
        this.pumpedM3PerS = pumpedM3PerS;
        this.paths = new PipePaths(site);
    }

    /** What is said of a tank; nothing where nothing flows in. */
    public Outcome.Completed of(Tank tank) {
        AnswerBuilder answer = new AnswerBuilder(tank.getId());
        List<Input> inlets = inlets(tank, new HashSet<>());
        double inflow = inlets.stream().mapToDouble(input -> input.value().si()).sum();
        if (inflow > LEAST_FLOW_M3_PER_S) {
            Quantity all = flow(inflow);
            String formula = String.join(" + ", inlets.stream().map(Input::symbol).toList());
            answer.number("inflow", "Flow of all inlets at once", all, Step.of("Qi", "flow of all inlets at once",
                    formula, all, SUM, inlets.toArray(Input[]::new)));
            overflow(answer, tank, inflow);
            vent(answer, tank, inflow);
            calmed(answer, tank, inflow);
        }
        floating(answer, tank);
        return answer.build();
    }

    private List<Input> inlets(Tank tank, Set<Tank> seen) {
        List<Input> inlets = new ArrayList<>();
        if (!seen.add(tank)) {
            return inlets;
        }
        double roofs = roofsM3PerS.applyAsDouble(tank);
        if (roofs > 0) {
            inlets.add(new Input("Qr", "off the roofs in the design storm, as much as the gutters let through",
                    flow(roofs)));
        }
        for (Pump pump : site.getPumps()) {
            OptionalDouble pumped = pump.isInUse() && paths.deliveredTank(pump).filter(tank::equals).isPresent()
                    ? pumpedM3PerS.apply(pump) : OptionalDouble.empty();
            if (pumped.isPresent()) {
                inlets.add(new Input("Qp" + inlets.size(), "from " + Names.of(pump), flow(pumped.getAsDouble())));
            }
        }
        for (Tank upper : site.getTanks()) {
            if (upper.isInUse() && upper.getOverflowsTo() == tank && upper != tank) {
                double spilt = inlets(upper, seen).stream().mapToDouble(input -> input.value().si()).sum();
                if (spilt > 0) {
                    inlets.add(new Input("Qs" + inlets.size(), "spilt by " + Names.of(upper) + " when full",
                            flow(spilt)));
                }
            }
        }
        return inlets;
    }

    private void overflow(AnswerBuilder answer, Tank tank, double inflow) {
        if (tank.getHeight() == null || tank.getOverflowHeight() == null || tank.getOverflowDiameter() == null) {
            notChecked(answer, tank, "overflow", "its height, and the height and bore of its overflow, must be given");
            return;
        }
        double head = tank.getHeight().si() - tank.getOverflowHeight().si();
        try {
            OverflowCheck one = OverflowCheck.of(List.of(inflow), new OverflowPipe(tank.getOverflowDiameter().si()), 1,
                    Math.max(0, head));
            Quantity passed = flow(one.openM3PerS());
            Quantity over = Quantity.of(Math.max(0, head), Units.M);
            Input depth = new Input("h", "from the lip of the overflow to the top of the tank", over, tank.getId(),
                    "overflowHeight");
            answer.number("overflowCapacity", "What its overflow passes", passed, Step.of("Qv",
                    "critical flow in the mouth, or an orifice where it is drowned", "h = y + 1.5 A / (2 B)", passed,
                    OVERFLOW, depth, new Input("D", "bore", tank.getOverflowDiameter(), tank.getId(),
                            "overflowDiameter")));
            if (one.openM3PerS() < inflow) {
                answer.caution(new Caution("tank.overflow-small", Severity.WARNING, tank.getId(),
                        "The overflow of {0} passes {1} before the water stands at its top, and {2} may come in: the "
                                + "rest comes out where it likes.", List.of(Names.of(tank), passed, flow(inflow)), "",
                        OVERFLOW));
            }
            twoPipes(answer, tank, inflow, head, depth);
        } catch (IllegalArgumentException | NoAnswerException e) {
            notChecked(answer, tank, "overflow", e.getMessage());
        }
    }

    /** With a single pipe blocked nothing is left, so two are sized, either of which is enough. */
    private static void twoPipes(AnswerBuilder answer, Tank tank, double inflow, double head, Input depth) {
        Quantity bore = Quantity.ofSi(OverflowCheck.leastBoreM(List.of(inflow), 2, head), Units.MM);
        answer.number("overflowBoreOfTwo", "Bore of each of two overflows, one blocked", bore, Step.of("D",
                "least bore whose flow under that depth is all that comes in", "Qv(D, h) = Qi", bore, OVERFLOW, depth,
                new Input("Qi", "all inlets", flow(inflow))));
        answer.caution(new Caution("tank.overflow-single", Severity.WARNING, tank.getId(),
                "{0} has one overflow: blocked, it lets nothing out. Two of {1} hold with either of them blocked.",
                List.of(Names.of(tank), bore), "", Source.commonPractice("overflow is sized with one outlet blocked")));
    }

    private static void vent(AnswerBuilder answer, Tank tank, double inflow) {
        if (tank.getCover() == TankCover.OPEN) {
            return;
        }
        double neededM2 = Vent.areaM2(Math.min(100, inflow), Vent.DEFAULT_PRESSURE_PA, MESH_OPEN_RATIO);
        Quantity needed = Quantity.ofSi(neededM2, Units.CM2);
        answer.number("ventNeeded", "Vent that it needs, mesh included", needed,
                new Step("o", "open share of the mesh", "o", List.of(), "", Quantity.of(MESH_OPEN_RATIO), MESH),
                Step.of("Av", "as much air must leave as water comes in", "Qi / (Cd sqrt(2 dp / rho)) / o", needed,
                        KernelTerms.source(Vent.PRESSURE_SOURCE), new Input("Qi", "all inlets", flow(inflow)),
                        new Input("dp", "pressure it may bear", Quantity.of(Vent.DEFAULT_PRESSURE_PA, Units.PA)),
                        new Input("o", "open share", Quantity.of(MESH_OPEN_RATIO))));
        if (tank.getVentArea() != null && tank.getVentArea().si() < neededM2) {
            answer.caution(new Caution("tank.vent-small", Severity.WARNING, tank.getId(),
                    "The vent of {0} is {1} and needs {2}: pressure or suction may crack it, and air will leave "
                            + "through the overflow's water seal.", List.of(Names.of(tank), tank.getVentArea(), needed), "",
                    KernelTerms.source(Vent.PRESSURE_SOURCE)));
        }
    }

    private static void calmed(AnswerBuilder answer, Tank tank, double inflow) {
        Quantity mouth = Quantity.ofSi(CalmedInlet.mouthForM2(Math.min(100, inflow),
                CalmedInlet.DEFAULT_VELOCITY_M_PER_S), Units.CM2);
        answer.number("calmedMouth", "Inlet mouth that leaves the sediment lying", mouth, Step.of("Am",
                "mouth turned up near the floor, wide enough for slow water", "Qi / v", mouth,
                KernelTerms.source(CalmedInlet.VELOCITY_SOURCE), new Input("Qi", "all inlets", flow(inflow)),
                new Input("v", "velocity", Quantity.of(CalmedInlet.DEFAULT_VELOCITY_M_PER_S, Units.M_PER_S))));
        if (!tank.isCalmedInlet()) {
            answer.caution(new Caution("tank.inlet-stirs", Severity.INFO, tank.getId(),
                    "Water that falls into {0} stirs up its sediment; lead it to a mouth of {1} turned up near the "
                            + "floor.",
                    List.of(Names.of(tank), mouth), "", KernelTerms.source(CalmedInlet.VELOCITY_SOURCE)));
        }
    }

    private void floating(AnswerBuilder answer, Tank tank) {
        for (Pump pump : site.getPumps()) {
            Optional<List<PipeRun>> suction = pump.isInUse() ? paths.upstream(pump, Tank.class::isInstance)
                    : Optional.empty();
            OptionalDouble drawn = pumpedM3PerS.apply(pump);
            boolean from = suction.filter(runs -> runs.getFirst().getFrom() == tank).isPresent();
            if (tank.isFloatingIntake() && from && drawn.isPresent() && suction.get().getFirst().getBore() != null) {
                submerged(answer, tank, pump, drawn.getAsDouble(), suction.get().getFirst());
                return;
            }
        }
    }

    private static void submerged(AnswerBuilder answer, Tank tank, Pump pump, double drawn, PipeRun suction) {
        try {
            FloatingIntake intake = new FloatingIntake(drawn, suction.getBore().si(),
                    FloatingIntake.DEFAULT_FLOOR_CLEARANCE_M);
            Quantity lowest = Quantity.of(intake.lowestLevelM(), Units.M);
            answer.number("lowestDrawn", "Lowest water that its floating intake can draw", lowest,
                    new Step("c", "clearance from the floor", "c", List.of(), "",
                            Quantity.of(intake.floorClearanceM(), Units.M),
                            KernelTerms.source(FloatingIntake.CLEARANCE_SOURCE)),
                    Step.of("z", "clearance and the depth that keeps a vortex from drawing air",
                            "c + D (1 + 2.3 V / sqrt(g D))", lowest,
                            KernelTerms.source(FloatingIntake.SUBMERGENCE_SOURCE),
                            new Input("c", "clearance", Quantity.of(intake.floorClearanceM(), Units.M)),
                            new Input("D", "bore", suction.getBore(), suction.getId(), "bore"),
                            new Input("V", "velocity", Quantity.of(intake.velocityMPerS(), Units.M_PER_S))));
            if (pump.getCutOutHeight() != null && pump.getCutOutHeight().si() < intake.lowestLevelM()) {
                answer.caution(new Caution("tank.intake-air", Severity.WARNING, tank.getId(),
                        "{0} stops at {1} of water; below {2} its floating intake draws air.",
                        List.of(Names.of(pump), pump.getCutOutHeight(), lowest), "",
                        KernelTerms.source(FloatingIntake.SUBMERGENCE_SOURCE)));
            }
        } catch (IllegalArgumentException e) {
            notChecked(answer, tank, "floating intake", e.getMessage());
        }
    }

    private static void notChecked(AnswerBuilder answer, Tank tank, String what, String why) {
        answer.caution(new Caution("drainage.not-checked", Severity.INFO, tank.getId(),
                "The {0} of {1} is not checked: {2}.", List.of(what, Names.of(tank), why), "",
                Source.definition("what is known of the site")));
    }

    private static Quantity flow(double flowM3PerS) {
        return Quantity.ofSi(flowM3PerS, Units.L_PER_S);
    }
}
