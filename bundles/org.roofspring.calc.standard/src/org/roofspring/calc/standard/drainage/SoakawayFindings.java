package org.roofspring.calc.standard.drainage;

import java.util.List;

import org.roofspring.calc.Caution;
import org.roofspring.calc.Caution.Severity;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.Source;
import org.roofspring.calc.Working.Input;
import org.roofspring.calc.Working.Step;
import org.roofspring.calc.standard.answer.AnswerBuilder;
import org.roofspring.calc.standard.answer.KernelTerms;
import org.roofspring.calc.standard.water.Given;
import org.roofspring.calc.standard.water.Names;
import org.roofspring.drainage.intensity.DurationRatios;
import org.roofspring.drainage.siting.Soakaway;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.SitePackage.Literals;
import org.roofspring.site.Siting;
import org.roofspring.site.Tank;

/** Whether the soakaway of a tank takes the design storm while the tank is full. */
final class SoakawayFindings {
    private static final Source SIDES = KernelTerms.source(Soakaway.SOURCE);

    private SoakawayFindings() {
    }

    /** Whether all is given that a check needs. */
    static boolean sized(Siting siting) {
        return siting != null && siting.isSoakaway() && siting.getSoakawayLength() != null
                && siting.getSoakawayWidth() != null && siting.getSoakawayDepth() != null
                && siting.getInfiltration() != null;
    }

    /**
     * The check, for storms of the design return period and every duration up to a day.
     *
     * @throws IllegalArgumentException when the pit cannot be as it is given
     */
    static Outcome.Completed of(Tank tank, Arriving water, DesignStorm storm) {
        Siting siting = tank.getSiting();
        double voids = Given.si(siting, Literals.SITING__SOAKAWAY_VOIDS, 1);
        double drainM3PerS = Given.si(siting, Literals.SITING__TAP_DRAIN, 0);
        Soakaway pit = new Soakaway(siting.getSoakawayLength().si(), siting.getSoakawayWidth().si(),
                siting.getSoakawayDepth().si(), voids, siting.getInfiltration().in(Units.MM_PER_H) * 1e-3 / 3600);
        double shortestS = storm.ratios().points().getFirst().durationS();
        List<Soakaway.Storm> storms = Soakaway.DURATIONS_S.stream()
                .filter(time -> time >= shortestS && time <= DurationRatios.DAY_S)
                .map(time -> new Soakaway.Storm(time, storm.depthMm(time))).toList();
        Soakaway.Check check = pit.check(water.peakM2(), storms, drainM3PerS);
        AnswerBuilder answer = new AnswerBuilder(tank.getId());
        Quantity needed = Quantity.of(check.neededM3(), Units.M3);
        Quantity room = Quantity.of(check.roomM3(), Units.M3);
        Quantity halfEmpty = Quantity.ofSi(check.halfEmptyS(), Units.H);
        Input length = Given.input("L", "length", siting, Literals.SITING__SOAKAWAY_LENGTH, null);
        Input width = Given.input("w", "width", siting, Literals.SITING__SOAKAWAY_WIDTH, null);
        Input depth = Given.input("d", "depth", siting, Literals.SITING__SOAKAWAY_DEPTH, null);
        Input infiltration = Given.input("f", "infiltration of the soil", siting, Literals.SITING__INFILTRATION, null);
        answer.number("soakawayNeeded", "Room that its soakaway needs", needed,
                Step.of("I", "inflow of the storm that needs most room, of " + Quantity.ofSi(check.durationS(), Units.H),
                        "A i T + q T", Quantity.of(check.inflowM3(), Units.M3), SIDES,
                        new Input("A", "area that counts in the storm", Quantity.of(water.peakM2(), Units.M2)),
                        new Input("i", "its mean intensity", Quantity.of(
                                storm.depthMm(check.durationS()) / check.durationS() * 3600, Units.MM_PER_H)),
                        new Input("T", "its duration", Quantity.ofSi(check.durationS(), Units.H)),
                        Given.input("q", "steady flow of tap drains", siting, Literals.SITING__TAP_DRAIN,
                                Quantity.of(0, Units.L_PER_MIN))),
                Step.of("O", "soaked away in that time, through the sides half wet", "(L + w) d f T",
                        Quantity.of(check.outflowM3(), Units.M3), SIDES, length, width, depth, infiltration),
                Step.of("S", "room for the rest", "I - O", needed, SIDES))
                .number("soakawayRoom", "Room that its soakaway has", room, Step.of("S1", "room of the pit",
                        "L w d n", room, SIDES, length, width, depth,
                        Given.input("n", "share that water can fill", siting, Literals.SITING__SOAKAWAY_VOIDS,
                                Quantity.ofSi(voids, Units.PERCENT))))
                .share("soakawayUsed", "Soakaway needed over its room", check.utilisation(), Step.of("u",
                        "needed over room", "S / S1", Quantity.ofSi(check.utilisation(), Units.PERCENT), SIDES,
                        new Input("S", "needed", needed), new Input("S1", "room", room)))
                .number("soakawayHalfEmpty", "Soakaway half empty again after", halfEmpty, Step.of("t",
                        "half of the needed volume through the sides half wet", "S / 2 / ((L + w) d f)", halfEmpty,
                        SIDES, new Input("S", "needed", needed), length, width, depth, infiltration));
        if (!check.suffices()) {
            answer.caution(new Caution("siting.soakaway-small", Severity.WARNING, tank.getId(),
                    "The soakaway of {0} needs room for {1} in the design storm and has {2}; it is half empty again "
                            + "after {3}, and {4} is the usual limit. Water that it does not take runs over the ground.",
                    List.of(Names.of(tank), needed, room, halfEmpty, Quantity.ofSi(Soakaway.HALF_EMPTY_S, Units.H)),
                    "Ask an engineer, and the local code; have the infiltration found by a trial pit.", SIDES));
        }
        return answer.build();
    }
}
