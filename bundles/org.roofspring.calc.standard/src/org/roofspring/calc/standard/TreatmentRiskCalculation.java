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
import org.roofspring.calc.standard.treatment.RiskFindings;
import org.roofspring.calc.standard.treatment.SiteReading;
import org.roofspring.calc.standard.treatment.UnreadableException;
import org.roofspring.site.Site;
import org.roofspring.site.Use;
import org.roofspring.site.snapshot.SiteSnapshot;

/** The risk of infection for those who drink and cook with the water, as a range over what is not known. */
@Component
@CalculationInfo(id = "treatment.risk", version = "1", title = "Risk of infection", reads = { "Use", "TreatmentTrain",
        "TreatmentStep", "LogReduction", "RawWater", "PathogenLevel", "WaterTest", "Reading", "UpkeepTask",
        "Inspection", "Roof.drains", "Roof.inUse", "RoofDrain", "Gutter.inUse", "GutterOutlet.to", "Conduit.drainsTo",
        "Conduit.inUse", "Tank", "TankLink", "PipeRun.from", "PipeRun.to", "PipeRun.inUse", "Tap", "TopUp",
        "UseCalendar", "UsePeriod", "Holiday", "Site.altitude", "Site.waterTemperatureMin",
        "Site.waterTemperatureMax", "Site.created", "Target.burdenTarget", "Target.infectionTarget" })
public final class TreatmentRiskCalculation implements Calculation {

    @Override
    public Applicability check(SiteSnapshot snapshot) {
        Site site = snapshot.site();
        List<String> reasons = new ArrayList<>();
        if (site.getUses().stream().filter(Use::isInUse).noneMatch(use -> SiteReading.kernelUse(use.getPurpose())
                .filter(org.roofspring.treatment.safety.Use::swallowed).isPresent())) {
            reasons.add("There is no use for drinking or cooking.");
        }
        if (site.getRawWater() == null || site.getRawWater().getPathogens().isEmpty()) {
            reasons.add("No germs are assumed in the raw water: enter how many there may be in a litre.");
        }
        return new Applicability(reasons);
    }

    @Override
    public Outcome calculate(SiteSnapshot snapshot, Inputs inputs, CalculationContext context) {
        try {
            return RiskFindings.of(SiteReading.of(snapshot.site()), context.randomSeed(), context.cancelled());
        } catch (UnreadableException e) {
            return new Outcome.NotComputable(e.problem());
        }
    }
}
