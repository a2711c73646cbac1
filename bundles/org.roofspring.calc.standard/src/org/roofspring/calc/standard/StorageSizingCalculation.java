package org.roofspring.calc.standard;

import org.osgi.service.component.annotations.Component;
import org.roofspring.calc.Applicability;
import org.roofspring.calc.Calculation;
import org.roofspring.calc.CalculationContext;
import org.roofspring.calc.CalculationInfo;
import org.roofspring.calc.Inputs;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.standard.storage.SizingStudy;
import org.roofspring.calc.standard.water.SiteStorage;
import org.roofspring.site.snapshot.SiteSnapshot;

/** How much tank reaches the target, how sure the reliability is, and what the simple rules say beside it. */
@Component
@CalculationInfo(id = "storage.sizing", version = "2", title = "Storage sizing", reads = { "Roof", "RoofDrain",
    "Gutter", "GutterOutlet", "Downpipe", "Screen", "FirstFlushDiverter", "Tank", "TankLink", "PipeRun.from",
    "PipeRun.to",
    "PipeRun.inUse", "Pump.inUse", "SupplyTime", "Tap.id", "Use", "UseCalendar", "UsePeriod", "Holiday",
    "RationingRule",
    "TopUp", "MonthlyNormal", "CostItem", "Target.timeReliability", "Target.confidence" }, requires = "rain.record",
        uses = { "pump.duty", "roof.drainage" })
public final class StorageSizingCalculation implements Calculation {

    @Override
    public Applicability check(SiteSnapshot snapshot) {
        return SiteStorage.check(snapshot.site());
    }

    @Override
    public Outcome calculate(SiteSnapshot snapshot, Inputs inputs, CalculationContext context) {
        return SizingStudy.of(snapshot.site(), inputs, context);
    }
}
