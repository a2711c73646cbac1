package org.roofspring.calc.standard;

import org.osgi.service.component.annotations.Component;
import org.roofspring.calc.Applicability;
import org.roofspring.calc.Calculation;
import org.roofspring.calc.CalculationContext;
import org.roofspring.calc.CalculationInfo;
import org.roofspring.calc.Inputs;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.standard.economy.EconomyFindings;
import org.roofspring.site.snapshot.SiteSnapshot;

/** What the water costs over the years, for each m3 and person, beside other supplies, and what turns the answer. */
@Component
@CalculationInfo(id = "site.economy", version = "1", title = "Life-cycle cost", reads = { "CostItem",
    "AlternativeSupply", "Economy", "UpkeepTask", "TopUp", "SharedScheme", "Use", "Pump.id" }, requires = {
        "rain.record", "storage.balance" }, uses = "pump.running")
public final class SiteEconomyCalculation implements Calculation {

    @Override
    public Applicability check(SiteSnapshot snapshot) {
        return snapshot.site().getCosts().stream().anyMatch(cost -> cost.getAmount() != null) ? Applicability.yes()
                : Applicability.no("There is no cost with an amount.");
    }

    @Override
    public Outcome calculate(SiteSnapshot snapshot, Inputs inputs, CalculationContext context) {
        return EconomyFindings.of(snapshot.site(), inputs);
    }
}
