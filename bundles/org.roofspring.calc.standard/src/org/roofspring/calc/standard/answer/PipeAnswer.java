package org.roofspring.calc.standard.answer;

import java.util.List;

import org.roofspring.calc.Caution;
import org.roofspring.calc.Caution.Severity;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.Source;
import org.roofspring.calc.Working.Input;
import org.roofspring.calc.Working.Step;
import org.roofspring.hydraulics.FlowRegime;
import org.roofspring.hydraulics.PhysicalConstants;
import org.roofspring.hydraulics.PipeLoss;
import org.roofspring.hydraulics.PipeRun;
import org.roofspring.hydraulics.WaterProperties;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;

/** Head loss of one pipe run at one flow, in words. */
public final class PipeAnswer {
    private static final Source CONTINUITY = Source.definition("continuity");
    private static final Source DARCY = Source.published("Darcy-Weisbach; Moody, Friction factors for pipe flow, 1944");
    private static final Source COLEBROOK = Source.fromMemory(
            "Colebrook, Turbulent flow in pipes, Journal of the Institution of Civil Engineers, 1939");
    private static final double FAST_M_PER_S = 2.5;

    private PipeAnswer() {
    }

    /**
     * @param elementId  of the pipe run, or null
     * @param run        the pipe
     * @param flowM3PerS zero or more
     * @param water      at its temperature
     */
    public static Outcome.Completed of(String elementId, PipeRun run, double flowM3PerS, WaterProperties water) {
        PipeLoss loss = run.lossAt(flowM3PerS, water);
        Input flow = new Input("Q", "flow", Quantity.ofSi(flowM3PerS, Units.L_PER_S));
        Input bore = new Input("D", "bore", Quantity.ofSi(run.boreM(), Units.MM));
        Input length = new Input("L", "length", Quantity.of(run.lengthM(), Units.M));
        Input velocity = new Input("v", "velocity", Quantity.of(loss.velocityMPerS(), Units.M_PER_S));
        Input gravity = new Input("g", "standard gravity, m/s2", Quantity.of(PhysicalConstants.GRAVITY_M_PER_S2));
        Input viscosity = new Input("nu", "kinematic viscosity, m2/s", Quantity.of(water.kinematicViscosityM2PerS()));
        Input reynolds = new Input("Re", "Reynolds number", Quantity.of(loss.reynolds()));
        Input factor = new Input("f", "friction factor", Quantity.of(loss.frictionFactor()));
        Input fittings = new Input("K", "sum of the fittings' coefficients", Quantity.of(run.fittingsK()));
        Quantity friction = Quantity.of(loss.frictionLossM(), Units.M);
        Quantity local = Quantity.of(loss.fittingLossM(), Units.M);
        AnswerBuilder answer = new AnswerBuilder(elementId)
                .number("velocity", "Velocity", loss.velocityMPerS(), Units.M_PER_S,
                        Step.of("v", "mean velocity", "Q / (pi D^2 / 4)", velocity.value(), CONTINUITY, flow, bore))
                .number("reynolds", "Reynolds number", loss.reynolds(), Units.ONE,
                        Step.of("Re", "Reynolds number", "v D / nu", reynolds.value(), Source.definition("Reynolds number; "
                                + "viscosity by IAPWS R12-08 and density by IAPWS-95 at " + water.temperatureC() + " degC"),
                                velocity, bore, viscosity))
                .number("frictionFactor", "Friction factor", loss.frictionFactor(), Units.ONE, frictionStep(run, loss, reynolds, bore))
                .number("frictionLoss", "Friction loss", friction,
                        Step.of("hf", "friction loss", "f (L / D) v^2 / (2 g)", friction, DARCY, factor, length, bore, velocity, gravity))
                .number("fittingLoss", "Loss in fittings", local,
                        Step.of("hk", "loss in fittings", "K v^2 / (2 g)", local, Source.fromMemory(
                                "Crane, Flow of Fluids, Technical Paper 410"), fittings, velocity, gravity))
                .number("totalLoss", "Total loss", loss.totalLossM(), Units.M,
                        Step.of("h", "total loss", "hf + hk", Quantity.of(loss.totalLossM(), Units.M), Source.definition("sum"),
                                new Input("hf", "friction loss", friction), new Input("hk", "loss in fittings", local)));
        cautions(elementId, loss).forEach(answer::caution);
        return answer.build();
    }

    private static Step frictionStep(PipeRun run, PipeLoss loss, Input reynolds, Input bore) {
        Input roughness = new Input("e", "roughness", Quantity.ofSi(run.roughnessM(), Units.MM));
        Quantity result = Quantity.of(loss.frictionFactor());
        return switch (loss.regime()) {
            case AT_REST -> Step.of("f", "friction factor", "0 at rest", result, Source.definition("no flow"));
            case LAMINAR -> Step.of("f", "friction factor, laminar", "64 / Re", result, Source.definition("Hagen-Poiseuille"), reynolds);
            case TRANSITIONAL -> Step.of("f", "friction factor, blended between laminar at Re 2000 and turbulent at Re 4000",
                    "blend of 64 / Re and Colebrook-White", result, Source.commonPractice("a continuous blend; flow is unsteady here"),
                    reynolds);
            case TURBULENT -> Step.of("f", "friction factor, turbulent", "1/sqrt f = -2 log10(e / (3.7 D) + 2.51 / (Re sqrt f))",
                    result, COLEBROOK, roughness, bore, reynolds);
        };
    }

    private static List<Caution> cautions(String elementId, PipeLoss loss) {
        List<Caution> cautions = new java.util.ArrayList<>();
        if (loss.regime() == FlowRegime.TRANSITIONAL) {
            cautions.add(new Caution("pipe.transitional", Severity.INFO, elementId,
                    "At Re {0} the flow is between laminar and turbulent; the loss may differ by half.",
                    List.of(Quantity.of(loss.reynolds())), "", Source.commonPractice("no formula is accurate from Re 2000 to 4000")));
        }
        if (loss.velocityMPerS() > FAST_M_PER_S) {
            cautions.add(new Caution("pipe.fast", Severity.WARNING, elementId,
                    "Water runs at {0}; above {1} expect noise, wear and water hammer.",
                    List.of(Quantity.of(loss.velocityMPerS(), Units.M_PER_S), Quantity.of(FAST_M_PER_S, Units.M_PER_S)), "",
                    Source.commonPractice("usual upper limit of velocity in building pipes")));
        }
        return cautions;
    }
}
