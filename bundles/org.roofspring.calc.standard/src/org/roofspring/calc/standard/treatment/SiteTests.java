package org.roofspring.calc.standard.treatment;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

import org.roofspring.site.NamedElement;
import org.roofspring.site.Site;
import org.roofspring.site.Tank;
import org.roofspring.site.Tap;
import org.roofspring.site.TreatmentStep;
import org.roofspring.site.TreatmentTrain;
import org.roofspring.site.Use;
import org.roofspring.site.WaterParameter;
import org.roofspring.treatment.safety.TestLimit;
import org.roofspring.treatment.safety.TestParameter;
import org.roofspring.treatment.safety.WaterTest;
import org.roofspring.treatment.safety.WaterTest.Point;
import org.roofspring.treatment.safety.WaterTests;

/**
 * The tests and readings of a site.
 *
 * @param results in the order of the site, tests before readings
 * @param day     to which their age is counted
 */
record SiteTests(List<TestResult> results, LocalDate day) {
    SiteTests {
        results = List.copyOf(results);
    }

    static SiteTests of(Site site, LocalDate day) {
        return new SiteTests(Stream.concat(site.getWaterTests().stream().map(TestReader::read),
                site.getReadings().stream().map(TestReader::read).flatMap(Optional::stream)).toList(), day);
    }

    /** Those that the kernel judges, for one use. */
    WaterTests of(Use use, WaterWay way) {
        List<WaterTest> tests = new ArrayList<>();
        Map<TestParameter, TestLimit> limits = new EnumMap<>(TestParameter.class);
        results.stream().filter(TestResult::readable).filter(result -> result.known().isPresent())
                .sorted(Comparator.comparing(TestResult::date)).forEach(result -> point(result, use, way)
                        .ifPresent(point -> {
                            tests.add(new WaterTest(result.known().get(), result.value().getAsDouble(), result.date(),
                                    result.laboratory(), point));
                            limits.put(result.known().get(), result.limit().orElseThrow());
                        }));
        return new WaterTests(tests, day, WaterTests.DEFAULT_VALID_DAYS, limits);
    }

    /** Results outside a limit, of parameters that the kernel does not know; the latest of each counts. */
    List<TestResult> otherBad(Use use, WaterWay way) {
        return latestOther(use, way).filter(result -> result.within().filter(within -> !within).isPresent()).toList();
    }

    /** Whether the latest result that still counts lies within its limit. */
    boolean proves(WaterParameter parameter, Use use, WaterWay way) {
        return latestOther(use, way).filter(result -> result.parameter() == parameter)
                .anyMatch(result -> result.within().orElse(false));
    }

    private Stream<TestResult> latestOther(Use use, WaterWay way) {
        List<TestResult> counting = results.stream().filter(TestResult::readable)
                .filter(result -> result.known().isEmpty() && counts(result.date()))
                .filter(result -> point(result, use, way).isPresent()).toList();
        return counting.stream().filter(result -> counting.stream().noneMatch(other -> other.label()
                .equals(result.label()) && other.date().isAfter(result.date())));
    }

    /** Results for this use whose unit or date is missing, so that they prove nothing. */
    List<TestResult> unreadable(Use use, WaterWay way) {
        return results.stream().filter(result -> !result.readable())
                .filter(result -> point(result, use, way).isPresent()).toList();
    }

    /** The latest value of the stored water that still counts. */
    OptionalDouble stored(TestParameter parameter, Use use, WaterWay way) {
        return of(use, way).latest(parameter, Point.SOURCE).map(test -> OptionalDouble.of(test.value()))
                .orElse(OptionalDouble.empty());
    }

    private boolean counts(LocalDate date) {
        return !date.isAfter(day) && !date.isBefore(day.minusDays(WaterTests.DEFAULT_VALID_DAYS));
    }

    /** Last day on which a result of this date counts. */
    static LocalDate countsUntil(LocalDate date) {
        return date.plusDays(WaterTests.DEFAULT_VALID_DAYS);
    }

    /** Where the sample stands on the way to a use; empty where it is not on it. */
    private static Optional<Point> point(TestResult result, Use use, WaterWay way) {
        NamedElement at = result.element();
        return switch (at) {
            case null -> Optional.of(Point.SOURCE);
            case Tank tank -> way.stores().contains(tank) ? Optional.of(Point.TAP)
                    : way.tanks().contains(tank) ? Optional.of(Point.SOURCE) : Optional.empty();
            case Use other -> other == use ? Optional.of(Point.TAP) : Optional.empty();
            case Tap tap -> use.getTaps().contains(tap) && !way.bypassing().contains(tap) ? Optional.of(Point.TAP)
                    : Optional.empty();
            case TreatmentTrain train -> behind(train, way);
            case TreatmentStep step -> behind((TreatmentTrain) step.eContainer(), way);
            default -> Optional.of(Point.SOURCE);
        };
    }

    private static Optional<Point> behind(TreatmentTrain train, WaterWay way) {
        return !way.trains().isEmpty() && Objects.equals(way.trains().get(way.trains().size() - 1), train)
                ? Optional.of(Point.TAP) : Optional.empty();
    }
}
