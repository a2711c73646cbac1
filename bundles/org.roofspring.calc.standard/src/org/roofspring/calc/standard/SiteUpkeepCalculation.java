package org.roofspring.calc.standard;

import org.osgi.service.component.annotations.Component;
import org.roofspring.calc.Applicability;
import org.roofspring.calc.Calculation;
import org.roofspring.calc.CalculationContext;
import org.roofspring.calc.CalculationInfo;
import org.roofspring.calc.Inputs;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.standard.upkeep.UpkeepFindings;
import org.roofspring.calc.standard.upkeep.UpkeepPlan;
import org.roofspring.site.snapshot.SiteSnapshot;

/** Which work falls due in the year after the latest day noted in the site. */
@Component
@CalculationInfo(id = "site.upkeep", version = "1", title = "Upkeep", reads = "*", uses = "rain.record")
public final class SiteUpkeepCalculation implements Calculation {

    @Override
    public Applicability check(SiteSnapshot snapshot) {
        if (!UpkeepPlan.applies(snapshot.site())) {
            return Applicability.no("There is neither an upkeep task nor a treatment step that is changed.");
        }
        return UpkeepPlan.latestDay(snapshot.site()).isPresent() ? Applicability.yes()
                : Applicability.no("No day is noted in the site, such as when a task was last done, to look ahead"
                        + " from.");
    }

    @Override
    public Outcome calculate(SiteSnapshot snapshot, Inputs inputs, CalculationContext context) {
        return UpkeepFindings.of(snapshot.site(), inputs, UpkeepPlan.latestDay(snapshot.site()).orElseThrow(),
                UpkeepFindings.DAYS);
    }
}
