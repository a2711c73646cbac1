package org.roofspring.calc.standard.drainage;

import java.util.List;

import org.roofspring.calc.Caution;
import org.roofspring.calc.Caution.Severity;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.Source;
import org.roofspring.calc.Working.Input;
import org.roofspring.calc.Working.Step;
import org.roofspring.calc.standard.answer.AnswerBuilder;
import org.roofspring.calc.standard.answer.FirstFlushAnswer;
import org.roofspring.calc.standard.answer.KernelTerms;
import org.roofspring.calc.standard.water.Given;
import org.roofspring.calc.standard.water.Names;
import org.roofspring.drainage.tank.FirstFlush;
import org.roofspring.drainage.tank.InletScreen;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.Downpipe;
import org.roofspring.site.FirstFlushDiverter;
import org.roofspring.site.Screen;
import org.roofspring.site.SitePackage;
import org.roofspring.site.Tank;

/**
 * What is said of downpipes, screens, diverters and of the flow into tanks. Each method throws an
 * {@link IllegalArgumentException}, in words that follow the part's name and a colon, when something is missing or
 * cannot be.
 */
final class WayFindings {
    private static final Source STANDARD = Source.fromMemory("EN 12056-3:2000, downpipes, after Wyly and Eaton");
    private static final Source ORIFICE = Source.definition("orifice under a depth of water");
    private static final double SCREEN_HEAD_M = 0.02;
    private static final double CHAMBER_HEIGHT_M = 1;
    private static final double LITRES_TO_M3 = 0.001;

    private WayFindings() {
    }

    static Outcome.Completed downpipe(Downpipe pipe, Arriving water, double intensityMmPerH) {
        org.roofspring.drainage.Downpipe kernel = OutletRun.of(pipe);
        Quantity carried = flow(kernel.capacityM3PerS());
        Quantity arriving = flow(water.flowM3PerS(intensityMmPerH));
        double utilisation = arriving.si() / carried.si();
        AnswerBuilder answer = new AnswerBuilder(pipe.getId());
        answer.number("flow", "Flow in the design storm", arriving, rational(water, intensityMmPerH, arriving))
                .number("capacity", "Capacity of the downpipe", carried, Step.of("Qd",
                        "water that clings to the wall of an upright pipe, L/s with d and k in mm",
                        "2.5e-4 k^-0.167 d^2.667 f^1.667", carried, STANDARD,
                        new Input("k", "roughness", Quantity.ofSi(kernel.roughnessMm() / 1000, Units.MM)),
                        Given.input("d", "bore", pipe, SitePackage.Literals.DOWNPIPE__BORE, pipe.getBore()),
                        Given.input("f", "share of the bore filled", pipe, SitePackage.Literals.DOWNPIPE__FILL_SHARE,
                                Quantity.of(kernel.fillRatio()))))
                .share("utilisation", "Flow over capacity", utilisation, ratio(utilisation, arriving,
                        carried));
        if (utilisation > 1) {
            answer.caution(new Caution("downpipe.overloaded", Severity.WARNING, pipe.getId(),
                    "{0} carries {1} and {2} arrive in the design storm; the water backs up into the gutter.",
                    List.of(Names.of(pipe), carried, arriving), "", STANDARD));
        }
        if (pipe.isWet()) {
            answer.caution(new Caution("downpipe.wet", Severity.WARNING, pipe.getId(),
                    "{0} stays full between storms: give it a drain at its lowest place, screen both ends against "
                            + "mosquitoes, and flush it before the rains.", List.of(Names.of(pipe)), "",
                    Source.commonPractice("wet pipes to a tank")));
        }
        return answer.build();
    }

    static Outcome.Completed screen(Screen screen, Arriving water, double intensityMmPerH) {
        if (screen.getArea() == null || screen.getOpenShare() == null) {
            throw new IllegalArgumentException("its area or its open share is missing");
        }
        double headM = Given.si(screen, SitePackage.Literals.SCREEN__RIM_HEIGHT, SCREEN_HEAD_M);
        InletScreen kernel = new InletScreen(screen.getArea().si(), screen.getOpenShare().si(),
                Given.si(screen, SitePackage.Literals.SCREEN__BLOCKED_SHARE, InletScreen.DEFAULT_BLOCKED_RATIO),
                headM, org.roofspring.drainage.tank.Diverter.DEFAULT_DISCHARGE_RATIO);
        Quantity carried = flow(kernel.capacityM3PerS());
        Quantity arriving = flow(water.flowM3PerS(intensityMmPerH));
        double utilisation = arriving.si() / carried.si();
        AnswerBuilder answer = new AnswerBuilder(screen.getId());
        answer.number("flow", "Flow in the design storm", arriving, rational(water, intensityMmPerH, arriving))
                .number("capacity", "Capacity of the screen, part of it blocked", carried,
                        Step.of("Qs", "flow through the holes that leaves and silt do not cover",
                                "Cd A o (1 - b) sqrt(2 g h)", carried, ORIFICE,
                                new Input("Cd", "discharge coefficient", Quantity.of(kernel.dischargeRatio())),
                                Given.input("A", "area", screen, SitePackage.Literals.SCREEN__AREA, screen.getArea()),
                                Given.input("o", "open share", screen, SitePackage.Literals.SCREEN__OPEN_SHARE,
                                        screen.getOpenShare()),
                                Given.input("b", "blocked share", screen, SitePackage.Literals.SCREEN__BLOCKED_SHARE,
                                        Quantity.of(kernel.blockedRatio())),
                                Given.input("h", "depth of water over it before it spills", screen,
                                        SitePackage.Literals.SCREEN__RIM_HEIGHT, Quantity.of(headM, Units.M))))
                .share("utilisation", "Flow over capacity", utilisation, ratio(utilisation, arriving,
                        carried));
        if (utilisation > 1) {
            Quantity needed = Quantity.ofSi(kernel.areaForM2(arriving.si()), Units.CM2);
            answer.caution(new Caution("screen.overloaded", Severity.WARNING, screen.getId(),
                    "{0} passes {1} when {2} of it is blocked and {3} arrive in the design storm; {4} of such screen "
                            + "would do.", List.of(Names.of(screen), carried,
                            Quantity.ofSi(kernel.blockedRatio(), Units.PERCENT), arriving, needed), "", ORIFICE));
        }
        return answer.build();
    }

    static Outcome.Completed diverter(FirstFlushDiverter diverter, Arriving water) {
        if (water.planM2() == 0) {
            throw new IllegalArgumentException("no roof drains to it");
        }
        double volumeM3 = diverter.getVolume() != null ? diverter.getVolume().si()
                : diverter.getDepth() == null ? 0 : diverter.getDepth().in(Units.MM) * LITRES_TO_M3 * water.planM2();
        if (volumeM3 == 0) {
            throw new IllegalArgumentException("neither a volume nor a depth of rain to turn away is given");
        }
        FirstFlushAnswer answer = FirstFlushAnswer.ofDepth(diverter.getId(), water.planM2(),
                FirstFlush.depthMm(water.planM2(), volumeM3), FirstFlush.DEFAULT_HALF_DEPTH_MM);
        AnswerBuilder whole = new AnswerBuilder(diverter.getId());
        if (diverter.getDrainOrifice() != null && diverter.getDrainOrifice().si() > 0) {
            answer.inChamber(Given.si(diverter,
                    SitePackage.Literals.FIRST_FLUSH_DIVERTER__HEIGHT, CHAMBER_HEIGHT_M), diverter.getDrainOrifice().si());
            drained(whole, diverter, answer.drainDownS());
        } else if (diverter.getDrainTime() == null) {
            whole.caution(new Caution("firstflush.by-hand", Severity.WARNING, diverter.getId(),
                    "{0} has no drain: unless someone empties it after each rain, the next one carries its dirt on.",
                    List.of(Names.of(diverter)), "", Source.commonPractice("upkeep of first-flush chambers")));
        }
        return whole.include(answer.figures()).build();
    }

    private static void drained(AnswerBuilder answer, FirstFlushDiverter diverter, double drainDownS) {
        double resetS = Given.si(diverter, SitePackage.Literals.FIRST_FLUSH_DIVERTER__RESET_DRY_DAYS, 0);
        if (resetS > 0 && drainDownS > resetS) {
            answer.caution(new Caution("firstflush.slow", Severity.WARNING, diverter.getId(),
                    "{0} takes {1} to drain and is counted on again after {2}; widen its hole.",
                    List.of(Names.of(diverter), Quantity.ofSi(drainDownS, Units.H), Quantity.ofSi(resetS, Units.D)), "",
                    KernelTerms.source(org.roofspring.drainage.tank.Diverter.DISCHARGE_SOURCE)));
        }
        if (diverter.getDrainTime() != null && (drainDownS > 2 * diverter.getDrainTime().si()
                || drainDownS < diverter.getDrainTime().si() / 2)) {
            answer.caution(new Caution("firstflush.drain-time", Severity.INFO, diverter.getId(),
                    "{0} is said to drain in {1}; by its hole, from a chamber 1 m tall, it takes {2}.",
                    List.of(Names.of(diverter), diverter.getDrainTime(), Quantity.ofSi(drainDownS, Units.H)), "",
                    KernelTerms.source(org.roofspring.drainage.tank.Diverter.DISCHARGE_SOURCE)));
        }
    }

    static Outcome.Completed tank(Tank tank, Arriving water, double intensityMmPerH) {
        Quantity arriving = flow(water.flowM3PerS(intensityMmPerH));
        return new AnswerBuilder(tank.getId()).number("flow", "Flow off the roofs in the design storm", arriving,
                rational(water, intensityMmPerH, arriving)).build();
    }

    /** The step that leads from areas to flow. */
    static Step rational(Arriving water, double intensityMmPerH, Quantity flow) {
        return Step.of("Q", "flow off the roofs that drain to it", "C i Ae", flow, Source.definition("rational method"),
                new Input("C", "share that runs off at the peak", Quantity.of(water.peakRatio())),
                new Input("i", "design intensity", Quantity.of(intensityMmPerH, Units.MM_PER_H)),
                new Input("Ae", "effective area, without what spills over gutters on the way",
                        Quantity.of(water.effectiveM2(), Units.M2)));
    }

    private static Step ratio(double utilisation, Quantity arriving, Quantity carried) {
        return Step.of("u", "flow over capacity", "Q / Qc", Quantity.ofSi(utilisation, Units.PERCENT), Source.definition("ratio"),
                new Input("Q", "flow", arriving), new Input("Qc", "capacity", carried));
    }

    private static Quantity flow(double flowM3PerS) {
        return Quantity.ofSi(flowM3PerS, Units.L_PER_S);
    }
}
