package org.roofspring.calc.standard;

import java.util.List;

import org.osgi.service.component.annotations.Component;
import org.roofspring.calc.Applicability;
import org.roofspring.calc.Calculation;
import org.roofspring.calc.CalculationContext;
import org.roofspring.calc.CalculationInfo;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.Inputs;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.standard.answer.AnswerBuilder;
import org.roofspring.calc.standard.pumping.HandFindings;
import org.roofspring.calc.standard.pumping.RunningFindings;
import org.roofspring.calc.standard.water.PumpedWater;
import org.roofspring.site.Pump;
import org.roofspring.site.PumpKind;
import org.roofspring.site.Site;
import org.roofspring.site.snapshot.SiteSnapshot;

/**
 * What it takes to run the pumps: hours, energy and its cost in a year, filling and starts, panels or generator,
 * outages, and water by hand when nothing runs. Apart from the duty, because the storage balance builds on the duty and
 * this builds on the balance.
 */
@Component
@CalculationInfo(id = "pump.running", version = "1", title = "Running the pumps", reads = { "Pump", "SupplyTime",
        "PipeRun.from", "PipeRun.to", "PipeRun.inUse", "Tank", "LevelVolumePoint", "Tap.id", "PressureVessel.id", "Junction.id",
        "TreatmentTrain.id", "Use", "UseCalendar", "UsePeriod", "Holiday", "Economy.energyPrice", "Target.pumpOutage",
        "Site.waterTemperatureUsual" }, uses = { "pump.duty", "storage.balance" })
public final class PumpRunningCalculation implements Calculation {
    @Override
    public Applicability check(SiteSnapshot snapshot) {
        return pumps(snapshot.site()).isEmpty()
                ? Applicability.no("There is neither a pump with measured points nor a hand pump.") : Applicability.yes();
    }

    private static List<Pump> pumps(Site site) {
        return site.getPumps().stream()
                .filter(pump -> PumpedWater.hasCurve(pump) || pump.isInUse() && pump.getKind() == PumpKind.HAND_PUMP).toList();
    }

    @Override
    public Outcome calculate(SiteSnapshot snapshot, Inputs inputs, CalculationContext context) {
        Site site = snapshot.site();
        AnswerBuilder all = new AnswerBuilder(null);
        List<Outcome.Problem> problems = new java.util.ArrayList<>();
        for (Pump pump : pumps(site)) {
            context.checkCancelled();
            if (pump.getKind() == PumpKind.HAND_PUMP) {
                switch (HandFindings.of(site, pump)) {
                    case Outcome.Completed completed -> all.include(completed);
                    case Outcome.NotComputable none -> problems.addAll(none.problems());
                }
                continue;
            }
            inputs.finding("pump.duty", "flow", pump.getId()).map(finding -> (FindingValue.Number) finding.value())
                    .ifPresentOrElse(flow -> all.include(RunningFindings.of(site, pump, flow.quantity(), inputs))
                            .include(HandFindings.instead(site, pump)),
                            () -> problems.add(new Outcome.Problem(pump.getId(), null, pump.getName() + " has no duty point.")));
        }
        Outcome.Completed completed = all.build();
        return completed.findings().isEmpty() ? new Outcome.NotComputable(problems, List.of()) : completed;
    }
}
