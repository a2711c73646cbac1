package org.roofspring.calc.standard.treatment;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BooleanSupplier;

import org.roofspring.calc.Caution;
import org.roofspring.calc.FindingValue.Table;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.Source;
import org.roofspring.calc.Working.Input;
import org.roofspring.calc.Working.Step;
import org.roofspring.calc.standard.answer.AnswerBuilder;
import org.roofspring.calc.standard.water.Given;
import org.roofspring.calc.standard.water.UseDemand;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.PathogenLevel;
import org.roofspring.site.SitePackage.Literals;
import org.roofspring.site.Use;
import org.roofspring.treatment.LogReductions;
import org.roofspring.treatment.PathogenGroup;
import org.roofspring.treatment.risk.Pathogen;
import org.roofspring.treatment.risk.RiskChain;
import org.roofspring.treatment.risk.RiskInputs;
import org.roofspring.treatment.risk.RiskRange;
import org.roofspring.treatment.risk.RiskSimulation;
import org.roofspring.treatment.risk.Spread;

/**
 * The risk of infection by what the site says is in its raw water: a range over what is not known, from Monte Carlo.
 * One line for each pathogen level of the site, and the worst of them as figures.
 */
public final class RiskFindings {
    private static final Source RAW = Source.commonPractice("no concentration in roof water is published: the raw "
            + "water's is the user's assumption, and the result is as good as it is");
    private static final Source CHAIN = SiteTerms.source(Pathogen.CHAIN_SOURCE);
    private static final org.roofspring.treatment.Source LITRES = org.roofspring.treatment.Source.fromMemory(
            "WHO Guidelines for Drinking-water Quality, 3rd ed: 1 L of unboiled water a day; the range about it and "
                    + "a tenth of it for cooking are assumed");
    private static final int YEAR = 2023;

    /** A pathogen of the site with its range over the draws. */
    private record Line(PathogenLevel level, Pathogen pathogen, Spread raw, Spread log, RiskRange range) {
    }

    private final UseAppraisal appraisal;
    private final Spread litres;
    private final int days;
    private final double targetDaly;
    private final double targetInfection;
    private final AnswerBuilder answer;

    private RiskFindings(SiteReading site, UseAppraisal appraisal) {
        this.appraisal = appraisal;
        boolean drunk = appraisal.situation().use() == org.roofspring.treatment.safety.Use.DRINKING;
        this.litres = drunk ? new Spread.Triangular(0.5, 1, 2) : new Spread.Triangular(0.05, 0.1, 0.5);
        this.days = days(appraisal.use());
        var target = site.site().getTarget();
        this.targetDaly = target == null ? RiskChain.TARGET_DALY
                : Given.si(target, Literals.TARGET__BURDEN_TARGET, RiskChain.TARGET_DALY);
        this.targetInfection = target == null ? 1e-4 : Given.si(target, Literals.TARGET__INFECTION_TARGET, 1e-4);
        this.answer = new AnswerBuilder(appraisal.use().getId());
    }

    /** Uses whose water is swallowed. */
    static boolean swallowed(Use use) {
        return use.isInUse() && SiteReading.kernelUse(use.getPurpose())
                .filter(org.roofspring.treatment.safety.Use::swallowed).isPresent();
    }

    /**
     * @param cancelled polled every thousand draws
     * @throws UnreadableException where values of a step or of the raw water contradict each other
     */
    public static Outcome.Completed of(SiteReading site, long seed, BooleanSupplier cancelled) {
        AnswerBuilder all = new AnswerBuilder(null);
        for (Use use : site.ways().keySet()) {
            if (swallowed(use)) {
                all.include(new RiskFindings(site, UseAppraisal.of(site, use)).use(site, seed, cancelled));
            }
        }
        return all.build();
    }

    private Outcome.Completed use(SiteReading site, long seed, BooleanSupplier cancelled) {
        List<Line> lines = new ArrayList<>();
        for (PathogenLevel level : site.site().getRawWater().getPathogens()) {
            pathogen(level).ifPresent(pathogen -> lines.add(line(site, level, pathogen, seed, cancelled)));
        }
        table(lines);
        lines.stream().max((a, b) -> Double.compare(a.range().yearlyDaly().p95(), b.range().yearlyDaly().p95()))
                .ifPresent(worst -> figures(worst, seed));
        answer.caution(new Caution("risk.assumed", Caution.Severity.WARNING, appraisal.use().getId(),
                "These risks follow from germs in the raw water that were assumed, not measured; they compare "
                        + "treatments, and say nothing certain of this water.", List.of(), "", RAW));
        return answer.build();
    }

    /** The reference pathogen whose dose response stands for the group, on the careful side. */
    private static Optional<Pathogen> pathogen(PathogenLevel level) {
        return switch (level.getGroup()) {
            case BACTERIA -> Optional.of(Pathogen.CAMPYLOBACTER);
            case VIRUSES -> Optional.of(Pathogen.ROTAVIRUS);
            case CRYPTOSPORIDIUM -> Optional.of(Pathogen.CRYPTOSPORIDIUM);
            case GIARDIA -> Optional.of(new Pathogen("Giardia, taken as Cryptosporidium", PathogenGroup.GIARDIA,
                    Pathogen.CRYPTOSPORIDIUM.doseResponse(), Pathogen.CRYPTOSPORIDIUM.illnessRatio(),
                    Pathogen.CRYPTOSPORIDIUM.dalyPerCase(), 1, Pathogen.CHAIN_SOURCE));
            case HELMINTHS, UNSTATED -> Optional.empty();
        };
    }

    private Line line(SiteReading site, PathogenLevel level, Pathogen pathogen, long seed,
            BooleanSupplier cancelled) {
        try {
            Spread raw = raw(level);
            LogReductions least = appraisal.train().total();
            double low = least.of(pathogen.group());
            double high = Math.max(low, appraisal.atBest().of(pathogen.group()));
            Spread log = high > low ? new Spread.Uniform(low, high) : new Spread.Fixed(low);
            // The share of time out of work is in the reductions already.
            RiskRange range = RiskSimulation.run(new RiskInputs(pathogen, raw, log, 0, litres, days, targetDaly),
                    RiskSimulation.DEFAULT_DRAWS, seed, cancelled);
            return new Line(level, pathogen, raw, log, range);
        } catch (IllegalArgumentException e) {
            throw new UnreadableException(site.site().getRawWater().getId(), name(level), e);
        }
    }

    /** Between low and high with the number as the likeliest, or whatever of the three is given. */
    private static Spread raw(PathogenLevel level) {
        double mode = level.getPerLitre() == null ? Double.NaN : level.getPerLitre().si();
        double low = level.getLow() == null ? mode : level.getLow().si();
        double high = level.getHigh() == null ? mode : level.getHigh().si();
        if (Double.isNaN(low) && Double.isNaN(high)) {
            throw new IllegalArgumentException("a number in a litre, or a low and a high one, must be given");
        }
        low = Double.isNaN(low) ? 0 : low;
        high = Double.isNaN(high) ? low : high;
        if (low == high) {
            return new Spread.Fixed(low);
        }
        return Double.isNaN(mode) ? new Spread.Uniform(low, high) : new Spread.Triangular(low, mode, high);
    }

    private static int days(Use use) {
        int days = 0;
        for (LocalDate day = LocalDate.of(YEAR, 1, 1); day.getYear() == YEAR; day = day.plusDays(1)) {
            days += UseDemand.factor(use.getCalendar(), day) > 0 ? 1 : 0;
        }
        return Math.max(1, days);
    }

    private void table(List<Line> lines) {
        List<List<Object>> rows = new ArrayList<>();
        List<List<Object>> inputs = new ArrayList<>();
        for (Line line : lines) {
            double middle = line.raw().quantile(0.5);
            RiskRange range = line.range();
            rows.add(Arrays.asList(name(line.level()), Quantity.of(middle),
                    Quantity.of(line.log().quantile(0)), Quantity.of(line.log().quantile(0.999999)),
                    middle > 0 ? Quantity.of(RiskChain.neededLog(line.pathogen(), middle, litres.quantile(0.5), days,
                            targetDaly)) : null,
                    Quantity.of(range.yearlyInfection().p50()), Quantity.of(range.yearlyInfection().p95()),
                    Quantity.of(range.yearlyDaly().p95()), Quantity.ofSi(range.meetsTarget(), Units.PERCENT)));
            inputs.add(Arrays.asList(name(line.level()), line.pathogen().name(),
                    Quantity.of(line.raw().least()), line.level().getHigh() != null ? line.level().getHigh()
                            : Quantity.of(line.raw().quantile(0.5)),
                    SiteTerms.user(line.level().getSource() == null ? "" : line.level().getSource()).toString(),
                    SiteTerms.source(line.pathogen().source()).toString()));
        }
        answer.add("risk", "Risk by germ, for a person and year", new Table(List.of("Germ", "In a litre",
                "Log taken out", "At best", "Log needed", "Infected, middle", "Infected, 95 %", "DALY, 95 %",
                "Draws within target"), rows));
        answer.add("riskInputs", "What the risk follows from", new Table(List.of("Germ", "Taken as",
                "Least in a litre", "Most in a litre", "Source", "Source of the chain"), inputs));
    }

    private void figures(Line worst, long seed) {
        RiskRange range = worst.range();
        RiskChain chain = RiskChain.forward(worst.pathogen(), worst.raw().quantile(0.5), worst.log().quantile(0.5),
                litres.quantile(0.5), days);
        List<Step> middle = List.of(
                Step.of("C", worst.pathogen().name() + " in a litre behind the train", "Cr 10^-L",
                        Quantity.of(chain.treatedPerL()), CHAIN,
                        new Input("Cr", "in a litre of raw water, middle of its range",
                                Quantity.of(chain.rawPerL()), null, null),
                        new Input("L", "log reduction, middle of its range", Quantity.of(chain.logReduction()))),
                Step.of("d", "swallowed in a day", "C V", Quantity.of(chain.dailyDose()), SiteTerms.source(LITRES),
                        new Input("C", "in a litre", Quantity.of(chain.treatedPerL())),
                        new Input("V", "unboiled water swallowed, litres", Quantity.of(litres.quantile(0.5)))),
                Step.of("P", "infected in a day", dose(worst.pathogen()), Quantity.of(chain.dailyInfection()), CHAIN,
                        new Input("d", "dose", Quantity.of(chain.dailyDose()))),
                Step.of("Py", "infected in a year", "1 - (1 - P)^n", Quantity.of(chain.yearlyInfection()),
                        Source.definition("independent days"),
                        new Input("P", "infected in a day", Quantity.of(chain.dailyInfection())),
                        new Input("n", "days of use in a year", Quantity.of(days))));
        Input draws = new Input("N", "draws, each one value of every input, seed " + seed,
                Quantity.of(range.draws()));
        Source method = Source.commonPractice("Monte Carlo over what is not known; the same seed gives the same draws");
        number("yearlyInfection", "Infected in a year, middle, " + worst.pathogen().name(),
                range.yearlyInfection().p50(), middle, Step.of("Pm", "not exceeded by half of the draws",
                        "Py of N draws", Quantity.of(range.yearlyInfection().p50()), method, draws,
                        new Input("Pt", "target", Quantity.of(targetInfection))));
        number("yearlyInfectionHigh", "Infected in a year, 95 % of the range", range.yearlyInfection().p95(), middle,
                Step.of("Ph", "not exceeded by 95 % of the draws", "Py of N draws",
                        Quantity.of(range.yearlyInfection().p95()), method, draws));
        Input burden = new Input("b", "healthy years lost by an infection: ill, of them, susceptible", Quantity.of(
                worst.pathogen().illnessRatio() * worst.pathogen().dalyPerCase()
                        * worst.pathogen().susceptibleRatio()));
        number("yearlyBurden", "Healthy years lost a year, middle",
                range.yearlyDaly().p50(), middle, Step.of("B", "burden, of half of the draws", "b Py",
                        Quantity.of(range.yearlyDaly().p50()), CHAIN, burden,
                        new Input("Bt", "target", Quantity.of(targetDaly))));
        number("yearlyBurdenHigh", "Healthy years lost a year, 95 % of the range",
                range.yearlyDaly().p95(), middle, Step.of("Bh", "burden, not exceeded by 95 % of the draws", "b Py",
                        Quantity.of(range.yearlyDaly().p95()), CHAIN, burden, draws));
        Quantity within = Quantity.ofSi(range.meetsTarget(), Units.PERCENT);
        answer.number("drawsWithinTarget", "Draws within the target burden", within, Step.of("s",
                "share of draws whose burden is at or below the target", "count(B <= Bt) / N", within,
                SiteTerms.source(RiskChain.TARGET_SOURCE), draws,
                new Input("Bt", "target burden", Quantity.of(targetDaly))));
    }

    private void number(String id, String title, double value, List<Step> middle, Step last) {
        List<Step> steps = new ArrayList<>(middle);
        steps.add(last);
        answer.number(id, title, Quantity.of(value), steps.toArray(Step[]::new));
    }

    private static String dose(Pathogen pathogen) {
        return switch (pathogen.doseResponse()) {
            case org.roofspring.treatment.risk.DoseResponse.Exponential exponential ->
                String.format(Locale.ROOT, "1 - exp(-%s d)", exponential.r());
            case org.roofspring.treatment.risk.DoseResponse.BetaPoisson beta ->
                String.format(Locale.ROOT, "1 - (1 + d / %s)^-%s", beta.beta(), beta.alpha());
        };
    }

    private static String name(PathogenLevel level) {
        return level.getPathogen() == null || level.getPathogen().isBlank() ? level.getGroup().getLiteral()
                : level.getPathogen();
    }
}
