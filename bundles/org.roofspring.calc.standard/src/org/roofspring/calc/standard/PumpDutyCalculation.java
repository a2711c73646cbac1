package org.roofspring.calc.standard;

import java.util.ArrayList;
import java.util.List;

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
import org.roofspring.calc.standard.answer.AnswerBuilder;
import org.roofspring.calc.standard.pumping.DutyFindings;
import org.roofspring.calc.standard.water.PumpedWater;
import org.roofspring.site.Pump;
import org.roofspring.site.snapshot.SiteSnapshot;

/**
 * Static head, friction and duty point of every pump with a curve, the range over levels, temperature and age, its
 * suction on the worst day, and water hammer.
 */
@Component
@CalculationInfo(id = "pump.duty", version = "2", title = "Pump duty", reads = { "Pump", "PumpPoint", "PipeRun", "Fitting",
        "ProfilePoint", "PressureVessel", "Tank.baseLevel", "Tank.height", "Tank.outletHeight", "Tank.overflowHeight",
        "Tank.inletHeight", "Tank.startHeight", "Tank.stopHeight", "Tank.inUse", "Site.altitude",
        "Site.waterTemperatureMin", "Site.waterTemperatureUsual", "Site.waterTemperatureMax" })
public final class PumpDutyCalculation implements Calculation {
    @Override
    public Applicability check(SiteSnapshot snapshot) {
        return snapshot.site().getPumps().stream().anyMatch(PumpedWater::hasCurve) ? Applicability.yes()
                : Applicability.no("There is no pump with measured points.");
    }

    @Override
    public Outcome calculate(SiteSnapshot snapshot, Inputs inputs, CalculationContext context) {
        AnswerBuilder all = new AnswerBuilder(null);
        List<Outcome.Problem> problems = new ArrayList<>();
        boolean any = false;
        for (Pump pump : snapshot.site().getPumps()) {
            if (PumpedWater.hasCurve(pump)) {
                context.checkCancelled();
                switch (DutyFindings.of(snapshot.site(), pump)) {
                    case Outcome.Completed completed -> {
                        all.include(completed);
                        any = true;
                    }
                    case Outcome.NotComputable none -> problems.addAll(none.problems());
                }
            }
        }
        problems.forEach(problem -> all.caution(new Caution("pump.no-duty", Severity.WARNING, problem.elementId(), "{0}",
                List.of(problem.text()), "", Source.definition("pump and system"))));
        return any ? all.build() : new Outcome.NotComputable(problems, all.build().cautions());
    }
}
