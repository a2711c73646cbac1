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
import org.roofspring.calc.standard.readings.ReadingsFindings;
import org.roofspring.calc.standard.water.SiteStorage;
import org.roofspring.site.snapshot.SiteSnapshot;

/** Dipstick and meter against the balance: how much water is missing, and the likeliest cause. */
@Component
@CalculationInfo(id = "site.readings", version = "1", title = "Readings against the balance", reads = { "Reading",
    "Incident", "Roof", "RoofDrain", "Gutter", "GutterOutlet", "Downpipe", "Screen", "FirstFlushDiverter", "Tank",
    "LevelVolumePoint", "TankLink", "PipeRun.from", "PipeRun.to", "PipeRun.inUse", "Pump.inUse", "SupplyTime", "Tap.id",
    "Use", "UseCalendar", "UsePeriod", "Holiday", "MonthlyNormal" }, requires = "rain.record", uses = { "pump.duty",
        "roof.drainage" })
public final class SiteReadingsCalculation implements Calculation {

    @Override
    public Applicability check(SiteSnapshot snapshot) {
        List<String> reasons = new ArrayList<>(SiteStorage.check(snapshot.site()).reasons());
        if (ReadingsFindings.tank(snapshot.site()).isEmpty()) {
            reasons.add("No tank has two readings of its level or volume, with height and capacity known.");
        }
        return new Applicability(reasons);
    }

    @Override
    public Outcome calculate(SiteSnapshot snapshot, Inputs inputs, CalculationContext context) {
        return ReadingsFindings.of(snapshot.site(), inputs, context);
    }
}
