package org.roofspring.calc.standard.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

import org.roofspring.calc.Caution;
import org.roofspring.calc.Caution.Severity;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.Source;
import org.roofspring.calc.Working.Input;
import org.roofspring.calc.Working.Step;
import org.roofspring.hydraulics.PhysicalConstants;
import org.roofspring.hydraulics.pump.DutyOutcome;
import org.roofspring.hydraulics.pump.DutyPoint;
import org.roofspring.hydraulics.pump.DutySolver;
import org.roofspring.hydraulics.pump.EnergyBasis;
import org.roofspring.hydraulics.pump.NpshMargin;
import org.roofspring.hydraulics.pump.PumpSet;
import org.roofspring.hydraulics.pump.SystemCurve;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Unit;
import org.roofspring.quantity.Units;

/** Where a pump settles on its system, in words. */
public final class DutyAnswer {
    static final String ELECTRICITY = "Electricity beside water: a 30 mA residual-current device, earthing and a dry-run"
            + " cut-out belong to every pump; never work on it live.";
    static final String ELECTRICIAN = "Ask a licensed electrician and follow the local code.";
    static final Source ELECTRICITY_SOURCE = Source.fromMemory("IEC 60364");
    private static final Source MEASURED = Source.definition("read from the measured points, joined by a curve that keeps their shape");
    private static final Source POWER = Source.definition("power given to the water");
    private static final Source MARGIN = Source.fromMemory("ANSI/HI 9.6.1, Rotodynamic pumps, guideline for NPSH margin");

    private DutyAnswer() {
    }

    /**
     * @param elementId of the pump, or null
     * @return the duty point, or why there is none
     */
    public static Outcome of(String elementId, PumpSet pumps, SystemCurve system) {
        DutyOutcome outcome = DutySolver.solve(pumps, system);
        if (outcome.working().isEmpty()) {
            return new Outcome.NotComputable(List.of(new Outcome.Problem(elementId, elementId == null ? null : "points",
                            "There is no duty point: " + outcome.reason() + ".")),
                    List.of());
        }
        DutyPoint duty = outcome.working().get();
        AnswerBuilder answer = new AnswerBuilder(elementId);
        Input flow = new Input("Q", "flow", Quantity.of(duty.flowM3PerS(), Units.M3_PER_S));
        Input head = new Input("H", "head", Quantity.of(duty.headM(), Units.M));
        Input density = new Input("rho", "density", Quantity.of(system.water().densityKgPerM3(), Units.KG_PER_M3));
        Input gravity = new Input("g", "standard gravity, m/s2", Quantity.of(PhysicalConstants.GRAVITY_M_PER_S2));
        answer.number("flow", "Flow at the duty point", flow.value(),
                Step.of("Q", "flow at which the pump's head is the head the system needs; bracketed and solved to machine precision",
                        "Hpump(Q) = Hsystem(Q)", flow.value(), Source.definition("intersection of pump curve and system curve"), head));
        answer.number("head", "Head at the duty point", head.value(), headStep(system, duty, flow));
        answer.number("hydraulicPower", "Power given to the water", duty.hydraulicPowerW(), Units.W,
                Step.of("P", "hydraulic power", "rho g Q H", Quantity.of(duty.hydraulicPowerW(), Units.W), POWER, density, gravity, flow, head));
        Input hydraulic = new Input("P", "hydraulic power", Quantity.of(duty.hydraulicPowerW(), Units.W));
        optional(answer, "efficiency", "Pump efficiency", duty.efficiency(), Units.PERCENT, "eta", "read at Q", MEASURED, flow);
        if (duty.efficiency().isPresent()) {
            optional(answer, "shaftPower", "Power at the shaft", duty.shaftPowerW(), Units.W, "Ps", "P / eta", POWER, hydraulic,
                    new Input("eta", "pump efficiency", Quantity.ofSi(duty.efficiency().getAsDouble(), Units.PERCENT)));
        }
        optional(answer, "inputPower", "Power taken by the motor", duty.inputPowerW(), Units.W, "Pe", inputRule(duty), POWER,
                inputOf(duty, flow));
        answer.number("npshAvailable", "NPSH available", duty.npshAvailableM(), Units.M, npshStep(system, duty, density, gravity));
        optional(answer, "npshRequired", "NPSH required", duty.npshRequiredM(), Units.M, "NPSHr", "read at Q", MEASURED, flow);
        duty.npshMarginM().ifPresent(margin -> answer.number("npshMargin", "NPSH margin", margin, Units.M,
                Step.of("m", "margin", "NPSHa - NPSHr", Quantity.of(margin, Units.M), Source.definition("difference"),
                        new Input("NPSHa", "NPSH available", Quantity.of(duty.npshAvailableM(), Units.M)),
                        new Input("NPSHr", "NPSH required", Quantity.of(duty.npshRequiredM().getAsDouble(), Units.M)))));
        specificEnergy(answer, duty, flow);
        duty.flowOverBest().ifPresent(share -> answer.share("flowOverBest", "Flow over best-efficiency flow", share,
                Step.of("q", "flow over the flow of best measured efficiency", "Q / Qbest", Quantity.ofSi(share, Units.PERCENT), MEASURED, flow)));
        if (outcome instanceof DutyOutcome.Meets meets) {
            answer.add("intersections", "All intersections", intersections(meets));
        }
        cautions(elementId, outcome, duty).forEach(answer::caution);
        return answer.build();
    }

    private static void optional(AnswerBuilder answer, String id, String title, OptionalDouble value, Unit unit, String symbol, String formula,
            Source source, Input... inputs) {
        value.ifPresent(v -> answer.number(id, title, Quantity.ofSi(v, unit),
                Step.of(symbol, title.toLowerCase(java.util.Locale.ROOT), formula, Quantity.ofSi(v, unit), source, inputs)));
    }

    private static Step headStep(SystemCurve system, DutyPoint duty, Input flow) {
        double suctionM = system.suction().loss().headM(duty.flowM3PerS());
        double deliveryM = system.delivery().headM(duty.flowM3PerS());
        return Step.of("H", "head that the system needs at this flow", "Hs + hd + hsu", Quantity.of(duty.headM(), Units.M),
                Source.definition("energy along the run"), new Input("Hs", "static head", Quantity.of(system.staticHeadM(), Units.M)),
                new Input("hd", "loss in the delivery", Quantity.of(deliveryM, Units.M)),
                new Input("hsu", "loss in the suction", Quantity.of(suctionM, Units.M)), flow);
    }

    private static Input[] inputOf(DutyPoint duty, Input flow) {
        if (duty.energyBasis().orElse(EnergyBasis.SHAFT) != EnergyBasis.MOTOR_EFFICIENCY) {
            return new Input[] {flow};
        }
        double shaftW = duty.shaftPowerW().getAsDouble();
        return new Input[] {new Input("Ps", "power at the shaft", Quantity.of(shaftW, Units.W)),
            new Input("etam", "motor efficiency", Quantity.of(shaftW / duty.inputPowerW().getAsDouble()))};
    }

    private static String inputRule(DutyPoint duty) {
        return duty.energyBasis().orElse(EnergyBasis.SHAFT) == EnergyBasis.MEASURED_INPUT ? "measured, read at Q" : "Ps / etam";
    }

    private static Step npshStep(SystemCurve system, DutyPoint duty, Input density, Input gravity) {
        return Step.of("NPSHa", "net positive suction head available", "(pa - pv) / (rho g) - z - hs", Quantity.of(duty.npshAvailableM(), Units.M),
                Source.published("definition of NPSH; vapour pressure by IAPWS SR1-86, air pressure by US Standard Atmosphere 1976"),
                new Input("pa", "air pressure", Quantity.ofSi(system.airPressurePa(), Units.KPA)),
                new Input("pv", "vapour pressure", Quantity.ofSi(system.water().vapourPressurePa(), Units.KPA)), density, gravity,
                new Input("z", "suction lift", Quantity.of(system.suction().liftM(), Units.M)),
                new Input("hs", "loss in the suction", Quantity.of(system.suction().loss().headM(duty.flowM3PerS()), Units.M)));
    }

    private static void specificEnergy(AnswerBuilder answer, DutyPoint duty, Input flow) {
        duty.specificEnergyJPerM3().ifPresent(energy -> {
            Quantity value = Quantity.ofSi(energy, Units.WH_PER_M3);
            boolean input = duty.inputPowerW().isPresent();
            double powerW = input ? duty.inputPowerW().getAsDouble() : duty.shaftPowerW().getAsDouble();
            String basis = switch (duty.energyBasis().orElseThrow()) {
                case MEASURED_INPUT -> "from the measured input power";
                case MOTOR_EFFICIENCY -> "at the motor's terminals";
                case SHAFT -> "at the shaft; the motor takes more";
            };
            answer.number("specificEnergy", "Energy for each volume, " + basis, value, Step.of("e", "energy for each volume, " + basis, "Pin / Q", value,
                    Source.definition("energy"), new Input("Pin", input ? "input power" : "shaft power", Quantity.of(powerW, Units.W)), flow));
        });
    }

    private static FindingValue.Table intersections(DutyOutcome.Meets meets) {
        return new FindingValue.Table(List.of("Flow", "Head", "Stable"), meets.points().stream()
                .map(point -> List.<Object>of(Quantity.ofSi(point.flowM3PerS(), Units.L_PER_S), Quantity.of(point.headM(), Units.M), point.stable())).toList());
    }

    private static List<Caution> cautions(String elementId, DutyOutcome outcome, DutyPoint duty) {
        List<Caution> cautions = new ArrayList<>();
        if (!outcome.reason().isEmpty()) {
            cautions.add(new Caution("pump.unsteady", Severity.WARNING, elementId, "Note that {0}.", List.of(outcome.reason()), "",
                    Source.definition("shape of the two curves")));
        }
        duty.npshRequiredM().ifPresent(requiredM -> {
            Quantity needed = Quantity.of(NpshMargin.USUAL.neededM(requiredM), Units.M);
            if (duty.npshAvailableM() < needed.value()) {
                cautions.add(new Caution("pump.npsh", Severity.WARNING, elementId,
                        "NPSH available is {0}; with its margin the pump needs {1}. Below that expect cavitation, noise and"
                                + " damage: lower the pump or widen the suction.",
                        List.of(Quantity.of(duty.npshAvailableM(), Units.M), needed), "", MARGIN));
            }
        });
        duty.flowOverBest().ifPresent(share -> {
            if (share < 0.7 || share > 1.2) {
                cautions.add(new Caution("pump.off-best", Severity.INFO, elementId,
                        "The pump runs at {0} of its best-efficiency flow; 70 % to 120 % is usual.", List.of(Quantity.ofSi(share, Units.PERCENT)), "",
                        Source.commonPractice("preferred range about the best-efficiency flow")));
            }
        });
        cautions.add(new Caution("pump.electricity", Severity.DANGER, elementId, ELECTRICITY, List.of(), ELECTRICIAN,
                ELECTRICITY_SOURCE));
        return cautions;
    }
}
