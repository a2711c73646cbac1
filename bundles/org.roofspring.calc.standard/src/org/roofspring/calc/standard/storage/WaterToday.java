package org.roofspring.calc.standard.storage;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.roofspring.calc.standard.water.Names;
import org.roofspring.calc.standard.water.TankChain;
import org.roofspring.calc.standard.water.TankWater;
import org.roofspring.site.Site;
import org.roofspring.site.Tank;
import org.roofspring.storage.outlook.TankGauge;

/**
 * Where the water stands: the dipstick readings of a site.
 *
 * @param date          of the latest reading
 * @param stageVolumeM3 in each stage, dead volume included
 * @param gaugedStage   index of the stage that is read: the largest of those with a reading
 * @param gaugedTank    a tank of that stage with a reading
 * @param gauge         of that tank
 * @param tankShare     share of the stage's water that stands in that tank
 * @param assumed       names of tanks without a reading, taken as full up to where their pump stops
 * @param readings      names of tanks with their readings, for the workings
 */
record WaterToday(LocalDate date, double[] stageVolumeM3, int gaugedStage, Tank gaugedTank, TankGauge gauge,
        double tankShare, List<String> assumed, List<Tank> readings) {

    /** Why there is no reading to start from; empty when there is one. */
    static List<String> missing(Site site) {
        List<Tank> tanks = site.getTanks().stream().filter(tank -> tank.isInUse() && tank.getCapacity() != null)
                .toList();
        if (tanks.stream().anyMatch(WaterToday::isRead)) {
            return List.of();
        }
        List<String> reasons = new ArrayList<>();
        tanks.stream().filter(tank -> tank.getCurrentHeight() != null).forEach(tank -> reasons.add(
                tank.getCurrentDate() == null ? "The day on which the water of " + Names.of(tank)
                + " was read is missing."
                        : "The height of " + Names.of(tank) + " is missing, or its curve of volumes does not rise, "
                        + "so its "
                                + "reading gives no volume."));
        if (reasons.isEmpty()) {
            reasons.add("No tank has a reading of its water height today; enter the height and the day.");
        }
        return reasons;
    }

    private static boolean isRead(Tank tank) {
        return tank.getCurrentHeight() != null && tank.getCurrentDate() != null && TankWater.gauge(tank).isPresent();
    }

    /** The readings of a site that has one. */
    static WaterToday of(TankChain chain) {
        List<String> assumed = new ArrayList<>();
        List<Tank> readings = new ArrayList<>();
        double[] volumes = new double[chain.stages().size()];
        int gauged = -1;
        double largestM3 = 0;
        for (int stage = 0; stage < volumes.length; stage++) {
            List<Tank> tanks = chain.stages().get(stage);
            List<Tank> read = tanks.stream().filter(WaterToday::isRead).toList();
            double capacityM3 = capacityM3(tanks);
            if (read.isEmpty()) {
                volumes[stage] = tanks.stream().mapToDouble(WaterToday::assumedM3).sum();
                tanks.forEach(tank -> assumed.add(Names.of(tank)));
                continue;
            }
            readings.addAll(read);
            // joined tanks stand at one level: those without a reading are as full as those with one
            double readM3 = read.stream().mapToDouble(WaterToday::volumeM3).sum();
            volumes[stage] = Math.min(capacityM3, capacityM3 * readM3 / capacityM3(read));
            if (capacityM3 > largestM3) {
                largestM3 = capacityM3;
                gauged = stage;
            }
        }
        Tank tank = chain.stages().get(gauged).stream().filter(WaterToday::isRead)
                .max(Comparator.comparingDouble(t -> t.getCapacity().si())).orElseThrow();
        LocalDate date = readings.stream().map(Tank::getCurrentDate).max(Comparator.naturalOrder()).orElseThrow();
        return new WaterToday(date, volumes, gauged, tank, TankWater.gauge(tank).orElseThrow(),
                tank.getCapacity().si() / largestM3, assumed, readings);
    }

    static double volumeM3(Tank tank) {
        return Math.min(tank.getCapacity().si(),
                TankWater.gauge(tank).orElseThrow().volumeM3(tank.getCurrentHeight().si()));
    }

    private static double assumedM3(Tank tank) {
        double capacityM3 = tank.getCapacity().si();
        return tank.getStopHeight() == null ? capacityM3
                : Math.min(capacityM3, TankWater.volumeM3(tank, tank.getStopHeight().si()).orElse(capacityM3));
    }

    private static double capacityM3(List<Tank> tanks) {
        return tanks.stream().mapToDouble(tank -> tank.getCapacity().si()).sum();
    }

    /** Height on the dipstick of the gauged tank when its stage holds a volume [m]. */
    double heightM(double stageM3) {
        return gauge.heightM(stageM3 * tankShare);
    }

    /** The gauge of the whole stage: the same heights, all of its volume. */
    TankGauge stageGauge() {
        return new TankGauge(gauge.points().stream()
                .map(point -> new TankGauge.Point(point.heightM(), point.volumeM3() / tankShare)).toList());
    }
}
