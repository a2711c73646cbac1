package org.roofspring.calc.standard.drainage;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.roofspring.calc.Caution;
import org.roofspring.calc.Caution.Severity;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.Source;
import org.roofspring.calc.Working.Input;
import org.roofspring.calc.Working.Step;
import org.roofspring.calc.standard.answer.AnswerBuilder;
import org.roofspring.calc.standard.answer.GutterAnswer;
import org.roofspring.calc.standard.answer.KernelTerms;
import org.roofspring.calc.standard.water.Names;
import org.roofspring.drainage.NoAnswerException;
import org.roofspring.drainage.OutletLayout;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.Gutter;
import org.roofspring.site.GutterOutlet;

/** What is said of a gutter and its outlets. */
final class GutterFindings {
    private static final Source STANDARD = Source.fromMemory("EN 12056-3:2000, Gravity drainage systems inside "
            + "buildings, part 3: Roof drainage, layout and calculation");
    private static final Source LEAST = Source.definition("the weakest part rules");
    private static final double KEEP_BELOW = 0.9;

    private final GutterCheck check;
    private final DesignStorm storm;
    private final OutletRun.Solver solver;
    private final AnswerBuilder answer;

    private GutterFindings(GutterCheck check, DesignStorm storm, OutletRun.Solver solver) {
        this.solver = solver;
        this.check = check;
        this.storm = storm;
        this.answer = new AnswerBuilder(check.gutter().getId());
    }

    static Outcome.Completed of(GutterCheck check, DesignStorm storm, OutletRun.Solver solver) {
        GutterFindings findings = new GutterFindings(check, storm, solver);
        OutletRun worst = check.worst();
        findings.gutterAlone(worst);
        findings.wholeWay(worst);
        findings.spacing(worst);
        findings.years();
        findings.cautions(worst);
        check.runs().forEach(run -> findings.answer.include(findings.outlet(run)));
        return findings.answer.build();
    }

    /** The stretch that leads to the worst outlet, as though its end were free. */
    private void gutterAlone(OutletRun worst) {
        Arriving stretch = check.water().times(worst.reach().longestM() / check.gutter().getLength().si());
        answer.include(GutterAnswer.figures(check.gutter().getId(), worst.gutter(), stretch.effectiveM2(),
                storm.intensityMmPerH(), stretch.peakRatio()).build());
        answer.number("effectiveArea", "Effective roof area", Quantity.of(check.water().effectiveM2(), Units.M2),
                Step.of("Ae", "effective areas of the roofs that drain to it, by their shares", "sum of shares of Ae",
                        Quantity.of(check.water().effectiveM2(), Units.M2), Source.definition("sum"),
                        new Input("A", "of that, seen from above", Quantity.of(check.water().planM2(), Units.M2))));
    }

    private void wholeWay(OutletRun worst) {
        List<Input> parts = new ArrayList<>();
        List<String> symbols = new ArrayList<>();
        part(parts, symbols, "Qg", corners() + " with both its sides", worst.gutterM3PerS());
        part(parts, symbols, "Qo", "at which the outlet holds the water up to the brim", worst.outletM3PerS());
        part(parts, symbols, "Qd", "this outlet's part of the downpipe", worst.downpipeM3PerS());
        Quantity carried = flow(worst.capacityM3PerS());
        Quantity arriving = flow(worst.flowM3PerS());
        String least = "min(" + String.join(", ", symbols) + ")";
        answer.number("wayCapacity", "What gutter, outlet and downpipe let through", carried,
                Step.of("Qw", "at the outlet with least to spare: " + outletName(worst), least, carried, LEAST,
                        parts.toArray(Input[]::new)))
                .share("wayUtilisation", "Storm flow over what the way lets through", worst.utilisation(),
                        Step.of("u", "at the outlet with least to spare: " + outletName(worst), "Q / Qw",
                                Quantity.ofSi(worst.utilisation(), Units.PERCENT), Source.definition("ratio"),
                                new Input("Q", "flow that arrives there", arriving),
                                new Input("Qw", "what the way lets through", carried)))
                .text("limit", "What limits it", worst.limit().words());
    }

    private String corners() {
        return check.gutter().getBends() > 0 ? "gutter with corners, which leave 0.85 of it (EN 12056-3, from memory),"
                : "gutter";
    }

    private static void part(List<Input> parts, List<String> symbols, String symbol, String meaning, double flow) {
        if (Double.isFinite(flow)) {
            parts.add(new Input(symbol, meaning, flow(flow)));
            symbols.add(symbol);
        }
    }

    /** How many outlets the same gutter needs, spread evenly, to keep a tenth in hand. */
    private void spacing(OutletRun worst) {
        if (worst.run() == null || check.gutter().getLength().si() < 0.2) {
            return;
        }
        double length = check.gutter().getLength().si();
        double flow = check.water().flowM3PerS(storm.intensityMmPerH());
        try {
            OutletLayout layout = solver.layout(length, flow, KEEP_BELOW, worst.run());
            Quantity spacing = Quantity.of(layout.spacingM(), Units.M);
            answer.number("outletsNeeded", "Outlets needed, spread evenly", layout.outlets(),
                    Units.ONE, Step.of("n", "fewest that keep every stretch at 0.9 of its capacity or less",
                            "least n with Q / (2 n) <= 0.9 Qr", Quantity.of(layout.outlets()), STANDARD,
                            new Input("Q", "flow off the roof", flow(flow)),
                            new Input("Qr", "what a stretch of half the spacing lets through",
                                    flow(layout.capacity().flowM3PerS()))))
                    .number("outletSpacing", "Spacing of those outlets", spacing, Step.of("s", "spacing", "L / n",
                            spacing, Source.definition("spread evenly"),
                            new Input("L", "length of the gutter", Quantity.of(length, Units.M), check.gutter().getId(),
                                    "length"), new Input("n", "outlets", Quantity.of(layout.outlets()))));
        } catch (NoAnswerException e) {
            answer.caution(new Caution("gutter.no-spacing", Severity.WARNING, check.gutter().getId(),
                    "No number of outlets makes {0} sufficient: {1}.", List.of(name(), e.getMessage()), "", STANDARD));
        }
    }

    private void years() {
        Source spread = KernelTerms.source(storm.ratios().source());
        Quantity limit = Quantity.of(check.limitMmPerH(), Units.MM_PER_H);
        answer.number("collectionEfficiency", "Share of the years' rain that gets past it",
                Quantity.ofSi(check.efficiency(), Units.PERCENT),
                Step.of("il", "intensity that the way through the worst outlet just takes", "Qw / (C Ae)", limit,
                        Source.definition("rational method"), new Input("Qw", "what it lets through",
                                flow(check.worst().capacityM3PerS()))),
                Step.of("e", "every day's rain is taken to gather in bursts like the design storm, which loses more "
                        + "than milder days would; what falls faster than the limit is lost",
                                "sum(P - excess) / sum(P)",
                        Quantity.ofSi(check.efficiency(), Units.PERCENT), spread,
                        new Input("il", "limit", limit)));
        Quantity lost = Quantity.ofSi(check.lostM3PerYear(), Units.L);
        answer.number("lostPerYear", "Lost over the gutter in a mean year", lost, Step.of("F",
                "rain beyond the limit, on the plan area, less what never runs off", "(1 - e) R", lost, spread,
                new Input("e", "share that gets past", Quantity.ofSi(check.efficiency(), Units.PERCENT)),
                new Input("R", "runoff of its roofs in a mean year", Quantity.ofSi(check.runoffM3PerYear(), Units.L))));
        check.gainM3PerYear().ifPresent(gain -> answer.number("largerGutterGain", "Gained a year by a gutter 25 mm wider", Quantity.ofSi(gain, Units.L), Step.of("G",
                        "what that gutter loses less, with the same outlets and downpipes", "F - F'",
                        Quantity.ofSi(gain, Units.L), spread, new Input("F", "lost now", lost),
                        new Input("F'", "lost by the wider one", Quantity.ofSi(check.lostM3PerYear() - gain,
                                Units.L)))));
    }

    private void cautions(OutletRun worst) {
        if (worst.utilisation() > 1) {
            answer.caution(new Caution("gutter.spills", Severity.WARNING, check.gutter().getId(),
                    "{0} spills in the design storm: {1} arrive at {2} and {3} get through; {4} is the narrow place.",
                    List.of(name(), flow(worst.flowM3PerS()), outletName(worst), flow(worst.capacityM3PerS()),
                            worst.limit().words()), "", Source.definition("flow over capacity")));
        } else if (worst.utilisation() > KEEP_BELOW) {
            answer.caution(new Caution("gutter.nearly-full", Severity.INFO, check.gutter().getId(),
                    "{0} is all but full in the design storm; keep a tenth in hand for dips, joints and leaves.",
                    List.of(name()), "", STANDARD));
        }
        for (OutletRun run : check.runs()) {
            if (run.reach().outlet().getTo() == null) {
                answer.caution(new Caution("gutter.lost", Severity.WARNING, check.gutter().getId(),
                        "Water of {0} is lost at {1}; say what takes it.", List.of(name(), outletName(run)), "",
                        Source.definition("how the model was read")));
            }
        }
    }

    private Outcome.Completed outlet(OutletRun run) {
        AnswerBuilder outlet = new AnswerBuilder(run.reach().outlet().getId());
        Quantity arriving = flow(run.flowM3PerS());
        outlet.number("flow", "Flow in the design storm", arriving, Step.of("Q",
                "its part of the gutter's water, by length", "Qall s / L", arriving,
                        Source.definition("even gathering"),
                new Input("Qall", "of the gutter", flow(check.water().flowM3PerS(storm.intensityMmPerH()))),
                new Input("s", "stretch", Quantity.of(run.reach().wholeM(), Units.M)),
                new Input("L", "length of the gutter", check.gutter().getLength(), check.gutter().getId(), "length")));
        if (Double.isFinite(run.outletM3PerS())) {
            Quantity carried = flow(run.outletM3PerS());
            double utilisation = run.flowM3PerS() / run.outletM3PerS();
            outlet.number("capacity", "Capacity of the outlet", carried, Step.of("Qo",
                    "flow at which it holds the water up to the brim somewhere along the gutter; as a weir "
                            + "D h^1.5 / 7500, drowned D^2 h^0.5 / 15000, half of it behind a strainer (L/s, mm)",
                    "h(Qo) + surface = brim", carried, STANDARD,
                    new Input("D", "diameter", run.reach().outlet().getDiameter(), run.reach().outlet().getId(),
                            "diameter")))
                    .share("utilisation", "Flow over capacity", utilisation, Step.of("u",
                            "flow over capacity",
                            "Q / Qo", Quantity.ofSi(utilisation, Units.PERCENT), Source.definition("ratio"),
                            new Input("Q", "flow", arriving), new Input("Qo", "capacity", carried)));
        }
        return outlet.build();
    }

    private String name() {
        return Names.of(check.gutter());
    }

    private String outletName(OutletRun run) {
        GutterOutlet outlet = run.reach().outlet();
        Gutter gutter = check.gutter();
        double at = outlet.getPosition() == null ? gutter.getLength().si() : outlet.getPosition().si();
        return Names.of(outlet) + " at " + String.format(Locale.ROOT, "%.1f m", at);
    }

    private static Quantity flow(double flowM3PerS) {
        return Quantity.ofSi(flowM3PerS, Units.L_PER_S);
    }
}
