package org.roofspring.calc.standard.pumping;

import java.util.List;

import org.roofspring.calc.Caution;
import org.roofspring.calc.Caution.Severity;
import org.roofspring.calc.Source;
import org.roofspring.calc.standard.answer.AnswerBuilder;
import org.roofspring.calc.standard.water.PipeLosses;
import org.roofspring.calc.standard.water.PumpedWater;
import org.roofspring.calc.standard.water.TankWater;
import org.roofspring.hydraulics.AirGap;
import org.roofspring.hydraulics.PipeLoss;
import org.roofspring.hydraulics.VelocityLimits;
import org.roofspring.hydraulics.WaterProperties;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.PipeRun;
import org.roofspring.site.Tank;

/** What to mind about the pipes of a pump: velocities, fittings without a loss, the gap at the inlet of the tank. */
final class LineCautions {
    private static final Source VELOCITY = Source.commonPractice("velocity limits of pumped pipes");

    private final AnswerBuilder answer;
    private final PumpedWater pumped;

    private LineCautions(AnswerBuilder answer, PumpedWater pumped) {
        this.answer = answer;
        this.pumped = pumped;
    }

    static void add(AnswerBuilder answer, PumpedWater pumped, double flowM3PerS, WaterProperties water) {
        LineCautions cautions = new LineCautions(answer, pumped);
        unknownFittings(answer, pumped.runs());
        pumped.suctionRuns().forEach(run -> cautions.velocity("suction", run, VelocityLimits.SUCTION, flowM3PerS, water));
        pumped.deliveryRuns()
                .forEach(run -> cautions.velocity("delivery", run, VelocityLimits.DELIVERY, flowM3PerS, water));
        pumped.filledTank().ifPresent(cautions::airGap);
    }

    /** Says of each run that has a fitting whose loss is taken as nil. */
    static void unknownFittings(AnswerBuilder answer, List<PipeRun> runs) {
        runs.stream().filter(run -> !PipeLosses.withoutLoss(run).isEmpty()).forEach(run -> answer.caution(new Caution(
                "pipe.unknown-fitting", Severity.WARNING, run.getId(), "{0} has a fitting whose loss is neither given nor"
                        + " known from its kind; it is taken as nil. Enter its loss coefficient.",
                List.of(String.valueOf(run.getName())), "", Source.definition("how the model was read"))));
    }

    private void velocity(String where, PipeRun run, VelocityLimits limits, double flowM3PerS, WaterProperties water) {
        PipeLoss loss = PipeLosses.ageing(run).fresh().lossAt(flowM3PerS, water);
        Quantity velocity = Quantity.of(loss.velocityMPerS(), Units.M_PER_S);
        switch (limits.judge(loss.velocityMPerS())) {
            case TOO_FAST -> say("pipe.fast", Severity.WARNING, run.getId(), "In the " + where + " pipe water runs at {0};"
                    + " at most {1} is usual, so a bore of {2} or more.", velocity,
                    Quantity.of(limits.fastestMPerS(), Units.M_PER_S),
                    Quantity.ofSi(limits.smallestBoreM(flowM3PerS), Units.MM));
            case TOO_SLOW -> say("pipe.slow", Severity.INFO, run.getId(), "In the " + where + " pipe water runs at only"
                    + " {0}; below {1} grit settles and air stays.", velocity,
                    Quantity.of(limits.slowestMPerS(), Units.M_PER_S));
            case WITHIN -> { }
        }
    }

    private void say(String code, Severity severity, String elementId, String text, Object... arguments) {
        answer.caution(new Caution(code, severity, elementId, text, List.of(arguments), "", VELOCITY));
    }

    private void airGap(Tank tank) {
        if (tank.getInletHeight() == null || tank.getOverflowHeight() == null) {
            return;
        }
        Quantity bore = pumped.deliveryRuns().get(pumped.deliveryRuns().size() - 1).getBore();
        double gapM = tank.getInletHeight().si() - tank.getOverflowHeight().si();
        double leastM = bore.si() < 0.001 || bore.si() > 1 ? 0.025 : AirGap.leastM(bore.si());
        if (gapM < leastM) {
            boolean covered = gapM <= 0;
            answer.caution(new Caution("tank.air-gap", covered ? Severity.WARNING : Severity.INFO, tank.getId(), covered
                    ? "The inlet of {0} can be under water: when the pump stops the tank can drain back through it. Raise"
                            + " the inlet by {1} to leave an air gap of {2} over the overflow, or rely on a check valve"
                            + " that is tested."
                    : "The inlet of {0} wants {1} more to stand clear of the overflow by the usual air gap of {2}, which"
                            + " keeps water from being drawn back.",
                    List.of(String.valueOf(tank.getName()), Quantity.ofSi(leastM - gapM, Units.MM),
                            Quantity.ofSi(leastM, Units.MM)),
                    "Follow the local plumbing code, above all where another supply is joined.",
                    Source.fromMemory("ASME A112.1.2, Air gaps in plumbing systems")));
        }
    }
}
