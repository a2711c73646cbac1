package org.roofspring.calc.standard.treatment;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.roofspring.calc.standard.water.Given;
import org.roofspring.quantity.Units;
import org.roofspring.site.Purpose;
import org.roofspring.site.Site;
import org.roofspring.site.SitePackage.Literals;
import org.roofspring.site.StepKind;
import org.roofspring.site.Tank;
import org.roofspring.site.TreatmentStep;
import org.roofspring.site.TreatmentTrain;
import org.roofspring.site.Use;

/**
 * A site read for its treatment: ways, demands and tests, each worked out once.
 *
 * @param site       the frozen site
 * @param day        the latest day noted in it; empty where nothing is dated
 * @param ways       of all uses in use, in the order of the site
 * @param tests      all of them
 * @param inspection the latest; empty where none was made
 * @param demands    of all trains in use
 * @param stepsOf    each train in use, as far as they are in place, in the order of flow
 */
public record SiteReading(Site site, Optional<LocalDate> day, Map<Use, WaterWay> ways, SiteTests tests,
        Optional<SiteInspection> inspection, Map<TreatmentTrain, TrainDemand> demands,
        Map<TreatmentTrain, List<ReadStep>> stepsOf) {

    /**
     * Reads the site.
     *
     * @throws UnreadableException where values of a step contradict each other
     */
    public static SiteReading of(Site site) {
        WaterWays finder = new WaterWays(site);
        Map<Use, WaterWay> ways = new LinkedHashMap<>();
        site.getUses().stream().filter(Use::isInUse).forEach(use -> ways.put(use, finder.of(use)));
        Optional<LocalDate> day = NotedDay.of(site);
        LocalDate countedTo = day.orElse(LocalDate.EPOCH);
        Map<TreatmentTrain, TrainDemand> demands = new LinkedHashMap<>();
        Map<TreatmentTrain, List<ReadStep>> steps = new LinkedHashMap<>();
        for (TreatmentTrain train : site.getTrains()) {
            if (train.isInUse()) {
                TrainDemand demand = TrainDemand.of(train, ways);
                List<Tank> tanks = demand.uses().stream().flatMap(use -> ways.get(use).tanks().stream()).distinct()
                        .toList();
                StepReader reader = new StepReader(site, countedTo, demand, tanks);
                demands.put(train, demand);
                steps.put(train, train.getSteps().stream().filter(TreatmentStep::isActive).map(reader::read)
                        .toList());
            }
        }
        return new SiteReading(site, day, ways, SiteTests.of(site, countedTo), SiteInspection.latest(site), demands,
                steps);
    }

    /** The purpose in the kernel's terms; empty for what no verdict is given on. */
    public static Optional<org.roofspring.treatment.safety.Use> kernelUse(Purpose purpose) {
        return Optional.ofNullable(switch (purpose) {
            case DRINKING -> org.roofspring.treatment.safety.Use.DRINKING;
            case COOKING -> org.roofspring.treatment.safety.Use.COOKING;
            case WASHING, LAUNDRY -> org.roofspring.treatment.safety.Use.WASHING;
            case GARDEN -> org.roofspring.treatment.safety.Use.GARDEN;
            default -> null;
        });
    }

    /** Uses that a verdict is given on. */
    List<Use> judged() {
        return ways.keySet().stream().filter(use -> kernelUse(use.getPurpose()).isPresent()).toList();
    }

    List<TreatmentTrain> trains() {
        return List.copyOf(demands.keySet());
    }

    /** The day that ages are counted to. */
    LocalDate countedTo() {
        return tests.day();
    }

    TrainDemand demand(TreatmentTrain train) {
        return demands.get(train);
    }

    List<ReadStep> steps(TreatmentTrain train) {
        return stepsOf.get(train);
    }

    /** Water kept behind a train [m3]: its storage vessels and the tanks it fills. */
    double storedM3(TreatmentTrain train) {
        double vessels = train.getSteps().stream().filter(TreatmentStep::isActive)
                .filter(step -> step.getKind() == StepKind.SAFE_STORAGE && step.getBatchVolume() != null)
                .mapToDouble(step -> step.getBatchVolume().in(Units.M3)).sum();
        double tanks = ways.values().stream().filter(way -> way.trains().contains(train))
                .flatMap(way -> way.stores().stream()).distinct()
                .mapToDouble(tank -> Given.si(tank, Literals.TANK__CAPACITY, 0)
                        - Given.si(tank, Literals.TANK__DEAD_VOLUME, 0)).sum();
        return vessels + Math.max(0, tanks);
    }
}
