package org.roofspring.calc.standard.pumping;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.roofspring.calc.Caution;
import org.roofspring.calc.Caution.Severity;
import org.roofspring.calc.Source;
import org.roofspring.calc.Working.Input;
import org.roofspring.calc.Working.Step;
import org.roofspring.calc.standard.answer.AnswerBuilder;
import org.roofspring.calc.standard.water.PipeLosses;
import org.roofspring.calc.standard.water.PumpedWater;
import org.roofspring.hydraulics.HeadLoss;
import org.roofspring.hydraulics.PipeSize;
import org.roofspring.hydraulics.WaterHammer;
import org.roofspring.hydraulics.WaterProperties;
import org.roofspring.hydraulics.pump.DutyPoint;
import org.roofspring.hydraulics.pump.PumpSet;
import org.roofspring.hydraulics.pump.SystemCurve;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.PipeRun;
import org.roofspring.site.ProfilePoint;

/** The highest pressure in a delivery: running pressure and surge, or the pump against a closed valve. */
final class SurgeFindings {
    private static final Source JOUKOWSKY = Source.fromMemory(
            "Joukowsky 1898; wave speed after Wylie and Streeter, Fluid Transients in Systems, 1993");
    private static final Source MICHAUD = Source.fromMemory(
            "Michaud 1878, slow even closure; wave speed after Wylie and Streeter, Fluid Transients in Systems, 1993");

    private final AnswerBuilder answer;
    private final PumpedWater pumped;
    private final WaterProperties water;
    private final DutyPoint duty;
    private final double gradeM;
    private final double closedValveM;

    private SurgeFindings(AnswerBuilder answer, PumpedWater pumped, PumpSet pumps, SystemCurve system, DutyPoint duty) {
        this.answer = answer;
        this.pumped = pumped;
        this.water = system.water();
        this.duty = duty;
        HeadLoss delivery = system.delivery();
        gradeM = pumped.dischargeLevelM().high() + delivery.headM(duty.flowM3PerS());
        closedValveM = pumped.suctionLevelM().high() + pumps.headM(pumps.lowestFlowM3PerS());
    }

    /** The surge of the delivery run that comes nearest to its pressure class, or that is highest where none has one. */
    static void add(AnswerBuilder answer, PumpedWater pumped, PumpSet pumps, SystemCurve system, DutyPoint duty) {
        new SurgeFindings(answer, pumped, pumps, system, duty).add();
    }

    private void add() {
        Optional<Surge> worst = Optional.empty();
        for (PipeRun run : pumped.deliveryRuns()) {
            Optional<Surge> surge = surge(run);
            if (surge.isPresent() && (worst.isEmpty() || surge.get().severity() > worst.get().severity())) {
                worst = surge;
            }
        }
        worst.ifPresent(this::say);
    }

    /** The surge of a run; absent, with a caution, where its wall is not known. */
    private Optional<Surge> surge(PipeRun run) {
        if (run.getWallThickness() == null || run.getLength().si() < 0.01) {
            if (run.getWallThickness() == null) {
                caution("pipe.no-wall", Severity.INFO, run, "The wall of {0} is not given, so its water hammer is not"
                        + " known.", Source.definition("how the model was read"), name(run));
            }
            return Optional.empty();
        }
        try {
            double wallM = run.getWallThickness().si();
            PipeSize pipe = new PipeSize(name(run), PipeLosses.material(run.getMaterial()),
                    run.getBore().si() + 2 * wallM, wallM, OptionalDouble.empty(), "entered");
            double velocityMPerS = PipeLosses.ageing(run).fresh().lossAt(duty.flowM3PerS(), water).velocityMPerS();
            double stopS = run.getClosureTime() == null ? 0 : run.getClosureTime().si();
            return Optional.of(new Surge(run, pipe, velocityMPerS, stopS,
                    WaterHammer.of(pipe, run.getLength().si(), velocityMPerS, stopS, water),
                    water.pressurePa(Math.max(0, gradeM - lowestM(run))),
                    water.pressurePa(Math.max(0, closedValveM - lowestM(run)))));
        } catch (IllegalArgumentException e) {
            caution("pipe.no-surge", Severity.INFO, run, "The water hammer of {0} is not known: {1}.",
                    Source.definition("how the model was read"), name(run), e.getMessage());
            return Optional.empty();
        }
    }

    /** Lowest point that is known of a run; the pump's level where its profile is not given. */
    private double lowestM(PipeRun run) {
        return run.getProfile().stream().map(ProfilePoint::getLevel).filter(level -> level != null)
                .mapToDouble(Quantity::si).min().orElse(pumped.line().pumpLevelM());
    }

    private void say(Surge surge) {
        PipeRun run = surge.run;
        WaterHammer hammer = surge.hammer;
        Quantity rise = Quantity.ofSi(hammer.surgePressurePa(), Units.KPA);
        Quantity wave = Quantity.of(hammer.waveSpeedMPerS(), Units.M_PER_S);
        Quantity back = Quantity.of(hammer.returnTimeS(), Units.S);
        Input velocity = new Input("v", "velocity", Quantity.of(surge.velocityMPerS, Units.M_PER_S));
        Input density = new Input("rho", "density", Quantity.of(water.densityKgPerM3(), Units.KG_PER_M3));
        Input length = new Input("L", "length", run.getLength(), run.getId(), "length");
        Input stop = new Input("t", run.getClosureTime() == null ? "time of closing, not given: at once"
                : "time of closing", Quantity.of(surge.stopS, Units.S), run.getId(), "closureTime");
        Step[] steps = {
            Step.of("a", "speed of a pressure wave in the pipe, K and E of water and wall", "sqrt(K / rho) / sqrt(1 + c"
                    + " (K / E) (D / e))", wave, JOUKOWSKY, density, new Input("K", "bulk modulus of water",
                    Quantity.ofSi(WaterHammer.BULK_MODULUS_PA, Units.KPA)), new Input("E", "modulus of "
                    + surge.pipe.material().name(), Quantity.ofSi(surge.pipe.material().elasticModulusPa(), Units.KPA)),
                    new Input("D", "bore", run.getBore(), run.getId(), "bore"),
                    new Input("e", "wall", run.getWallThickness(), run.getId(), "wallThickness")),
            Step.of("Tr", "return of the wave", "2 L / a", back, Source.definition("time there and back"), length,
                    new Input("a", "wave speed", wave)),
            hammer.quick() ? Step.of("dp", "rise when the flow stops within Tr", "rho a v", rise, JOUKOWSKY, density,
                    new Input("a", "wave speed", wave), velocity, stop)
                    : Step.of("dp", "rise when the flow is stopped evenly over t", "2 rho L v / t", rise, MICHAUD, density,
                            length, velocity, stop)};
        answer.number("surgePressure", "Water hammer in " + name(run), rise, steps);
        highest(surge, rise);
    }

    private void highest(Surge surge, Quantity rise) {
        PipeRun run = surge.run;
        Quantity highest = Quantity.ofSi(surge.highestPa(), Units.KPA);
        answer.number("highestPressure", "Highest pressure in " + name(run), highest,
                Step.of("p", "at the lowest known point: running pressure and surge, or the pump on a closed valve",
                        "max(pr + dp, pc)", highest, Source.definition("both can happen"),
                        new Input("pr", "running pressure", Quantity.ofSi(surge.runningPa, Units.KPA)),
                        new Input("dp", "surge", rise),
                        new Input("pc", "against a closed valve", Quantity.ofSi(surge.closedPa, Units.KPA))));
        if (run.getPressureClass() == null) {
            caution("pipe.no-class", Severity.INFO, run, "The pressure class of {0} is not given; it must bear {1}.",
                    Source.definition("how the model was read"), name(run), highest);
        } else if (surge.highestPa() > run.getPressureClass().si()) {
            caution("pipe.surge", Severity.WARNING, run, "The pressure in {0} can rise to {1}, over its class of {2}: it"
                    + " can burst or its joints pull apart. Close valves slowly, use a check valve that closes without"
                    + " a slam, or take pipe of a higher class.", JOUKOWSKY, name(run), highest, run.getPressureClass());
        }
    }

    private void caution(String code, Severity severity, PipeRun run, String text, Source source, Object... arguments) {
        answer.caution(new Caution(code, severity, run.getId(), text, List.of(arguments), "", source));
    }

    private static String name(PipeRun run) {
        return run.getName() == null ? run.getId() : run.getName();
    }

    /** What can happen in one run. */
    private record Surge(PipeRun run, PipeSize pipe, double velocityMPerS, double stopS, WaterHammer hammer,
            double runningPa, double closedPa) {
        double highestPa() {
            return Math.max(runningPa + hammer.surgePressurePa(), closedPa);
        }

        /** Runs with a class come before those without. */
        double severity() {
            return run.getPressureClass() == null ? highestPa() / 1e12 : highestPa() / run.getPressureClass().si();
        }
    }
}
