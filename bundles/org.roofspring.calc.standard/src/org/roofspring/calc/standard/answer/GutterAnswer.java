package org.roofspring.calc.standard.answer;

import java.util.ArrayList;
import java.util.List;

import org.roofspring.calc.Caution;
import org.roofspring.calc.Caution.Severity;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.Source;
import org.roofspring.calc.Working.Input;
import org.roofspring.calc.Working.Step;
import org.roofspring.drainage.Gutter;
import org.roofspring.drainage.GutterCapacity;
import org.roofspring.drainage.GutterSection;
import org.roofspring.drainage.HalfRoundSection;
import org.roofspring.drainage.RectangularSection;
import org.roofspring.drainage.RoofRunoff;
import org.roofspring.drainage.StandardGutter;
import org.roofspring.drainage.siting.RoofCaution;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;

/** What a gutter carries and what the roof sends it, in words. */
public final class GutterAnswer {
    private static final Source STANDARD = Source.fromMemory("EN 12056-3:2000, Gravity drainage systems inside "
            + "buildings, part 3: Roof drainage, layout and calculation");
    private static final Source VARIED_FLOW = Source.fromMemory("Chow, Open-Channel Hydraulics, 1959, chapter 12; "
            + "Henderson, Open Channel Flow, 1966, chapter 7");
    private static final Source HEADLINE = Source.definition("the standard up to 3 mm per metre, the solved flow from "
            + "10 mm per metre on, in proportion between, so that capacity never leaps as the slope changes");
    private static final double FULL = 1;
    private static final double NEARLY_FULL = 0.9;

    private GutterAnswer() {
    }

    /**
     * @param elementId       of the gutter, or null
     * @param capacity        what the gutter carries
     * @param areaM2          effective area of the roof that drains to it
     * @param intensityMmPerH of the design storm
     * @param runoffRatio     share that runs off at the peak
     */
    public static Outcome.Completed of(String elementId, GutterCapacity capacity, double areaM2,
            double intensityMmPerH, double runoffRatio) {
        AnswerBuilder answer = figures(elementId, capacity, areaM2, intensityMmPerH, runoffRatio);
        cautions(elementId, capacity, RoofRunoff.flowM3PerS(areaM2, intensityMmPerH, runoffRatio))
                .forEach(answer::caution);
        return answer.build();
    }

    /** The figures without what has to be said beside them; arguments as in {@link #of}. */
    public static AnswerBuilder figures(String elementId, GutterCapacity capacity, double areaM2,
            double intensityMmPerH, double runoffRatio) {
        double runoffM3PerS = RoofRunoff.flowM3PerS(areaM2, intensityMmPerH, runoffRatio);
        Quantity carried = Quantity.ofSi(capacity.capacityM3PerS(), Units.L_PER_S);
        Quantity arriving = Quantity.ofSi(runoffM3PerS, Units.L_PER_S);
        Input area = new Input("A", "effective roof area", Quantity.of(areaM2, Units.M2));
        Input intensity = new Input("i", "intensity", Quantity.of(intensityMmPerH, Units.MM_PER_H));
        Input runoff = new Input("C", "share that runs off at the peak", Quantity.of(runoffRatio));
        double utilisation = capacity.utilisation(runoffM3PerS);
        AnswerBuilder answer = new AnswerBuilder(elementId)
                .number("capacity", "Capacity", carried, capacityStep(capacity, carried))
                .number("runoff", "Flow off the roof", arriving, Step.of("Q", "flow off the roof", "C i A", arriving,
                        Source.definition("rational method"), runoff, intensity, area))
                .share("utilisation", "Flow over capacity", utilisation,
                        Step.of("u", "flow over capacity", "Q / Qg", Quantity.ofSi(utilisation, Units.PERCENT),
                                Source.definition("ratio"), new Input("Q", "flow off the roof", arriving),
                                new Input("Qg", "capacity", carried)));
        if (runoffRatio * intensityMmPerH > 0) {
            largestRoof(answer, capacity, carried, intensity, runoff);
        }
        standard(answer, capacity);
        variedFlow(answer, capacity);
        return answer;
    }

    private static Step capacityStep(GutterCapacity capacity, Quantity carried) {
        double slope = capacity.gutter().slopeRatio();
        Input standard = flow("QL", "by the standard's formula", capacity.standardM3PerS());
        Input varied = flow("QV", "by varied flow", capacity.variedFlowM3PerS());
        if (slope <= StandardGutter.NOMINALLY_LEVEL_RATIO) {
            return Step.of("Qg", "capacity of a nominally level gutter", "QL", carried, HEADLINE, standard);
        }
        if (slope >= GutterCapacity.SLOPING_RATIO) {
            return Step.of("Qg", "capacity of a sloping gutter", "QV", carried, HEADLINE, varied);
        }
        double share = (slope - StandardGutter.NOMINALLY_LEVEL_RATIO)
                / (GutterCapacity.SLOPING_RATIO - StandardGutter.NOMINALLY_LEVEL_RATIO);
        return Step.of("Qg", "capacity between nominally level and sloping", "(1 - w) QL + w QV", carried, HEADLINE,
                new Input("w", "weight of the solved flow", Quantity.ofSi(share, Units.PERCENT)), standard, varied);
    }

    private static void largestRoof(AnswerBuilder answer, GutterCapacity capacity, Quantity carried, Input intensity,
            Input runoff) {
        Quantity roof = Quantity.of(capacity.capacityM3PerS()
                / RoofRunoff.flowM3PerS(1, intensity.value().si(), runoff.value().si()), Units.M2);
        answer.number("largestRoof", "Largest roof it drains at this intensity", roof,
                Step.of("Amax", "roof that fills the gutter to capacity", "Qg / (C i)", roof,
                        Source.definition("rational method"), new Input("Qg", "capacity", carried), runoff, intensity));
    }

    private static void standard(AnswerBuilder answer, GutterCapacity capacity) {
        Gutter gutter = capacity.gutter();
        GutterSection section = gutter.section();
        Quantity area = Quantity.ofSi(section.fullAreaM2(), Units.MM2);
        Quantity nominal = Quantity.ofSi(StandardGutter.nominalM3PerS(section), Units.L_PER_S);
        double depths = gutter.lengthM() / section.depthM();
        double factor = StandardGutter.lengthFactor(depths, gutter.slopeRatio());
        boolean round = section instanceof HalfRoundSection;
        Quantity result = Quantity.ofSi(capacity.standardM3PerS(), Units.L_PER_S);
        answer.number("standardCapacity", "Capacity by the standard's formula", result,
                Step.of("A", "cross-section filled to the brim", "section of width b and depth h", area,
                        Source.definition("geometry"), new Input("b", "width", millimetres(section.widthM())),
                        new Input("h", "depth", millimetres(section.depthM()))),
                Step.of("QN", "nominal capacity of a short level gutter, L/s with A in mm2",
                        (round ? "2.78e-5" : "3.48e-5") + " A^1.25 Fs", nominal, STANDARD,
                        new Input("A", "cross-section", area),
                        new Input("Fs", round ? "shape; 1 for a true half-round"
                                : "shape; 1 where as deep as wide; from the frictionless level gutter, as the "
                                        + "standard gives it as a graph", Quantity.of(shape(section)))),
                Step.of("QL", "capacity by the standard's formula", "0.9 QN FL", result, STANDARD,
                        new Input("QN", "nominal capacity", nominal),
                        new Input("FL", "factor for a length of " + Math.round(depths) + " depths and for the slope",
                                Quantity.of(factor))));
    }

    /** How the section's frictionless flow compares with that of the section which the standard's constant is for. */
    private static double shape(GutterSection section) {
        GutterSection plain = section instanceof HalfRoundSection ? new HalfRoundSection(0.1)
                : new RectangularSection(0.1, 0.1);
        return flowByArea(section) / flowByArea(plain);
    }

    private static double flowByArea(GutterSection section) {
        return StandardGutter.frictionlessM3PerS(section) / Math.pow(section.fullAreaM2(), 1.25);
    }

    private static void variedFlow(AnswerBuilder answer, GutterCapacity capacity) {
        Gutter gutter = capacity.gutter();
        Quantity varied = Quantity.ofSi(capacity.variedFlowM3PerS(), Units.L_PER_S);
        answer.number("variedFlowCapacity", "Capacity by varied flow", varied, Step.of("QV",
                "flow at which the water surface, solved along the gutter, just touches the brim",
                "d/dx (Q^2/(g A) + A z) = A (S - Sf)", varied, VARIED_FLOW,
                new Input("L", "length to the outlet", Quantity.of(gutter.lengthM(), Units.M)),
                new Input("S", "slope", Quantity.ofSi(gutter.slopeRatio(), Units.PERCENT)),
                new Input("n", "Manning's roughness, s/m^(1/3)", Quantity.of(gutter.manningN()))));
        capacity.uniformFullM3PerS().ifPresent(flowM3PerS -> {
            Quantity uniform = Quantity.ofSi(flowM3PerS, Units.L_PER_S);
            answer.number("uniformFullFlow", "Brim-full flow of even depth, for comparison", uniform,
                    Step.of("QM", "flow of even depth that fills the section; a very long gutter tends to it",
                            "A (A / P)^(2/3) S^(1/2) / n", uniform, Source.definition("Manning"),
                            new Input("S", "slope", Quantity.ofSi(gutter.slopeRatio(), Units.PERCENT)),
                            new Input("n", "Manning's roughness, s/m^(1/3)", Quantity.of(gutter.manningN()))));
        });
    }

    private static Input flow(String symbol, String meaning, double flowM3PerS) {
        return new Input(symbol, meaning, Quantity.ofSi(flowM3PerS, Units.L_PER_S));
    }

    private static Quantity millimetres(double lengthM) {
        return Quantity.ofSi(lengthM, Units.MM);
    }

    private static List<Caution> cautions(String elementId, GutterCapacity capacity, double runoffM3PerS) {
        double utilisation = capacity.utilisation(runoffM3PerS);
        Quantity carried = Quantity.ofSi(capacity.capacityM3PerS(), Units.L_PER_S);
        Quantity arriving = Quantity.ofSi(runoffM3PerS, Units.L_PER_S);
        List<Caution> cautions = new ArrayList<>();
        boolean level = capacity.gutter().slopeRatio() <= StandardGutter.NOMINALLY_LEVEL_RATIO;
        if (utilisation > FULL) {
            cautions.add(new Caution("gutter.spills", Severity.WARNING, elementId,
                    "The gutter spills: {0} arrive and it carries {1}. Widen it, give it more fall, or add an outlet "
                            + "so that each run is shorter.", List.of(arriving, carried), "",
                    Source.definition("flow over capacity")));
        } else if (utilisation > NEARLY_FULL && !level) {
            cautions.add(new Caution("gutter.nearly-full", Severity.INFO, elementId,
                    "The solved flow has no allowance for dips, joints and leaves; keep a sloping gutter at {0} of its "
                            + "capacity or less.", List.of(Quantity.ofSi(NEARLY_FULL, Units.PERCENT)), "",
                    Source.commonPractice("the standard allows a tenth for a gutter that is not quite true")));
        }
        if (level) {
            cautions.add(KernelTerms.caution(elementId, RoofCaution.STANDING_WATER));
        }
        cautions.add(new Caution("gutter.outlet", Severity.INFO, elementId,
                "The capacity is that of the gutter with a free outlet; the outlet and the downpipe must carry as "
                        + "much.", List.of(), "", Source.definition("water drops freely over the end")));
        cautions.add(KernelTerms.caution(elementId, RoofCaution.LADDER_WORK));
        cautions.add(new Caution("gutter.verify", Severity.INFO, elementId,
                "The standard's constants and factors are from memory; verify them against EN 12056-3:2000 before you "
                        + "rely on them, and follow the local building code.", List.of(), "", STANDARD));
        return cautions;
    }
}
