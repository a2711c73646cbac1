package org.roofspring.calc.standard.pumping;

import java.util.List;
import java.util.OptionalDouble;

import org.roofspring.calc.Caution;
import org.roofspring.calc.Caution.Severity;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.Source;
import org.roofspring.calc.Working.Input;
import org.roofspring.calc.Working.Step;
import org.roofspring.calc.standard.answer.AnswerBuilder;
import org.roofspring.calc.standard.water.PumpedWater;
import org.roofspring.calc.standard.water.TankWater;
import org.roofspring.hydraulics.pump.DirectSupply;
import org.roofspring.hydraulics.pump.DutyPoint;
import org.roofspring.hydraulics.pump.NpshMargin;
import org.roofspring.hydraulics.pump.Submergence;
import org.roofspring.hydraulics.pump.SuctionLift;
import org.roofspring.hydraulics.pump.SuctionReview;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.FittingKind;
import org.roofspring.site.Pump;
import org.roofspring.site.PumpKind;

/**
 * The suction of a pump: its lift against what is usual, NPSH on the worst day and what each hardship costs, the water
 * that must stand over the intake, and the level at which it must be off against running dry.
 */
final class SuctionFindings {
    static final Source MARGIN = Source.fromMemory("ANSI/HI 9.6.1, Rotodynamic pumps, guideline for NPSH margin");
    private static final Source WORST_DAY = Source.published(
            "definition of NPSH; vapour pressure by IAPWS SR1-86, air pressure by US Standard Atmosphere 1976;"
                    + " barometer 4 kPa low and a strainer half blocked are common practice");
    private static final Source VORTEX = Source.fromMemory("ANSI/HI 9.8, Rotodynamic pumps for pump intake design");
    private static final Source LIFT = Source.published("The Engineering ToolBox, suction head and altitude: advisory");
    private static final Source LEVELS = Source.definition("difference of levels");

    private final AnswerBuilder answer;
    private final Pump pump;
    private final PumpedWater water;
    private final DutyPoint duty;

    private SuctionFindings(AnswerBuilder answer, PumpedWater water, DutyPoint duty) {
        this.answer = answer;
        this.pump = water.pump();
        this.water = water;
        this.duty = duty;
    }

    static void add(AnswerBuilder answer, PumpedWater water, DutyPoint duty) {
        SuctionFindings findings = new SuctionFindings(answer, water, duty);
        if (water.pump().getKind() != PumpKind.SUBMERSIBLE) {
            findings.lift();
            findings.priming();
        }
        findings.worstDay();
        findings.dryRunning(findings.submergence());
    }

    private void lift() {
        double liftM = water.line().pumpLevelM() - water.suctionLevelM().low();
        double limitM = SuctionLift.practicalLimitM(water.altitudeM() + water.line().pumpLevelM());
        Quantity lift = Quantity.of(liftM, Units.M);
        Quantity limit = Quantity.of(limitM, Units.M);
        answer.number("suctionLift", "Suction lift at the lowest water", lift,
                Step.of("z", "height of the pump over the lowest water", "zp - zs", lift, LEVELS,
                        new Input("zp", "level of the pump", Quantity.of(water.line().pumpLevelM(), Units.M),
                                pump.getId(), "level"),
                        new Input("zs", "lowest level of the water drawn",
                                Quantity.of(water.suctionLevelM().low(), Units.M))));
        answer.number("practicalLift", "Lift usually held to at this altitude", limit,
                Step.of("zmax", "lift a sound pump on cold water is usually held to", "read at the altitude", limit, LIFT,
                        new Input("a", "altitude of the pump",
                                Quantity.of(water.altitudeM() + water.line().pumpLevelM(), Units.M))));
        if (liftM > limitM) {
            warn("pump.lift", Severity.WARNING,
                    "The pump lifts {0} by suction; at this altitude {1} is the usual limit. Lower it, or use a"
                            + " submersible.", LIFT, lift, limit);
        }
    }

    private void priming() {
        boolean footValve = pump.isFootValve() || water.suctionRuns().stream().flatMap(run -> run.getFittings().stream())
                .anyMatch(fitting -> fitting.getKind() == FittingKind.FOOT_VALVE && fitting.getCount() > 0);
        if (!footValve && water.line().pumpLevelM() > water.suctionLevelM().low()) {
            warn("pump.priming", Severity.WARNING,
                    "The pump stands above the water and no foot valve is stated: it loses its prime when it stops and"
                            + " then runs dry. Fit a foot valve or a self-priming pump, and prime it before the first"
                            + " start.", Source.commonPractice("priming of pumps above the water"));
        }
    }

    private void worstDay() {
        double requiredM = duty.npshRequiredM().orElse(0);
        SuctionReview review = SuctionReview.of(water.usualSuction(), water.worstSuction(), duty.flowM3PerS(), requiredM,
                NpshMargin.USUAL);
        Input flow = new Input("Q", "flow at the duty point", Quantity.ofSi(duty.flowM3PerS(), Units.L_PER_S));
        Quantity usual = Quantity.of(review.usualM(), Units.M);
        Quantity worst = Quantity.of(review.worstM(), Units.M);
        answer.number("npshWorst", "NPSH available on the worst day", worst,
                Step.of("NPSHu", "NPSH available with a full tank, usual water, clean strainer and new pipe",
                        "(pa - pv) / (rho g) - z - hs", usual, WORST_DAY, flow),
                Step.of("NPSHw", "NPSH available with lowest and hottest water, fouled strainer, aged pipe and a low"
                        + " barometer, all at once", "(pa - pv) / (rho g) - z - hs", worst, WORST_DAY, flow));
        answer.add("suctionReview", "What each hardship takes from NPSH available", new FindingValue.Table(
                List.of("Hardship", "Takes"), List.of(row("Lowest water", review.lowestLevelM()),
                        row("Hottest water", review.hottestWaterM()),
                        row("Strainer half blocked", review.fouledStrainerM()), row("Aged pipe", review.agedPipeM()),
                        row("Low barometer", review.lowBarometerM()))));
        if (duty.npshRequiredM().isPresent()) {
            npshNeeded(review);
        }
    }

    private static List<Object> row(String hardship, double takesM) {
        return List.of(hardship, Quantity.of(takesM, Units.M));
    }

    private void npshNeeded(SuctionReview review) {
        Quantity needed = Quantity.of(review.neededM(), Units.M);
        Quantity required = Quantity.of(review.requiredM(), Units.M);
        Quantity worst = Quantity.of(review.worstM(), Units.M);
        Step margin = Step.of("NPSHn", "NPSH required with its margin", "max(1.3 NPSHr, NPSHr + 0.6 m)", needed, MARGIN,
                new Input("NPSHr", "NPSH required", required));
        answer.number("npshNeeded", "NPSH needed with margin", needed, margin);
        Quantity greatest = Quantity.of(SuctionLift.greatestM(water.worstSuction(), duty.flowM3PerS(), review.neededM()),
                Units.M);
        answer.number("greatestLift", "Greatest suction lift on the worst day", greatest, margin,
                Step.of("zg", "lift at which NPSH available is down to what is needed", "z + NPSHw - NPSHn", greatest,
                        LEVELS, new Input("NPSHn", "NPSH needed", needed), new Input("NPSHw", "on the worst day", worst),
                        new Input("z", "suction lift", Quantity.of(water.worstSuction().liftM(), Units.M))));
        if (!review.holds()) {
            warn("pump.npsh-worst", Severity.WARNING,
                    "On the worst day (lowest and hottest water, fouled strainer, aged pipe, low barometer) NPSH"
                            + " available is {0} where {1} is needed: expect cavitation, noise and damage. Lower the"
                            + " pump, widen the suction, or choose one that requires less.", MARGIN, worst, needed);
        }
    }

    /** Depth of water needed over the intake [m]. */
    private OptionalDouble submergence() {
        boolean submersible = pump.getKind() == PumpKind.SUBMERSIBLE;
        Quantity mouth = submersible ? pump.getDischargeBore() : water.suctionRuns().get(0).getBore();
        OptionalDouble vortexM = mouth == null || mouth.si() < 0.005 ? OptionalDouble.empty()
                : OptionalDouble.of(Submergence.leastM(duty.flowM3PerS(), mouth.si()));
        if (vortexM.isEmpty() && pump.getMinSubmergence() == null) {
            return OptionalDouble.empty();
        }
        double makerM = pump.getMinSubmergence() == null ? 0 : pump.getMinSubmergence().si();
        double neededM = Math.max(makerM, vortexM.orElse(0));
        Quantity needed = Quantity.of(neededM, Units.M);
        Step[] steps = vortexM.isEmpty() ? new Step[] {stated(needed)} : new Step[] {
            Step.of("S", "depth that keeps air from being drawn in by a vortex",
                    "D (1 + 2.3 F), F = v / sqrt(g D)", Quantity.of(vortexM.getAsDouble(), Units.M), VORTEX,
                    new Input("D", submersible ? "bore of the outlet, taken for that of the inlet"
                            : "bore of the suction pipe at its mouth", mouth),
                    new Input("Q", "flow", Quantity.ofSi(duty.flowM3PerS(), Units.L_PER_S))),
            stated(needed)};
        answer.number("submergenceNeeded", "Water needed over the intake", needed, steps);
        return OptionalDouble.of(neededM);
    }

    private Step stated(Quantity needed) {
        Quantity maker = pump.getMinSubmergence() == null ? Quantity.of(0, Units.M) : pump.getMinSubmergence();
        return Step.of("Sn", "the larger of that and what the maker asks", "max(S, Sm)", needed,
                Source.definition("both must hold"),
                new Input("Sm", "asked by the maker", maker, pump.getId(), "minSubmergence"));
    }

    private void dryRunning(OptionalDouble submergenceM) {
        double floorM = TankWater.floorM(water.from());
        boolean submersible = pump.getKind() == PumpKind.SUBMERSIBLE;
        double intakeM = submersible ? water.line().pumpLevelM() : floorM + TankWater.outletHeightM(water.from());
        double greatestLiftM = duty.npshRequiredM().isEmpty() || submersible ? 11
                : Math.min(11, SuctionLift.greatestM(water.worstSuction(), duty.flowM3PerS(),
                        NpshMargin.USUAL.neededM(duty.npshRequiredM().getAsDouble())));
        double stopM = DirectSupply.dryRunStopLevelM(intakeM, submergenceM.orElse(0), water.line().pumpLevelM(),
                greatestLiftM) - floorM;
        Quantity stop = Quantity.of(stopM, Units.M);
        answer.number("dryRunStopHeight", "Water height at which it must be off", stop,
                Step.of("hoff", "height over the floor of the tank: of the intake with the water needed over it, or"
                        + " where the suction lift is at its greatest", "max(zi + Sn, zp - zg) - z0", stop,
                        Source.definition("both must hold"), new Input("zi", "level of the intake",
                                Quantity.of(intakeM, Units.M)),
                        new Input("Sn", "water needed over the intake", Quantity.of(submergenceM.orElse(0), Units.M)),
                        new Input("zp", "level of the pump", Quantity.of(water.line().pumpLevelM(), Units.M)),
                        new Input("zg", "greatest lift", Quantity.of(greatestLiftM, Units.M)),
                        new Input("z0", "level of the floor", Quantity.of(floorM, Units.M))));
        Source practice = Source.commonPractice("dry-run protection");
        if (pump.getCutOutHeight() == null) {
            warn("pump.dry-run", Severity.WARNING, "No height is given at which the pump is switched off against running"
                    + " dry; dry, it is ruined within minutes and can burn. Fit an automatic cut-out at {0} above the"
                    + " floor of the tank or higher.", practice, stop);
        } else if (pump.getCutOutHeight().si() < stopM - 1e-9) {
            warn("pump.dry-run", Severity.WARNING, "The cut-out at {0} above the floor is too low: the pump draws air or"
                    + " cavitates from {1} down, and a pump that runs dry is ruined. Raise the cut-out.", practice,
                    pump.getCutOutHeight(), stop);
        }
    }

    private void warn(String code, Severity severity, String text, Source source, Object... arguments) {
        answer.caution(new Caution(code, severity, pump.getId(), text, List.of(arguments), "", source));
    }
}
