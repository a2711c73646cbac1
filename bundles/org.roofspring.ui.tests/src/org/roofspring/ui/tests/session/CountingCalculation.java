package org.roofspring.ui.tests.session;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

import org.roofspring.calc.Applicability;
import org.roofspring.calc.Calculation;
import org.roofspring.calc.CalculationContext;
import org.roofspring.calc.CalculationInfo;
import org.roofspring.calc.Finding;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.Inputs;
import org.roofspring.calc.Outcome;
import org.roofspring.quantity.Quantity;
import org.roofspring.site.snapshot.SiteSnapshot;

/** Answers with the number of roofs, and counts its runs for each site. */
@CalculationInfo(id = "test.counting", version = "1", title = "Counting", reads = "*")
final class CountingCalculation implements Calculation {
    final Map<String, Integer> runs = new ConcurrentHashMap<>();

    @Override
    public Applicability check(SiteSnapshot site) {
        return Applicability.yes();
    }

    @Override
    public Outcome calculate(SiteSnapshot site, Inputs inputs, CalculationContext context) {
        runs.merge(site.site().getId(), 1, Integer::sum);
        Quantity roofs = Quantity.of(site.site().getRoofs().size());
        return new Outcome.Completed(List.of(new Finding("roofs", "Roofs", new FindingValue.Number(roofs))), List.of(), List.of());
    }

    int runs(String siteId) {
        return runs.getOrDefault(siteId, 0);
    }
}
