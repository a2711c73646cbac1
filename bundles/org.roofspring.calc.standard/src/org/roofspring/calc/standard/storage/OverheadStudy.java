package org.roofspring.calc.standard.storage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.roofspring.calc.CalculationContext;
import org.roofspring.calc.Caution;
import org.roofspring.calc.Caution.Severity;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.Inputs;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.Outcome.Problem;
import org.roofspring.calc.Source;
import org.roofspring.calc.standard.answer.AnswerBuilder;
import org.roofspring.calc.standard.water.Given;
import org.roofspring.calc.standard.water.Names;
import org.roofspring.calc.standard.water.PipePaths;
import org.roofspring.calc.standard.water.TankWater;
import org.roofspring.quantity.Units;
import org.roofspring.site.EnergySource;
import org.roofspring.site.Pump;
import org.roofspring.site.PumpKind;
import org.roofspring.site.Site;
import org.roofspring.site.SitePackage;
import org.roofspring.site.Tank;
import org.roofspring.storage.outlook.TankGauge;
import org.roofspring.storage.withinday.OverheadSystem;
import org.roofspring.storage.withinday.OverheadSystem.Control;
import org.roofspring.storage.withinday.OverheadTank;

/** Reads the overhead tanks of a site, with the pumps that fill them and the uses they serve. */
public final class OverheadStudy {
    private OverheadStudy() {
    }

    /** Tanks with a starting and a stopping height that a pump fills. */
    public static List<Tank> tanks(Site site) {
        return site.getTanks().stream().filter(tank -> tank.isInUse() && tank.getCapacity() != null
                && tank.getStartHeight() != null && tank.getStopHeight() != null && !pumps(site, tank).isEmpty())
                .toList();
    }

    private static List<Pump> pumps(Site site, Tank tank) {
        PipePaths paths = new PipePaths(site);
        return site.getPumps().stream().filter(pump -> pump.isInUse()
                && paths.deliveredTank(pump).filter(filled -> filled == tank).isPresent()).toList();
    }

    /** The findings about every such tank. */
    public static Outcome of(Site site, Inputs inputs, CalculationContext context) {
        AnswerBuilder all = new AnswerBuilder(null);
        List<Problem> problems = new ArrayList<>();
        boolean any = false;
        for (Tank tank : tanks(site)) {
            switch (read(site, tank, inputs)) {
                case Reading.Found found -> {
                    all.include(new OverheadFindings(site, tank, found).find(context.cancelled()));
                    any = true;
                }
                case Reading.Missing missing -> problems.add(missing.problem());
            }
        }
        problems.forEach(problem -> all.caution(new Caution("overhead.unread", Severity.WARNING, problem.elementId(),
                "{0}",
                List.of(problem.text()), "", Source.definition("how the model was read"))));
        return any ? all.build() : new Outcome.NotComputable(problems, List.of());
    }

    /** A tank that can be run, or why not. */
    sealed interface Reading {
        /** It can. */
        record Found(OverheadSystem system, OverheadUse use, List<Pump> pumps) implements Reading {
        }

        /** It cannot. */
        record Missing(Problem problem) implements Reading {
        }
    }

    private static Reading read(Site site, Tank tank, Inputs inputs) {
        Optional<TankGauge> gauge = TankWater.gauge(tank);
        if (gauge.isEmpty()) {
            return missing(tank, "height", "The height of " + Names.of(tank)
                    + " is missing, or its curve of volumes does not rise.");
        }
        List<Pump> pumps = pumps(site, tank);
        List<Double> flows = new ArrayList<>();
        for (Pump pump : pumps) {
            OptionalDouble flow = flowM3PerS(pump, inputs);
            if (flow.isEmpty()) {
                return new Reading.Missing(new Problem(pump.getId(), null, "The flow of " + Names.of(pump)
                        + " is not known: it has no duty point, or no strokes."));
            }
            flows.add(flow.getAsDouble());
        }
        OverheadUse use = OverheadUse.of(site, pumps);
        if (use.totalM3() == 0) {
            return missing(tank, null, "No use draws on " + Names.of(tank) + ".");
        }
        double capacityM3 = tank.getCapacity().si();
        double deadM3 = Math.min(capacityM3, Given.si(tank, SitePackage.Literals.TANK__DEAD_VOLUME, 0));
        try {
            OverheadTank kernelTank = new OverheadTank(capacityM3, deadM3,
                    Math.min(capacityM3, gauge.get().volumeM3(tank.getStartHeight().si())),
                    Math.min(capacityM3, gauge.get().volumeM3(tank.getStopHeight().si())));
            return new Reading.Found(new OverheadSystem(kernelTank,
                    OverheadUse.lift(pumps, flows, use.date().getDayOfWeek()), use.draw(), control(pumps)), use, pumps);
        } catch (IllegalArgumentException e) {
            return missing(tank, "startHeight", Names.of(tank) + ": the heights at which its pump starts and stops "
                    + "do not fit; "
                    + e.getMessage() + ".");
        }
    }

    private static Reading missing(Tank tank, String feature, String text) {
        return new Reading.Missing(new Problem(tank.getId(), feature, text));
    }

    /** Sun and people fill the tank when they come, motors when the level is low. */
    private static Control control(List<Pump> pumps) {
        return pumps.stream().allMatch(pump -> pump.getKind() == PumpKind.HAND_PUMP
                || pump.getEnergySource() == EnergySource.SOLAR || pump.getEnergySource() == EnergySource.HAND)
                        ? Control.LEVELS_AND_RETURN_OF_POWER : Control.LEVELS;
    }

    private static OptionalDouble flowM3PerS(Pump pump, Inputs inputs) {
        if (pump.getStrokeVolume() != null && pump.getStrokesPerMinute() != null) {
            return OptionalDouble.of(pump.getStrokeVolume().si() * pump.getStrokesPerMinute().si() / 60);
        }
        return inputs.finding("pump.duty", "flow", pump.getId())
                .map(finding -> OptionalDouble.of(((FindingValue.Number) finding.value()).quantity()
                .in(Units.M3_PER_S)))
                .orElse(OptionalDouble.empty());
    }
}
