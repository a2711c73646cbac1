package org.roofspring.calc.standard;

import org.osgi.service.component.annotations.Component;
import org.roofspring.calc.Applicability;
import org.roofspring.calc.Calculation;
import org.roofspring.calc.CalculationContext;
import org.roofspring.calc.CalculationInfo;
import org.roofspring.calc.Inputs;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.standard.storage.OverheadStudy;
import org.roofspring.site.snapshot.SiteSnapshot;

/** Overhead tanks and their pumps within the busiest day, and how they bridge outages. */
@Component
@CalculationInfo(id = "overhead.day", version = "1", title = "Overhead tank within the day", reads = { "Tank",
    "LevelVolumePoint", "PipeRun.from", "PipeRun.to", "PipeRun.inUse", "Pump", "SupplyTime", "Tap.id", "Use", "UsePeak",
    "UseCalendar", "UsePeriod", "Holiday", "Target.pumpOutage" }, uses = "pump.duty")
public final class OverheadDayCalculation implements Calculation {

    @Override
    public Applicability check(SiteSnapshot snapshot) {
        return OverheadStudy.tanks(snapshot.site()).isEmpty()
                ? Applicability.no("There is no tank with a starting and a stopping height that a pump fills.")
                : Applicability.yes();
    }

    @Override
    public Outcome calculate(SiteSnapshot snapshot, Inputs inputs, CalculationContext context) {
        return OverheadStudy.of(snapshot.site(), inputs, context);
    }
}
