package org.roofspring.calc.standard;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.osgi.service.component.annotations.Component;
import org.roofspring.calc.Applicability;
import org.roofspring.calc.Calculation;
import org.roofspring.calc.CalculationContext;
import org.roofspring.calc.CalculationInfo;
import org.roofspring.calc.Caution;
import org.roofspring.calc.Caution.Severity;
import org.roofspring.calc.Inputs;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.Outcome.Problem;
import org.roofspring.calc.Source;
import org.roofspring.calc.standard.answer.AnswerBuilder;
import org.roofspring.calc.standard.supply.BreakFindings;
import org.roofspring.calc.standard.supply.GravityFindings;
import org.roofspring.calc.standard.supply.VesselFindings;
import org.roofspring.calc.standard.water.Given;
import org.roofspring.calc.standard.water.GravityNetwork;
import org.roofspring.calc.standard.water.PumpedWater;
import org.roofspring.site.PipeNode;
import org.roofspring.site.PressureVessel;
import org.roofspring.site.Site;
import org.roofspring.site.SitePackage;
import org.roofspring.site.Tap;
import org.roofspring.site.snapshot.SiteSnapshot;

/** Flow and head at every tap, from overhead tanks by gravity and from pressure vessels, and the breaks of a school. */
@Component
@CalculationInfo(id = "gravity.supply", version = "1", title = "Supply of the taps", reads = { "Tap", "Junction", "PipeRun",
        "Fitting", "ProfilePoint", "TreatmentTrain", "TreatmentStep", "PressureVessel", "Pump", "PumpPoint", "Tank.baseLevel",
        "Tank.height", "Tank.outletHeight", "Tank.overflowHeight", "Tank.inletHeight", "Tank.startHeight", "Tank.stopHeight",
        "Tank.inUse", "Siting.standHeight", "Use", "UsePeak", "Site.altitude", "Site.waterTemperatureMin",
        "Site.waterTemperatureUsual", "Site.waterTemperatureMax" })
public final class GravitySupplyCalculation implements Calculation {
    @Override
    public Applicability check(SiteSnapshot snapshot) {
        Site site = snapshot.site();
        if (site.getTaps().stream().noneMatch(Tap::isInUse)) {
            return Applicability.no("There is no tap.");
        }
        return GravityNetwork.sources(site).stream().anyMatch(source -> GravityNetwork.from(site, source).isPresent())
                ? Applicability.yes() : Applicability.no("No run of pipe leads from a tank or pressure vessel to a tap.");
    }

    @Override
    public Outcome calculate(SiteSnapshot snapshot, Inputs inputs, CalculationContext context) {
        Site site = snapshot.site();
        double temperatureC = Given.si(site, SitePackage.Literals.SITE__WATER_TEMPERATURE_USUAL, 20);
        AnswerBuilder all = new AnswerBuilder(null);
        List<Problem> problems = new ArrayList<>();
        Map<Tap, Double> flows = new LinkedHashMap<>();
        Map<Tap, PipeNode> feeds = new HashMap<>();
        for (PipeNode source : GravityNetwork.sources(site)) {
            context.checkCancelled();
            GravityNetwork.from(site, source).ifPresent(network -> {
                List<Problem> found = new ArrayList<>(twiceFed(network, feeds));
                if (source instanceof PressureVessel vessel) {
                    vessel(site, vessel, all, found);
                }
                if (found.isEmpty()) {
                    found.addAll(network.build());
                }
                if (found.isEmpty()) {
                    taps(network, temperatureC, context, all, flows, found);
                }
                problems.addAll(found);
            });
        }
        all.include(BreakFindings.of(site, flows));
        site.getTaps().stream().filter(tap -> tap.isInUse() && !feeds.containsKey(tap)).forEach(tap -> say(all,
                "gravity.unfed", tap.getId(), "No run of pipe leads from a tank or pressure vessel to " + tap.getName() + "."));
        problems.forEach(problem -> say(all, "gravity.no-answer", problem.elementId(), problem.text()));
        Outcome.Completed completed = all.build();
        return completed.findings().isEmpty() ? new Outcome.NotComputable(problems, completed.cautions()) : completed;
    }

    private static void taps(GravityNetwork network, double temperatureC, CalculationContext context, AnswerBuilder all,
            Map<Tap, Double> flows, List<Problem> problems) {
        try {
            GravityFindings findings = GravityFindings.of(network, temperatureC, context.cancelled());
            all.include(findings.outcome());
            flows.putAll(findings.flowOfOneM3PerS());
        } catch (IllegalArgumentException e) {
            problems.add(new Problem(network.source().getId(), null, network.source().getName() + ": " + e.getMessage() + "."));
        }
    }

    private static void vessel(Site site, PressureVessel vessel, AnswerBuilder all, List<Problem> problems) {
        PumpedWater.missing(vessel).forEach(sentence -> problems.add(new Problem(vessel.getId(), null, sentence)));
        if (problems.isEmpty()) {
            switch (VesselFindings.of(site, vessel)) {
                case Outcome.Completed completed -> all.include(completed);
                case Outcome.NotComputable none -> problems.addAll(none.problems());
            }
        }
    }

    /** Taps that another tank feeds as well: water could go round, which is a loop. */
    private static List<Problem> twiceFed(GravityNetwork network, Map<Tap, PipeNode> feeds) {
        List<Problem> problems = new ArrayList<>();
        for (Tap tap : network.taps()) {
            PipeNode other = feeds.putIfAbsent(tap, network.source());
            if (other != null) {
                problems.add(new Problem(tap.getId(), null, tap.getName() + " is fed from " + other.getName() + " and from "
                        + network.source().getName() + ", which makes a loop; only pipes that branch without loops are solved, so"
                        + " take one way out of use or split it at a closed valve."));
            }
        }
        return problems;
    }

    private static void say(AnswerBuilder all, String code, String elementId, String text) {
        all.caution(new Caution(code, Severity.WARNING, elementId, "{0}", List.of(text), "",
                Source.definition("how the model was read")));
    }
}
