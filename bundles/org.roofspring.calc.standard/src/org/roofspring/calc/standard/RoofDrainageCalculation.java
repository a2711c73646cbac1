package org.roofspring.calc.standard;

import java.util.OptionalDouble;

import org.osgi.service.component.annotations.Component;
import org.roofspring.calc.Applicability;
import org.roofspring.calc.Calculation;
import org.roofspring.calc.CalculationContext;
import org.roofspring.calc.CalculationInfo;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.Inputs;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.standard.drainage.DesignStorm;
import org.roofspring.calc.standard.drainage.RoofToTank;
import org.roofspring.drainage.NoAnswerException;
import org.roofspring.site.Pump;
import org.roofspring.site.RainSource;
import org.roofspring.site.snapshot.SiteSnapshot;

/**
 * The way of the rain from roof to tank in the design storm, and what it loses over the years. The finding
 * {@code collectionEfficiency} of each roof is what storage counts on where none was entered.
 */
@Component
@CalculationInfo(id = "roof.drainage", version = "1", title = "Roof to tank", reads = { "RainSource", "IntensityPoint",
    "Roof", "RoofDrain", "Gutter", "GutterOutlet", "Downpipe", "Screen", "FirstFlushDiverter", "Tank", "Siting",
    "PipeRun.from", "PipeRun.to", "PipeRun.inUse", "PipeRun.bore", "Pump.inUse", "Pump.name", "Pump.cutOutHeight" },
        requires = "rain.record", uses = "pump.duty")
public final class RoofDrainageCalculation implements Calculation {

    @Override
    public Applicability check(SiteSnapshot snapshot) {
        return snapshot.site().getRoofs().stream().anyMatch(roof -> roof.isInUse() && roof.getPlanArea() != null)
                ? Applicability.yes() : Applicability.no("There is no roof with a plan area.");
    }

    @Override
    public Outcome calculate(SiteSnapshot snapshot, Inputs inputs, CalculationContext context) {
        RainSource rain = snapshot.site().getRain();
        FindingValue.Daily daily = inputs.value("rain.record", "daily", FindingValue.Daily.class);
        context.checkCancelled();
        DesignStorm storm;
        try {
            storm = DesignStorm.of(rain, daily);
        } catch (NoAnswerException | IllegalArgumentException e) {
            return new Outcome.NotComputable(new Outcome.Problem(rain.getId(), null, sentence(e.getMessage())));
        }
        return new RoofToTank(snapshot.site(), storm, daily.values(), pump -> pumpedM3PerS(pump, inputs),
                context.cancelled()).answer();
    }

    private static OptionalDouble pumpedM3PerS(Pump pump, Inputs inputs) {
        return inputs.finding("pump.duty", "flow", pump.getId())
                .map(finding -> OptionalDouble.of(((FindingValue.Number) finding.value()).quantity().si()))
                .orElse(OptionalDouble.empty());
    }

    private static String sentence(String words) {
        String begun = Character.toUpperCase(words.charAt(0)) + words.substring(1);
        return begun.endsWith(".") ? begun : begun + ".";
    }
}
