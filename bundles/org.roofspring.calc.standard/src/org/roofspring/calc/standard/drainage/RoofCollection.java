package org.roofspring.calc.standard.drainage;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.roofspring.calc.Outcome;
import org.roofspring.calc.Source;
import org.roofspring.calc.Working.Input;
import org.roofspring.calc.Working.Step;
import org.roofspring.calc.standard.answer.AnswerBuilder;
import org.roofspring.calc.standard.answer.KernelTerms;
import org.roofspring.calc.standard.water.DrainShares;
import org.roofspring.calc.standard.water.Names;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.Gutter;
import org.roofspring.site.RoofDrain;

/**
 * What a roof's gutters catch of its rain over the years.
 *
 * @param area          the roof
 * @param efficiency    share of its runoff that gets past its gutters
 * @param complete      whether every gutter that it drains to could be checked
 * @param lostM3PerYear that does not
 * @param gainM3PerYear of it that wider gutters would save
 * @param answer        findings and workings
 */
record RoofCollection(RoofArea area, double efficiency, boolean complete, double lostM3PerYear, double gainM3PerYear,
        Outcome.Completed answer) {
    private static final Source MEAN = Source.definition("mean of its gutters, by their shares");
    private static final Source SUM = Source.definition("sum");

    static RoofCollection of(RoofArea area, DesignStorm storm, Map<Gutter, GutterCheck> checks) {
        double efficiency = 0;
        double drained = 0;
        double lost = 0;
        double gain = 0;
        boolean complete = true;
        List<Input> parts = new ArrayList<>();
        List<String> terms = new ArrayList<>();
        for (RoofDrain drain : area.roof().getDrains()) {
            double share = DrainShares.of(area.roof(), drain);
            drained += share;
            GutterCheck check = drain.getTo() instanceof Gutter gutter ? checks.get(gutter) : null;
            complete &= check != null || !(drain.getTo() instanceof Gutter);
            efficiency += share * (check == null ? 1 : check.efficiency());
            if (check != null) {
                double ofGutter = check.water().planM2() == 0 ? 0 : share * area.planM2() * area.yearRatio()
                        / check.water().yearM2();
                lost += check.lostM3PerYear() * (Double.isFinite(ofGutter) ? ofGutter : 0);
                gain += check.gainM3PerYear().orElse(0) * (Double.isFinite(ofGutter) ? ofGutter : 0);
                int n = terms.size() + 1;
                parts.add(new Input("s" + n, "share to " + Names.of(drain.getTo()), Quantity.of(share)));
                parts.add(new Input("e" + n, "share of it that gets past", Quantity.ofSi(check.efficiency(),
                        Units.PERCENT), check.gutter().getId(), null));
                terms.add("s" + n + " e" + n);
            }
        }
        AnswerBuilder answer = new AnswerBuilder(area.roof().getId());
        Quantity effective = Quantity.of(area.effectiveM2(), Units.M2);
        Quantity flow = Quantity.ofSi(Arriving.of(area).flowM3PerS(storm.intensityMmPerH()), Units.L_PER_S);
        answer.number("effectiveArea", "Area that counts in the design storm", effective, area.step())
                .number("flow", "Flow in the design storm", flow,
                        WayFindings.rational(Arriving.of(area), storm.intensityMmPerH(), flow));
        double caught = drained > 0 ? Math.min(1, efficiency / drained) : 1;
        if (complete && !terms.isEmpty()) {
            Quantity share = Quantity.ofSi(caught, Units.PERCENT);
            answer.number("collectionEfficiency", "Share of runoff that gets past its gutters", share,
                    Step.of("e", "mean over its drains; a way without a gutter lets everything past",
                            "(" + String.join(" + ", terms) + " + what has no gutter) / S", share, MEAN,
                            with(parts, new Input("S", "all shares", Quantity.of(drained)))));
            litres(answer, "lostPerYear", "Lost over its gutters in a mean year", lost, "sum of its parts of F", storm);
            litres(answer, "largerGutterGain", "Gained a year by gutters 25 mm wider", gain,
                    "sum of its parts of G", storm);
        }
        return new RoofCollection(area, caught, complete, lost, gain, answer.build());
    }

    private static Input[] with(List<Input> parts, Input last) {
        List<Input> all = new ArrayList<>(parts);
        all.add(last);
        return all.toArray(Input[]::new);
    }

    private static void litres(AnswerBuilder answer, String id, String title, double volumeM3, String formula,
            DesignStorm storm) {
        Quantity volume = Quantity.ofSi(volumeM3, Units.L);
        answer.number(id, title, volume, Step.of(id.startsWith("lost") ? "F" : "G",
                title.toLowerCase(java.util.Locale.ROOT),
                formula, volume, KernelTerms.source(storm.ratios().source())));
    }

    /** Sums over the roofs; nothing where none has a gutter that could be checked. */
    static Optional<Outcome.Completed> totals(List<RoofCollection> roofs) {
        List<RoofCollection> counted = roofs.stream()
                .filter(roof -> roof.answer().finding("lostPerYear", roof.area().roof().getId()).isPresent()).toList();
        if (counted.isEmpty()) {
            return Optional.empty();
        }
        AnswerBuilder answer = new AnswerBuilder(null);
        total(answer, "lostPerYear", "Lost over gutters in a mean year", counted, false);
        total(answer, "largerGutterGain", "Gained a year, all gutters 25 mm wider", counted, true);
        return Optional.of(answer.build());
    }

    private static void total(AnswerBuilder answer, String id, String title, List<RoofCollection> roofs, boolean gain) {
        List<Input> inputs = new ArrayList<>();
        List<String> terms = new ArrayList<>();
        double sum = 0;
        for (RoofCollection roof : roofs) {
            double volume = gain ? roof.gainM3PerYear() : roof.lostM3PerYear();
            sum += volume;
            terms.add("V" + (terms.size() + 1));
            inputs.add(new Input(terms.getLast(), "of " + Names.of(roof.area().roof()), Quantity.ofSi(volume,
                    Units.L)));
        }
        Quantity all = Quantity.ofSi(sum, Units.L);
        answer.number(id, title, all, Step.of("V", "all roofs", String.join(" + ", terms), all, SUM,
                inputs.toArray(Input[]::new)));
    }
}
