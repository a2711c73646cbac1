package org.roofspring.calc.standard;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.osgi.service.component.annotations.Component;
import org.roofspring.calc.Applicability;
import org.roofspring.calc.Calculation;
import org.roofspring.calc.CalculationContext;
import org.roofspring.calc.CalculationInfo;
import org.roofspring.calc.Caution;
import org.roofspring.calc.Caution.Severity;
import org.roofspring.calc.Inputs;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.Source;
import org.roofspring.calc.Working.Input;
import org.roofspring.calc.Working.Step;
import org.roofspring.calc.standard.answer.AnswerBuilder;
import org.roofspring.calc.standard.answer.DutyAnswer;
import org.roofspring.calc.standard.water.PipeLosses;
import org.roofspring.calc.standard.water.PumpedWater;
import org.roofspring.hydraulics.AgeingRun;
import org.roofspring.hydraulics.Band;
import org.roofspring.hydraulics.PipeLoss;
import org.roofspring.hydraulics.VelocityLimits;
import org.roofspring.hydraulics.WaterProperties;
import org.roofspring.hydraulics.pump.DutyPoint;
import org.roofspring.hydraulics.pump.DutySolver;
import org.roofspring.hydraulics.pump.PumpSet;
import org.roofspring.hydraulics.pump.SystemCurve;
import org.roofspring.hydraulics.pump.WorkingRange;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Unit;
import org.roofspring.quantity.Units;
import org.roofspring.site.Pump;
import org.roofspring.site.Site;
import org.roofspring.site.snapshot.SiteSnapshot;

/** Static head, friction and duty point of every pump with a curve, and the range over levels, temperature and age. */
@Component
@CalculationInfo(id = "pump.duty", version = "1", title = "Pump duty", reads = { "Pump", "PumpPoint", "PipeRun", "Fitting", "Tank.baseLevel", "Tank.height",
        "Tank.outletHeight", "Tank.overflowHeight", "Tank.inletHeight", "Tank.inUse", "Site.altitude", "Site.waterTemperatureMin", "Site.waterTemperatureUsual",
        "Site.waterTemperatureMax" })
public final class PumpDutyCalculation implements Calculation {

    @Override
    public Applicability check(SiteSnapshot snapshot) {
        return snapshot.site().getPumps().stream().anyMatch(PumpedWater::hasCurve) ? Applicability.yes()
                : Applicability.no("There is no pump with measured points.");
    }

    @Override
    public Outcome calculate(SiteSnapshot snapshot, Inputs inputs, CalculationContext context) {
        Site site = snapshot.site();
        AnswerBuilder all = new AnswerBuilder(null);
        List<Outcome.Problem> problems = new ArrayList<>();
        boolean any = false;
        for (Pump pump : site.getPumps()) {
            if (PumpedWater.hasCurve(pump)) {
                context.checkCancelled();
                switch (duty(site, pump)) {
                    case Outcome.Completed completed -> {
                        all.include(completed);
                        any = true;
                    }
                    case Outcome.NotComputable none -> problems.addAll(none.problems());
                }
            }
        }
        problems.forEach(problem -> all.caution(new Caution("pump.no-duty", Severity.WARNING, problem.elementId(), "{0}", List.of(problem.text()), "",
                Source.definition("pump and system"))));
        return any ? all.build() : new Outcome.NotComputable(problems, all.build().cautions());
    }

    private static Outcome duty(Site site, Pump pump) {
        return switch (PumpedWater.read(site, pump)) {
            case PumpedWater.Reading.Missing missing -> new Outcome.NotComputable(
                    missing.sentences().stream().map(sentence -> new Outcome.Problem(pump.getId(), null, sentence)).toList(), List.of());
            case PumpedWater.Reading.Found found -> {
                try {
                    yield duty(pump, found.water(), PumpedWater.pumpSet(pump, pump, pump.getName()));
                } catch (IllegalArgumentException e) {
                    yield new Outcome.NotComputable(new Outcome.Problem(pump.getId(), "points", pump.getName() + ": " + e.getMessage() + "."));
                }
            }
        };
    }

    private static Outcome duty(Pump pump, PumpedWater water, PumpSet pumps) {
        SystemCurve system = water.line().at(water.designState());
        Outcome outcome = DutyAnswer.of(pump.getId(), pumps, system);
        if (!(outcome instanceof Outcome.Completed completed)) {
            return outcome;
        }
        DutyPoint duty = DutySolver.solve(pumps, system).working().orElseThrow();
        AnswerBuilder answer = new AnswerBuilder(pump.getId());
        Quantity staticHead = Quantity.of(system.staticHeadM(), Units.M);
        answer.number("staticHead", "Static head", staticHead, Step.of("Hs", "from the lowest water drawn to the inlet of the tank that is filled", "zd - zs", staticHead,
                Source.definition("difference of levels"), new Input("zd", "level of the discharge", Quantity.of(water.discharge(), Units.M)),
                new Input("zs", "lowest level of the water drawn", Quantity.of(water.low(), Units.M))));
        answer.include(completed);
        range(answer, WorkingRange.of(pumps, water.line(), water.states()));
        water.runs().stream().flatMap(run -> PipeLosses.withoutLoss(run).stream().map(fitting -> run)).distinct().forEach(run -> answer.caution(
                new Caution("pipe.unknown-fitting", Severity.WARNING, run.getId(),
                        "{0} has a fitting whose loss is neither given nor known from its kind; it is taken as nil. Enter its loss coefficient.",
                        List.of(String.valueOf(run.getName())), "", Source.definition("how the model was read"))));
        velocities(answer, pump.getId(), water, duty, system.water());
        return answer.build();
    }

    /** How flow, NPSH margin and energy move with levels, temperature, barometer and age. */
    private static void range(AnswerBuilder answer, WorkingRange range) {
        band(answer, "flow", "Flow", range.flowM3PerS(), Units.M3_PER_S);
        band(answer, "npshMargin", "NPSH margin", range.npshMarginM(), Units.M);
        range.specificEnergyJPerM3().ifPresent(energy -> band(answer, "specificEnergy", "Energy for each volume",
                Optional.of(new Band(energy.low() / 3600, energy.high() / 3600)), Units.WH_PER_M3));
        answer.flag("worksThroughout", "Works at all levels, temperatures and ages", range.worksThroughout());
    }

    private static void band(AnswerBuilder answer, String id, String title, Optional<Band> band, Unit unit) {
        Source corners = Source.definition("duty at every corner of level, temperature, barometer and age of pipe");
        band.ifPresent(b -> {
            answer.number(id + "Lowest", title + ", lowest", b.low(), unit, Step.of("min", title + " in the hardest state", "smallest over all states", Quantity.of(b.low(), unit), corners));
            answer.number(id + "Highest", title + ", highest", b.high(), unit, Step.of("max", title + " in the easiest state", "largest over all states", Quantity.of(b.high(), unit), corners));
        });
    }

    private static void velocities(AnswerBuilder answer, String pumpId, PumpedWater water, DutyPoint duty, WaterProperties properties) {
        velocity(answer, pumpId, "suction", water.line().suction(), VelocityLimits.SUCTION, duty, properties);
        velocity(answer, pumpId, "delivery", water.line().delivery(), VelocityLimits.DELIVERY, duty, properties);
    }

    private static void velocity(AnswerBuilder answer, String pumpId, String where, List<AgeingRun> runs, VelocityLimits limits, DutyPoint duty, WaterProperties properties) {
        for (AgeingRun run : runs) {
            PipeLoss loss = run.fresh().lossAt(duty.flowM3PerS(), properties);
            Quantity velocity = Quantity.of(loss.velocityMPerS(), Units.M_PER_S);
            if (limits.judge(loss.velocityMPerS()) == VelocityLimits.Verdict.TOO_FAST) {
                answer.caution(new Caution("pipe.fast", Severity.WARNING, pumpId, "In the " + where + " pipe water runs at {0}; at most {1} is usual, so a bore of {2} or more.",
                        List.of(velocity, Quantity.of(limits.fastestMPerS(), Units.M_PER_S), Quantity.ofSi(limits.smallestBoreM(duty.flowM3PerS()), Units.MM)), "",
                        Source.commonPractice("velocity limits of pumped pipes")));
            } else if (limits.judge(loss.velocityMPerS()) == VelocityLimits.Verdict.TOO_SLOW) {
                answer.caution(new Caution("pipe.slow", Severity.INFO, pumpId, "In the " + where + " pipe water runs at only {0}; below {1} grit settles and air stays.",
                        List.of(velocity, Quantity.of(limits.slowestMPerS(), Units.M_PER_S)), "", Source.commonPractice("velocity limits of pumped pipes")));
            }
        }
    }
}
