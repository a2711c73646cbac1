package org.roofspring.calc.standard;

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
import org.roofspring.site.RainSource;
import org.roofspring.site.snapshot.SiteSnapshot;

/**
 * The way of the rain from roof to tank in the design storm, and what it loses over the years. The finding
 * {@code collectionEfficiency} of each roof is what storage counts on where none was entered.
 */
@Component
@CalculationInfo(id = "roof.drainage", version = "1", title = "Roof to tank", reads = { "RainSource", "IntensityPoint",
    "Roof", "RoofDrain", "Gutter", "GutterOutlet", "Downpipe", "Screen", "FirstFlushDiverter", "Tank.inUse",
    "Tank.name", "Tank.siting", "Siting" }, requires = "rain.record")
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
        return new RoofToTank(snapshot.site(), storm, daily.values(), context.cancelled()).answer();
    }

    private static String sentence(String words) {
        String begun = Character.toUpperCase(words.charAt(0)) + words.substring(1);
        return begun.endsWith(".") ? begun : begun + ".";
    }
}
