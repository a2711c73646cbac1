package org.roofspring.calc.standard.pumping;

import java.util.List;
import java.util.Optional;

import org.roofspring.calc.Outcome;
import org.roofspring.calc.Source;
import org.roofspring.calc.Working.Input;
import org.roofspring.calc.Working.Step;
import org.roofspring.calc.standard.answer.AnswerBuilder;
import org.roofspring.calc.standard.answer.DutyAnswer;
import org.roofspring.calc.standard.water.PumpedWater;
import org.roofspring.hydraulics.Band;
import org.roofspring.hydraulics.pump.DutyPoint;
import org.roofspring.hydraulics.pump.DutySolver;
import org.roofspring.hydraulics.pump.PumpSet;
import org.roofspring.hydraulics.pump.SystemCurve;
import org.roofspring.hydraulics.pump.WorkingRange;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Unit;
import org.roofspring.quantity.Units;
import org.roofspring.site.Pump;
import org.roofspring.site.Site;

/** The duty of one pump of the site with all that follows from it: range, suction, surge, pipes. */
public final class DutyFindings {
    private DutyFindings() {
    }

    /** The findings about a pump with points, or why there are none. */
    public static Outcome of(Site site, Pump pump) {
        try {
            return switch (PumpedWater.read(site, pump)) {
                case PumpedWater.Reading.Missing missing -> new Outcome.NotComputable(missing.sentences().stream()
                        .map(sentence -> new Outcome.Problem(pump.getId(), null, sentence)).toList(), List.of());
                case PumpedWater.Reading.Found found -> of(found.water(),
                        PumpedWater.pumpSet(pump, pump, pump.getName()));
            };
        } catch (IllegalArgumentException e) {
            return new Outcome.NotComputable(
                    new Outcome.Problem(pump.getId(), "points", pump.getName() + ": " + e.getMessage() + "."));
        }
    }

    private static Outcome of(PumpedWater water, PumpSet pumps) {
        SystemCurve system = water.line().at(water.designState());
        Outcome outcome = DutyAnswer.of(water.pump().getId(), pumps, system);
        if (!(outcome instanceof Outcome.Completed completed)) {
            return outcome;
        }
        DutyPoint duty = DutySolver.solve(pumps, system).working().orElseThrow();
        AnswerBuilder answer = new AnswerBuilder(water.pump().getId());
        staticHead(answer, water, system);
        answer.include(completed);
        range(answer, WorkingRange.of(pumps, water.line(), water.states()));
        SuctionFindings.add(answer, water, duty);
        SurgeFindings.add(answer, water, pumps, system, duty);
        LineCautions.add(answer, water, duty.flowM3PerS(), system.water());
        return answer.build();
    }

    private static void staticHead(AnswerBuilder answer, PumpedWater water, SystemCurve system) {
        Quantity staticHead = Quantity.of(system.staticHeadM(), Units.M);
        answer.number("staticHead", "Static head", staticHead,
                Step.of("Hs", "from the lowest water drawn to the inlet of the tank, or to the pressure of the vessel, that"
                        + " is filled", "zd - zs", staticHead, Source.definition("difference of levels"),
                        new Input("zd", "level of the discharge", Quantity.of(water.dischargeLevelM().high(), Units.M)),
                        new Input("zs", "lowest level of the water drawn",
                                Quantity.of(water.suctionLevelM().low(), Units.M))));
    }

    /** How flow, NPSH margin and energy move with levels, temperature, barometer and age. */
    private static void range(AnswerBuilder answer, WorkingRange range) {
        band(answer, "flow", "Flow", range.flowM3PerS(), Units.M3_PER_S);
        band(answer, "npshMargin", "NPSH margin", range.npshMarginM(), Units.M);
        range.specificEnergyJPerM3().ifPresent(energy -> band(answer, "specificEnergy", "Energy for each volume",
                Optional.of(new Band(energy.low() / 3600, energy.high() / 3600)), Units.WH_PER_M3));
        answer.flag("worksThroughout", "Works at all levels, temperatures and ages", range.worksThroughout());
    }

    private static void band(AnswerBuilder answer, String id, String title, Optional<Band> band, Unit unit) {
        Source corners = Source.definition("duty at every corner of level, temperature, barometer and age of pipe");
        band.ifPresent(b -> {
            answer.number(id + "Lowest", title + ", lowest", b.low(), unit, Step.of("min", title + ", lowest of all states",
                    "smallest over all states", Quantity.of(b.low(), unit), corners));
            answer.number(id + "Highest", title + ", highest", b.high(), unit, Step.of("max", title
                    + ", highest of all states", "largest over all states", Quantity.of(b.high(), unit), corners));
        });
    }
}
