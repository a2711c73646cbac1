package org.roofspring.calc.standard.pumping;

import java.util.List;
import java.util.Optional;

import org.roofspring.calc.Outcome;
import org.roofspring.calc.Source;
import org.roofspring.calc.Working.Input;
import org.roofspring.calc.Working.Step;
import org.roofspring.calc.standard.answer.AnswerBuilder;
import org.roofspring.calc.standard.water.Given;
import org.roofspring.calc.standard.water.PipePaths;
import org.roofspring.calc.standard.water.ServedUses;
import org.roofspring.calc.standard.water.TankWater;
import org.roofspring.hydraulics.WaterProperties;
import org.roofspring.hydraulics.gravity.ManualSupply;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.Pump;
import org.roofspring.site.Site;
import org.roofspring.site.SitePackage;
import org.roofspring.site.Tank;

/** Water by hand: a hand pump of the site, or what stands in for a pump that has no power. */
public final class HandFindings {
    private static final double EFFICIENCY = 0.5;
    private static final double BUCKET_M3 = 0.020;
    /** Spout over the roof of the tank [m]. */
    private static final double SPOUT_M = 0.8;
    private static final Source HUMAN = Source.fromMemory(
            "60 W for half an hour by an adult; handle and pump 50 %, common practice");

    private HandFindings() {
    }

    /** A hand pump: its flow by strokes, and the time that the busiest day takes. */
    public static Outcome of(Site site, Pump pump) {
        if (pump.getStrokeVolume() == null || pump.getStrokesPerMinute() == null) {
            return new Outcome.NotComputable(new Outcome.Problem(pump.getId(), "strokeVolume",
                    "The stroke volume and strokes in a minute of " + pump.getName() + " are needed."));
        }
        AnswerBuilder answer = new AnswerBuilder(pump.getId());
        Quantity flow = Quantity.of(pump.getStrokeVolume().in(Units.L) * pump.getStrokesPerMinute().si(), Units.L_PER_MIN);
        answer.number("handPumpFlow", "Flow of the hand pump", flow,
                Step.of("Q", "strokes in a minute times their volume", "n v", flow, Source.definition("no slip counted"),
                        new Input("n", "strokes in a minute", pump.getStrokesPerMinute(), pump.getId(),
                                "strokesPerMinute"),
                        new Input("v", "volume of a stroke", pump.getStrokeVolume(), pump.getId(), "strokeVolume")));
        double dayM3 = ServedUses.of(site, pump).busiestDayM3();
        if (flow.si() > 1e-9) {
            Quantity time = Quantity.ofSi(dayM3 / flow.si(), Units.H);
            answer.number("handPumpTime", "Time at the handle on the busiest day", time,
                    Step.of("t", "volume over flow", "Vd / Q", time, Source.definition("volume, flow and time"),
                            new Input("Vd", "volume of the busiest day", Quantity.of(dayM3, Units.M3)),
                            new Input("Q", "flow", flow)));
        }
        return answer.build();
    }

    /** What drinking, cooking and washing take by hand on a day without the pump. */
    public static Outcome.Completed instead(Site site, Pump pump) {
        AnswerBuilder answer = new AnswerBuilder(pump.getId());
        double dayM3 = ServedUses.of(site, pump).essentialDayM3();
        Optional<Tank> from = new PipePaths(site).feedingTank(pump);
        if (dayM3 <= 0 || dayM3 > 1000 || from.isEmpty()) {
            return answer.build();
        }
        Quantity volume = Quantity.ofSi(dayM3, Units.L);
        Input essential = new Input("V", "demand of priority 1 and 2 on the busiest day", volume);
        Quantity trips = Quantity.of(ManualSupply.bucketTrips(dayM3, BUCKET_M3));
        answer.number("bucketTrips", "Buckets of 20 L a day without the pump", trips,
                Step.of("n", "buckets for the most urgent uses", "V / 20 L, rounded up", trips,
                        Source.definition("volume over volume"), essential));
        handPump(answer, site, from.get(), dayM3, essential);
        return answer.build();
    }

    private static void handPump(AnswerBuilder answer, Site site, Tank from, double dayM3, Input essential) {
        double roofM = Math.max(TankWater.topHeightM(from), Given.si(from, SitePackage.Literals.TANK__HEIGHT, 0));
        double liftM = roofM + SPOUT_M - TankWater.outletHeightM(from);
        if (!(liftM >= 0.1 && liftM <= 200)) {
            return;
        }
        WaterProperties water = WaterProperties.at(Given.si(site, SitePackage.Literals.SITE__WATER_TEMPERATURE_USUAL, 20));
        Quantity flow = Quantity.ofSi(
                ManualSupply.handPumpFlowM3PerS(ManualSupply.SUSTAINED_POWER_W, EFFICIENCY, liftM, water), Units.L_PER_MIN);
        Quantity time = Quantity.ofSi(dayM3 / flow.si(), Units.H);
        answer.number("handPumpTime", "Time at a hand pump a day without the pump", time,
                Step.of("Qh", "flow of a hand pump on the tank, worked by one adult", "0.5 x 60 W / (rho g H)", flow, HUMAN,
                        new Input("rho", "density", Quantity.of(water.densityKgPerM3(), Units.KG_PER_M3)),
                        new Input("H", "lift from the outlet to a spout 0.8 m over the roof of the tank",
                                Quantity.of(liftM, Units.M))),
                Step.of("t", "time for the most urgent uses, by people who take turns", "V / Qh", time,
                        Source.definition("volume, flow and time"), essential, new Input("Qh", "flow", flow)));
    }
}
