package org.roofspring.calc.standard;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

import org.osgi.service.component.annotations.Component;
import org.roofspring.calc.Applicability;
import org.roofspring.calc.Calculation;
import org.roofspring.calc.CalculationContext;
import org.roofspring.calc.CalculationInfo;
import org.roofspring.calc.Caution;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.Inputs;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.Source;
import org.roofspring.calc.standard.answer.AnswerBuilder;
import org.roofspring.calc.standard.answer.RainAnswer;
import org.roofspring.calc.standard.rain.SiteRain;
import org.roofspring.quantity.Units;
import org.roofspring.rain.MissingRainException;
import org.roofspring.rain.RainFormatException;
import org.roofspring.rain.RainRecord;
import org.roofspring.rain.RainStatistics;
import org.roofspring.rain.SynthesisComparison;
import org.roofspring.site.RainSource;
import org.roofspring.site.snapshot.SiteSnapshot;

/** The rain of a site: read, mended, scaled, stressed or invented as the site asks. Finding {@code daily} drives the rest. */
@Component
@CalculationInfo(id = "rain.record", version = "2", title = "Rain record", reads = { "RainSource", "MonthlyNormal", "ClimateStress", "SeasonFactor" })
public final class RainRecordCalculation implements Calculation {
    private static final int REPEATS = 100;
    private static final Function<String, Caution> INVENTED = rain -> new Caution("rain.invented", Caution.Severity.DANGER, rain,
            "There is no rain record here: the rain is invented from monthly normals. Invented rain has too few long droughts, "
                    + "so tanks sized on it run dry more often than it says. Find a record of the place, or one to scale to it.",
            List.of(), "Ask the weather service for a daily record.", Source.definition("synthetic rain"));

    @Override
    public Applicability check(SiteSnapshot site) {
        return SiteRain.isGiven(site.site().getRain()) ? Applicability.yes()
                : Applicability.no("The site has no rain record; name a file under Rain, or enter the place's monthly normals.");
    }

    @Override
    public Outcome calculate(SiteSnapshot site, Inputs inputs, CalculationContext context) {
        RainSource source = site.site().getRain();
        try {
            SiteRain rain = SiteRain.of(site, context.cancelled());
            AnswerBuilder answer = new AnswerBuilder(null);
            RainStatistics statistics = RainStatistics.of(rain.asRead());
            answer.include(rain.quality().map(quality -> RainAnswer.of(null, statistics, quality))
                    .orElseGet(() -> RainAnswer.ofInvented(null, statistics)));
            answer.text("filling", "Missing days", rain.filling());
            if (!rain.origin().isEmpty()) {
                answer.text("origin", "What was done to the rain", String.join(" ", rain.origin()));
            }
            answer.add("daily", "Daily rain", daily(rain.driving()));
            if (rain.invented()) {
                answer.caution(INVENTED.apply(source.getId()));
            }
            synthesis(answer, source, rain, context);
            return answer.build();
        } catch (RainFormatException | MissingRainException | IOException e) {
            return new Outcome.NotComputable(new Outcome.Problem(source.getId(), RainRecordCalculation.field(source), e.getMessage()));
        }
    }

    private static FindingValue.Daily daily(RainRecord record) {
        return new FindingValue.Daily(record.firstDay(), record.completeDepthsMm(), Units.MM);
    }

    /** Synthetic rain beside the record, and how far it can be trusted. */
    private static void synthesis(AnswerBuilder answer, RainSource source, SiteRain rain, CalculationContext context) {
        Optional<RainRecord> synthetic = rain.synthetic(source, context.cancelled());
        if (synthetic.isEmpty()) {
            return;
        }
        SynthesisComparison comparison = SynthesisComparison.of(rain.asRead(), rain.synthesis().orElseThrow(), REPEATS,
                source.getSeed(), context.cancelled());
        answer.add("synthetic", "Synthetic rain", daily(synthetic.get()));
        RainAnswer.synthesis(answer, comparison);
    }

    /** The field to look at when there is no answer. */
    private static String field(RainSource source) {
        return source.getFile() == null || source.getFile().isBlank() ? "normals" : "file";
    }
}
