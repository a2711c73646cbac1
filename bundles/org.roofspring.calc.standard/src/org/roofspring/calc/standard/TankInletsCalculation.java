package org.roofspring.calc.standard;

import java.util.Optional;
import java.util.OptionalDouble;

import org.osgi.service.component.annotations.Component;
import org.roofspring.calc.Applicability;
import org.roofspring.calc.Calculation;
import org.roofspring.calc.CalculationContext;
import org.roofspring.calc.CalculationInfo;
import org.roofspring.calc.Finding;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.Inputs;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.standard.answer.AnswerBuilder;
import org.roofspring.calc.standard.drainage.TankInflow;
import org.roofspring.site.Tank;
import org.roofspring.site.snapshot.SiteSnapshot;

/** Overflow, vent, inlet and intake of each tank with all that may come in at once. */
@Component
@CalculationInfo(id = "tank.inlets", version = "1", title = "Overflow and inlets of tanks", reads = { "Tank",
    "PipeRun.from", "PipeRun.to", "PipeRun.inUse", "PipeRun.bore", "Pump.inUse", "Pump.name", "Pump.cutOutHeight" },
        requires = "roof.drainage", uses = "pump.duty")
public final class TankInletsCalculation implements Calculation {

    @Override
    public Applicability check(SiteSnapshot snapshot) {
        return snapshot.site().getTanks().stream().anyMatch(Tank::isInUse) ? Applicability.yes()
                : Applicability.no("There is no tank.");
    }

    @Override
    public Outcome calculate(SiteSnapshot snapshot, Inputs inputs, CalculationContext context) {
        TankInflow inflow = new TankInflow(snapshot.site(),
                tank -> flow(inputs.finding("roof.drainage", "flow", tank.getId())).orElse(0),
                pump -> flow(inputs.finding("pump.duty", "flow", pump.getId())));
        AnswerBuilder answer = new AnswerBuilder(null);
        for (Tank tank : snapshot.site().getTanks()) {
            if (tank.isInUse()) {
                answer.include(inflow.of(tank));
            }
        }
        return answer.build();
    }

    private static OptionalDouble flow(Optional<Finding> finding) {
        return finding.map(f -> OptionalDouble.of(((FindingValue.Number) f.value()).quantity().si()))
                .orElse(OptionalDouble.empty());
    }
}
