package org.roofspring.calc.standard.storage;

import java.util.List;
import java.util.Optional;

import org.roofspring.calc.CalculationContext;
import org.roofspring.calc.Caution;
import org.roofspring.calc.Caution.Severity;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.Inputs;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.Source;
import org.roofspring.calc.Working.Step;
import org.roofspring.calc.standard.answer.AnswerBuilder;
import org.roofspring.calc.standard.answer.StorageTerms;
import org.roofspring.calc.standard.water.SiteStorage;
import org.roofspring.calc.standard.water.WholeSystem;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.Site;
import org.roofspring.storage.BalanceResult;
import org.roofspring.storage.SizingAnswer;
import org.roofspring.storage.TankSizing;
import org.roofspring.storage.YieldRule;

/** Puts the findings of the sizing together. */
public final class SizingStudy {
    private SizingStudy() {
    }

    /** Everything about the size of the site's storage. */
    public static Outcome of(Site site, Inputs inputs, CalculationContext context) {
        WholeSystem system = SiteStorage.system(site, inputs);
        WaterNeed need = WaterNeed.of(system, SiteStorage.rain(inputs).firstDay());
        SiteTarget target = new SiteTarget(site);
        BalanceResult whole = system.run(YieldRule.YAS, context.cancelled()).whole();
        AnswerBuilder answer = new AnswerBuilder(null);
        SizingFindings sizing = new SizingFindings(system, need, target, context.cancelled());
        sizing.add(answer, whole.timeReliability());
        new SurfaceFindings(site, system, need, target, answer).add(sizing.volumesM3(), context.cancelled());
        new RuleFindings(need).add(answer, sizing.requiredM3().orElse(0), context.cancelled());
        new SuretyFindings(need, whole, target, answer).add(context);
        synthetic(answer, site, inputs, target, context);
        return answer.build();
    }

    /** What the synthetic rain would ask for: shown beside the answer, never in its place. */
    private static void synthetic(AnswerBuilder answer, Site site, Inputs inputs, SiteTarget target,
            CalculationContext context) {
        Optional<FindingValue.Daily> made = inputs.finding("rain.record", "synthetic")
                .map(finding -> (FindingValue.Daily) finding.value());
        if (made.isEmpty()) {
            return;
        }
        WaterNeed need = WaterNeed.of(SiteStorage.system(site, made.get(), inputs), made.get().firstDay());
        if (TankSizing.smallestTank(need.inflowM3(), need.demandM3(), YieldRule.YAS, target.timeReliability(),
                context.cancelled()) instanceof SizingAnswer.Sized sized) {
            Quantity volume = Quantity.of(sized.volumeM3(), Units.M3);
            answer.number("requiredVolumeSynthetic", "Beside it: usable volume on synthetic rain", volume,
                    Step.of("S", "the same search over " + made.get().days() + " days of synthetic rain",
                            "smallest S with Rt(S) >= R", volume, StorageTerms.MODEL, target.timeReliabilityInput()));
        }
        answer.caution(new Caution("storage.synthetic-beside", Severity.INFO, null,
                "The figure on synthetic rain stands beside that of the record and never replaces it: synthetic "
                + "years are "
                        + "too much alike and their dry spells too short.", List.of(), "",
                Source.fromMemory("Richardson, Stochastic simulation of daily precipitation, temperature, and solar "
                        + "radiation, 1981")));
    }
}
