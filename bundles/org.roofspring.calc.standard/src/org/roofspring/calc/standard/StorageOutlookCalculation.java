package org.roofspring.calc.standard;

import java.util.ArrayList;
import java.util.List;

import org.osgi.service.component.annotations.Component;
import org.roofspring.calc.Applicability;
import org.roofspring.calc.Calculation;
import org.roofspring.calc.CalculationContext;
import org.roofspring.calc.CalculationInfo;
import org.roofspring.calc.Inputs;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.standard.storage.OutlookStudy;
import org.roofspring.calc.standard.water.SiteStorage;
import org.roofspring.site.snapshot.SiteSnapshot;

/** How long today's water lasts with the weather of every year of the record, and which ration bridges it. */
@Component
@CalculationInfo(id = "storage.outlook", version = "2", title = "Outlook from today's level", reads = { "Roof",
    "RoofDrain", "Gutter", "GutterOutlet", "Downpipe", "Screen", "FirstFlushDiverter", "Tank", "LevelVolumePoint",
    "TankLink", "PipeRun.from", "PipeRun.to", "PipeRun.inUse", "Pump.inUse", "SupplyTime", "Tap.id", "Use",
    "UseCalendar",
    "UsePeriod", "Holiday", "RationingRule", "TopUp", "MonthlyNormal", "Target.confidence" }, requires = "rain.record",
        uses = { "pump.duty", "roof.drainage" })
public final class StorageOutlookCalculation implements Calculation {

    @Override
    public Applicability check(SiteSnapshot snapshot) {
        List<String> reasons = new ArrayList<>(SiteStorage.check(snapshot.site()).reasons());
        reasons.addAll(OutlookStudy.missing(snapshot.site()));
        return new Applicability(reasons);
    }

    @Override
    public Outcome calculate(SiteSnapshot snapshot, Inputs inputs, CalculationContext context) {
        return OutlookStudy.of(snapshot.site(), inputs, context);
    }
}
