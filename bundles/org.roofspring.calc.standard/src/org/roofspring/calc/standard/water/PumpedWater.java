package org.roofspring.calc.standard.water;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

import org.roofspring.hydraulics.AgeingRun;
import org.roofspring.hydraulics.Atmosphere;
import org.roofspring.hydraulics.Band;
import org.roofspring.hydraulics.HeadLoss;
import org.roofspring.hydraulics.pump.PumpCurve;
import org.roofspring.hydraulics.pump.PumpPoint;
import org.roofspring.hydraulics.pump.PumpSet;
import org.roofspring.hydraulics.pump.PumpedLine;
import org.roofspring.hydraulics.pump.StateRange;
import org.roofspring.hydraulics.pump.SuctionLift;
import org.roofspring.hydraulics.pump.SystemState;
import org.roofspring.site.PipeRun;
import org.roofspring.site.Pump;
import org.roofspring.site.PumpArrangement;
import org.roofspring.site.PumpData;
import org.roofspring.site.PumpKind;
import org.roofspring.site.Site;
import org.roofspring.site.SitePackage;
import org.roofspring.site.Tank;

/**
 * A pump of the site with the tank it draws from, the tank it fills and the pipe between.
 *
 * @param pump  in the site
 * @param runs  of its suction and delivery, in the site
 * @param line  pipes and the level of the pump
 * @param low   level of the water drawn from when it is lowest [m over the site datum]
 * @param high  and when it is highest
 * @param discharge level the water is lifted to [m over the site datum]
 * @param altitudeM of the site datum
 * @param temperatureC lowest, usual and highest
 */
public record PumpedWater(Pump pump, List<PipeRun> runs, PumpedLine line, double low, double high, double discharge, double altitudeM, double[] temperatureC) {

    /** A pumped line, or sentences that say what is missing. */
    public sealed interface Reading {
        /** It can be computed. */
        record Found(PumpedWater water) implements Reading {
        }

        /** It cannot, and why. */
        record Missing(List<String> sentences) implements Reading {
        }
    }

    /** Reads the surroundings of a pump out of the site. */
    public static Reading read(Site site, Pump pump) {
        List<String> missing = new ArrayList<>();
        PipePaths paths = new PipePaths(site);
        var suction = paths.upstream(pump, Tank.class::isInstance);
        var delivery = paths.downstream(pump, Tank.class::isInstance);
        if (suction.isEmpty()) {
            missing.add("No run of pipe leads from a tank to " + pump.getName() + ".");
        }
        if (delivery.isEmpty()) {
            missing.add("No run of pipe leads from " + pump.getName() + " to a tank.");
        }
        if (pump.getLevel() == null) {
            missing.add("The level of " + pump.getName() + " is missing.");
        }
        suction.ifPresent(runs -> runs.forEach(run -> missing.addAll(PipeLosses.missing(run))));
        delivery.ifPresent(runs -> runs.forEach(run -> missing.addAll(PipeLosses.missing(run))));
        if (!missing.isEmpty()) {
            return new Reading.Missing(missing);
        }
        Tank from = (Tank) suction.get().get(0).getFrom();
        Tank to = (Tank) delivery.get().get(delivery.get().size() - 1).getTo();
        List<AgeingRun> suctionRuns = suction.get().stream().map(PipeLosses::ageing).toList();
        List<AgeingRun> deliveryRuns = delivery.get().stream().map(PipeLosses::ageing).toList();
        double base = Given.si(from, SitePackage.Literals.TANK__BASE_LEVEL, 0);
        double lowest = pump.getCutOutHeight() != null ? pump.getCutOutHeight().si() : Given.si(from, SitePackage.Literals.TANK__OUTLET_HEIGHT, 0);
        double[] celsius = { Given.si(site, SitePackage.Literals.SITE__WATER_TEMPERATURE_MIN, 10),
            Given.si(site, SitePackage.Literals.SITE__WATER_TEMPERATURE_USUAL, 20), Given.si(site, SitePackage.Literals.SITE__WATER_TEMPERATURE_MAX, 30) };
        List<PipeRun> runs = new ArrayList<>(suction.get());
        runs.addAll(delivery.get());
        PumpedLine line = new PumpedLine(pump.getLevel().si(), suctionRuns, HeadLoss.none(), HeadLoss.none(), deliveryRuns);
        return new Reading.Found(new PumpedWater(pump, runs, line, base + lowest, base + Math.max(lowest, waterHeight(from)),
                Given.si(to, SitePackage.Literals.TANK__BASE_LEVEL, 0) + inletHeight(to), Given.si(site, SitePackage.Literals.SITE__ALTITUDE, 0), celsius));
    }

    private static double waterHeight(Tank tank) {
        return tank.getOverflowHeight() != null ? tank.getOverflowHeight().si() : Given.si(tank, SitePackage.Literals.TANK__HEIGHT, 0);
    }

    private static double inletHeight(Tank tank) {
        return tank.getInletHeight() != null ? tank.getInletHeight().si() : Math.max(waterHeight(tank), Given.si(tank, SitePackage.Literals.TANK__HEIGHT, 0));
    }

    /** The design state: lowest water in the tank drawn from, usual temperature, new pipe. */
    public SystemState designState() {
        return new SystemState(low, discharge, temperatureC[1], Atmosphere.pressurePa(altitudeM + line.pumpLevelM()), false);
    }

    /** All states it has to work in: levels, temperatures, barometer, new and aged pipe. */
    public List<SystemState> states() {
        double airPa = Atmosphere.pressurePa(altitudeM + line.pumpLevelM());
        return new StateRange(new Band(Math.min(low, high), Math.max(low, high)), Band.at(discharge), new Band(temperatureC[0], Math.max(temperatureC[0], temperatureC[2])),
                new Band(airPa - SuctionLift.LOW_BAROMETER_DROP_PA, airPa), true).corners();
    }

    /**
     * The pump's curve and arrangement.
     *
     * @throws IllegalArgumentException when its points make no curve; the sentence names the pump
     */
    public static PumpSet pumpSet(Pump pump, PumpData data, String name) {
        List<PumpPoint> points = data.getPoints().stream().filter(p -> p.getFlow() != null && p.getHead() != null)
                .map(p -> new PumpPoint(p.getFlow().si(), p.getHead().si(), optional(p.getEfficiency()), optional(p.getNpshRequired()), optional(p.getInputPower()))).toList();
        PumpSet set = PumpSet.single(PumpCurve.of(name, points)).atSpeed(Given.si(pump, SitePackage.Literals.PUMP__SPEED_RATIO, 1));
        int count = Math.max(1, pump.getCount());
        if (pump.getArrangement() == PumpArrangement.SERIES) {
            set = set.inSeries(count);
        } else if (pump.getArrangement() == PumpArrangement.PARALLEL) {
            set = set.inParallel(count);
        }
        return data.getMotorEfficiency() == null ? set : set.withMotorEfficiency(data.getMotorEfficiency().si());
    }

    private static OptionalDouble optional(org.roofspring.quantity.Quantity quantity) {
        return quantity == null ? OptionalDouble.empty() : OptionalDouble.of(quantity.si());
    }

    /** Whether a curve is what moves the water: a hand pump has strokes, not a curve. */
    public static boolean hasCurve(Pump pump) {
        return pump.isInUse() && pump.getKind() != PumpKind.HAND_PUMP && !pump.getPoints().isEmpty();
    }
}
