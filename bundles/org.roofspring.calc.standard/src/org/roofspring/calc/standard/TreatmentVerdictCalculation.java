package org.roofspring.calc.standard;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.osgi.service.component.annotations.Component;
import org.roofspring.calc.Applicability;
import org.roofspring.calc.Calculation;
import org.roofspring.calc.CalculationContext;
import org.roofspring.calc.CalculationInfo;
import org.roofspring.calc.Caution;
import org.roofspring.calc.Inputs;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.standard.treatment.SiteReading;
import org.roofspring.calc.standard.treatment.TreatmentFindings;
import org.roofspring.calc.standard.treatment.UnreadableException;
import org.roofspring.site.Site;
import org.roofspring.site.TreatmentTrain;
import org.roofspring.site.Use;
import org.roofspring.site.snapshot.SiteSnapshot;

/** What may be said of the water for each use, why, and what it asks of people each week. */
@Component
@CalculationInfo(id = "treatment.verdict", version = "1", title = "Treatment and water safety", reads = { "Use",
        "TreatmentTrain", "TreatmentStep", "LogReduction", "RawWater", "WaterTest", "Reading", "Inspection",
        "InspectionAnswer", "SafetyMeasure", "UpkeepTask", "Roof.material", "Roof.hazards", "Roof.drains",
        "Roof.inUse", "Roof.name", "RoofDrain", "Gutter.inUse", "GutterOutlet.to", "Conduit.drainsTo", "Conduit.inUse",
        "Screen.mesh", "Screen.name", "FirstFlushDiverter.depth", "FirstFlushDiverter.name", "Tank", "Siting",
        "TankLink", "PipeRun.from", "PipeRun.to", "PipeRun.inUse", "PipeRun.material", "PipeRun.name", "Tap", "TopUp",
        "UseCalendar", "UsePeriod", "Holiday", "Site.altitude", "Site.waterTemperatureMin",
        "Site.waterTemperatureUsual", "Site.waterTemperatureMax", "Site.created" })
public final class TreatmentVerdictCalculation implements Calculation {

    @Override
    public Applicability check(SiteSnapshot snapshot) {
        Site site = snapshot.site();
        boolean judged = site.getUses().stream().filter(Use::isInUse)
                .anyMatch(use -> SiteReading.kernelUse(use.getPurpose()).isPresent());
        boolean treated = site.getTrains().stream().anyMatch(TreatmentTrain::isInUse);
        return judged || treated ? Applicability.yes() : Applicability.no("There is neither a use for drinking, "
                + "cooking, washing or the garden nor a treatment train.");
    }

    @Override
    public Outcome calculate(SiteSnapshot snapshot, Inputs inputs, CalculationContext context) {
        try {
            Outcome.Completed all = TreatmentFindings.of(SiteReading.of(snapshot.site()), context.cancelled());
            return new Outcome.Completed(all.findings(), all.workings(), once(all.cautions()));
        } catch (UnreadableException e) {
            return new Outcome.NotComputable(e.problem());
        }
    }

    /** Several uses of one roof say the same of it: the gravest is kept, in its first place. */
    private static List<Caution> once(List<Caution> cautions) {
        Map<List<Object>, Caution> said = new LinkedHashMap<>();
        for (Caution caution : cautions) {
            said.merge(Arrays.asList(caution.code(), caution.elementId(), caution.pattern(), caution.arguments()),
                    caution, (a, b) -> a.severity().compareTo(b.severity()) >= 0 ? a : b);
        }
        return List.copyOf(said.values());
    }
}
