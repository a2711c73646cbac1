package org.roofspring.calc.standard;

import org.osgi.service.component.annotations.Component;
import org.roofspring.calc.Applicability;
import org.roofspring.calc.Calculation;
import org.roofspring.calc.CalculationContext;
import org.roofspring.calc.CalculationInfo;
import org.roofspring.calc.Inputs;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.standard.storage.AccidentFindings;
import org.roofspring.calc.standard.water.SiteStorage;
import org.roofspring.site.snapshot.SiteSnapshot;

/** What accidents cost at the worst moment, and what two tanks or a reserve are worth. */
@Component
@CalculationInfo(id = "storage.accidents", version = "1", title = "Accidents of storage", reads = { "Roof", "RoofDrain",
    "Gutter", "GutterOutlet", "Downpipe", "Screen", "FirstFlushDiverter", "Tank", "TankLink", "PipeRun.from",
    "PipeRun.to",
    "PipeRun.inUse", "Pump.inUse", "SupplyTime", "Tap", "Use", "UseCalendar", "UsePeriod", "Holiday", "RationingRule",
    "TopUp", "MonthlyNormal", "Target.reserve" }, requires = "rain.record", uses = { "pump.duty", "roof.drainage" },
        deadline = 120)
public final class StorageAccidentsCalculation implements Calculation {

    @Override
    public Applicability check(SiteSnapshot snapshot) {
        return SiteStorage.check(snapshot.site());
    }

    @Override
    public Outcome calculate(SiteSnapshot snapshot, Inputs inputs, CalculationContext context) {
        return AccidentFindings.of(snapshot.site(), inputs, context.cancelled());
    }
}
