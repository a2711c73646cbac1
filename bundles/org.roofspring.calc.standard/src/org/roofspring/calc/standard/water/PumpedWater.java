package org.roofspring.calc.standard.water;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

import org.roofspring.hydraulics.AgeingRun;
import org.roofspring.hydraulics.Atmosphere;
import org.roofspring.hydraulics.Band;
import org.roofspring.hydraulics.HeadLoss;
import org.roofspring.hydraulics.WaterProperties;
import org.roofspring.hydraulics.pump.PumpCurve;
import org.roofspring.hydraulics.pump.PumpPoint;
import org.roofspring.hydraulics.pump.PumpSet;
import org.roofspring.hydraulics.pump.PumpedLine;
import org.roofspring.hydraulics.pump.StateRange;
import org.roofspring.hydraulics.pump.SuctionConditions;
import org.roofspring.hydraulics.pump.SuctionLift;
import org.roofspring.hydraulics.pump.SystemState;
import org.roofspring.site.FittingKind;
import org.roofspring.site.PipeNode;
import org.roofspring.site.PipeRun;
import org.roofspring.site.PressureVessel;
import org.roofspring.site.Pump;
import org.roofspring.site.PumpArrangement;
import org.roofspring.site.PumpData;
import org.roofspring.site.PumpKind;
import org.roofspring.site.Site;
import org.roofspring.site.SitePackage;
import org.roofspring.site.Tank;

/**
 * A pump of the site with the tank it draws from, the tank or pressure vessel it delivers to, and the pipe between.
 *
 * @param pump              in the site
 * @param from              tank it draws from
 * @param to                tank or pressure vessel it delivers to
 * @param suctionRuns       of the site, from the tank to the pump
 * @param deliveryRuns      of the site, from the pump on
 * @param line              pipes, strainer and the level of the pump
 * @param suctionLevelM     lowest and highest water drawn from [m over the site datum]
 * @param dischargeLevelM   what the water is lifted to [m over the site datum]: a free inlet, the water over one that
 *                          it covers, or the head of the switch pressures over a vessel
 * @param altitudeM         of the site datum [m]
 * @param temperatureC      coldest and hottest water [degC]
 * @param usualTemperatureC [degC]
 */
public record PumpedWater(Pump pump, Tank from, PipeNode to, List<PipeRun> suctionRuns, List<PipeRun> deliveryRuns,
        PumpedLine line, Band suctionLevelM, Band dischargeLevelM, double altitudeM, Band temperatureC,
        double usualTemperatureC) {
    /** Head of a strainer or foot valve with half of its openings blocked, over that of a clean one: velocity squared. */
    public static final double FOULED_STRAINER_FACTOR = 4;

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
        Optional<List<PipeRun>> suction = paths.upstream(pump, Tank.class::isInstance);
        Optional<List<PipeRun>> delivery = paths.downstream(pump,
                node -> node instanceof Tank || node instanceof PressureVessel);
        if (suction.isEmpty()) {
            missing.add("No run of pipe leads from a tank to " + pump.getName() + ".");
        }
        if (delivery.isEmpty()) {
            missing.add("No run of pipe leads from " + pump.getName() + " to a tank or pressure vessel.");
        }
        if (pump.getLevel() == null) {
            missing.add("The level of " + pump.getName() + " is missing.");
        }
        Stream.of(suction, delivery).flatMap(Optional::stream).flatMap(List::stream)
                .forEach(run -> missing.addAll(PipeLosses.missing(run)));
        delivery.map(runs -> runs.get(runs.size() - 1).getTo()).filter(PressureVessel.class::isInstance)
                .ifPresent(vessel -> missing.addAll(missing((PressureVessel) vessel)));
        return missing.isEmpty() ? new Reading.Found(of(site, pump, suction.get(), delivery.get()))
                : new Reading.Missing(missing);
    }

    /** What a vessel lacks to be computed. */
    public static List<String> missing(PressureVessel vessel) {
        List<String> missing = new ArrayList<>();
        if (vessel.getLevel() == null) {
            missing.add("The level of " + vessel.getName() + " is missing.");
        }
        if (vessel.getCutIn() == null || vessel.getCutOut() == null) {
            missing.add("The cut-in and cut-out pressures of " + vessel.getName() + " are missing.");
        }
        return missing;
    }

    private static PumpedWater of(Site site, Pump pump, List<PipeRun> suction, List<PipeRun> delivery) {
        Tank from = (Tank) suction.get(0).getFrom();
        PipeNode to = delivery.get(delivery.size() - 1).getTo();
        double floorM = TankWater.floorM(from);
        double lowestM = pump.getCutOutHeight() != null ? pump.getCutOutHeight().si() : TankWater.outletHeightM(from);
        double usualC = Given.si(site, SitePackage.Literals.SITE__WATER_TEMPERATURE_USUAL, 20);
        double coldC = Math.min(usualC, Given.si(site, SitePackage.Literals.SITE__WATER_TEMPERATURE_MIN, 10));
        double hotC = Math.max(usualC, Given.si(site, SitePackage.Literals.SITE__WATER_TEMPERATURE_MAX, 30));
        HeadLoss strainer = suction.stream().map(PumpedWater::strainer).reduce(HeadLoss.none(), HeadLoss::then);
        PumpedLine line = new PumpedLine(pump.getLevel().si(),
                suction.stream().map(run -> PipeLosses.ageing(run, kind -> !isStrainer(kind))).toList(), strainer,
                strainer.times(FOULED_STRAINER_FACTOR), delivery.stream().map(PipeLosses::ageing).toList());
        return new PumpedWater(pump, from, to, suction, delivery, line,
                new Band(floorM + lowestM, floorM + Math.max(lowestM, TankWater.topHeightM(from))),
                to instanceof Tank tank ? inTank(tank) : inVessel((PressureVessel) to, usualC),
                Given.si(site, SitePackage.Literals.SITE__ALTITUDE, 0), new Band(coldC, hotC), usualC);
    }

    private static boolean isStrainer(FittingKind kind) {
        return kind == FittingKind.STRAINER || kind == FittingKind.FOOT_VALVE;
    }

    /** Of a fitting only the velocity counts, so that any water will do. */
    private static HeadLoss strainer(PipeRun run) {
        return new org.roofspring.hydraulics.PipeRun(run.getBore().si(), 0, 0,
                PipeLosses.fittingsK(run, PumpedWater::isStrainer)).carrying(WaterProperties.at(20));
    }

    private static Band inTank(Tank tank) {
        double inletM = TankWater.inletHeightM(tank);
        double highM = Math.max(inletM, tank.getStopHeight() == null ? inletM : tank.getStopHeight().si());
        double lowM = Math.max(inletM, tank.getStartHeight() == null ? inletM : tank.getStartHeight().si());
        return new Band(TankWater.floorM(tank) + Math.min(lowM, highM), TankWater.floorM(tank) + highM);
    }

    private static Band inVessel(PressureVessel vessel, double temperatureC) {
        WaterProperties water = WaterProperties.at(temperatureC);
        double cutInM = water.headM(vessel.getCutIn().si());
        double cutOutM = water.headM(vessel.getCutOut().si());
        return new Band(vessel.getLevel().si() + Math.min(cutInM, cutOutM), vessel.getLevel().si() + cutOutM);
    }

    /** The tank it fills; absent where it delivers to a vessel. */
    public Optional<Tank> filledTank() {
        return to instanceof Tank tank ? Optional.of(tank) : Optional.empty();
    }

    /** All runs of the site that the water passes, in order. */
    public List<PipeRun> runs() {
        return Stream.concat(suctionRuns.stream(), deliveryRuns.stream()).toList();
    }

    /** Mean air pressure at the pump [Pa]. */
    public double airPressurePa() {
        return Atmosphere.pressurePa(altitudeM + line.pumpLevelM());
    }

    /** The design state: lowest water in the tank drawn from, highest discharge, usual temperature, new pipe. */
    public SystemState designState() {
        return new SystemState(suctionLevelM.low(), dischargeLevelM.high(), usualTemperatureC, airPressurePa(), false);
    }

    /** The corners of all states it has to work in: levels, temperatures, barometer, new and aged pipe. */
    public List<SystemState> states() {
        double airPa = airPressurePa();
        return new StateRange(suctionLevelM, dischargeLevelM, temperatureC,
                new Band(airPa - SuctionLift.LOW_BAROMETER_DROP_PA, airPa), true).corners();
    }

    /** The suction on a usual day: a full tank, usual water, a clean strainer, new pipe, mean barometer. */
    public SuctionConditions usualSuction() {
        return new SuctionConditions(line.pumpLevelM() - suctionLevelM.high(), suctionPipes(false),
                line.cleanStrainer(), usualTemperatureC, airPressurePa());
    }

    /** The suction on its worst day: lowest water, hottest water, fouled strainer, aged pipe, low barometer. */
    public SuctionConditions worstSuction() {
        return new SuctionConditions(line.pumpLevelM() - suctionLevelM.low(), suctionPipes(true),
                line.fouledStrainer(), temperatureC.high(), airPressurePa() - SuctionLift.LOW_BAROMETER_DROP_PA);
    }

    private List<org.roofspring.hydraulics.PipeRun> suctionPipes(boolean aged) {
        return line.suction().stream().map((AgeingRun run) -> run.run(aged)).toList();
    }

    /**
     * A pump's curve in the arrangement of the site.
     *
     * @param data the pump itself, or a candidate in its place
     * @throws IllegalArgumentException when its points make no curve
     */
    public static PumpSet pumpSet(Pump pump, PumpData data, String name) {
        List<PumpPoint> points = data.getPoints().stream().filter(p -> p.getFlow() != null && p.getHead() != null)
                .map(p -> new PumpPoint(p.getFlow().si(), p.getHead().si(), optional(p.getEfficiency()),
                        optional(p.getNpshRequired()), optional(p.getInputPower()))).toList();
        PumpSet set = PumpSet.single(PumpCurve.of(name, points))
                .atSpeed(Given.si(pump, SitePackage.Literals.PUMP__SPEED_RATIO, 1));
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
