package org.roofspring.calc.standard;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

import org.osgi.service.component.annotations.Component;
import org.roofspring.calc.Applicability;
import org.roofspring.calc.Calculation;
import org.roofspring.calc.CalculationContext;
import org.roofspring.calc.CalculationInfo;
import org.roofspring.calc.Inputs;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.standard.stages.StageStudy;
import org.roofspring.calc.standard.water.SiteStorage;
import org.roofspring.economy.stages.StagePlan;
import org.roofspring.site.snapshot.SiteSnapshot;

/** What each stage and option delivers and costs, the best order to build in, and what the budget buys. */
@Component
@CalculationInfo(id = "site.stages", version = "1", title = "Stages and options", reads = "*", requires = "rain.record",
        uses = { "pump.duty", "roof.drainage" }, deadline = 300)
public final class SiteStagesCalculation implements Calculation {

    @Override
    public Applicability check(SiteSnapshot snapshot) {
        List<String> reasons = new ArrayList<>(SiteStorage.check(snapshot.site()).reasons());
        int stages = StageStudy.active(snapshot.site()).size();
        if (stages == 0 && StageStudy.options(snapshot.site()).isEmpty()) {
            reasons.add("There is neither a stage nor an option.");
        }
        if (stages > StagePlan.MOST_OPTIONS) {
            reasons.add("There are " + stages + " stages; up to " + StagePlan.MOST_OPTIONS + " can be weighed.");
        }
        return new Applicability(reasons);
    }

    @Override
    public Outcome calculate(SiteSnapshot snapshot, Inputs inputs, CalculationContext context) {
        return StageStudy.of(snapshot, inputs, OptionalDouble.empty(), context);
    }
}
