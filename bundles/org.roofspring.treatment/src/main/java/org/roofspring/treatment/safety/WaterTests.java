package org.roofspring.treatment.safety;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.roofspring.treatment.Source;
import org.roofspring.treatment.internal.Checks;

/**
 * The test results of a water, as they stand on a day.
 *
 * @param results   in any order
 * @param on        the day of the verdict; results after it are left out
 * @param validDays age up to which a result counts, 1 to 3660
 * @param limits    those that differ from the default
 */
public record WaterTests(List<WaterTest> results, LocalDate on, int validDays, Map<TestParameter, TestLimit> limits) {
    /** A year [d]. */
    public static final int DEFAULT_VALID_DAYS = 366;
    public static final Source VALIDITY_SOURCE = Source.commonPractice("a water test is repeated each year and after "
            + "each change at the roof, tank or treatment");

    public WaterTests {
        results = Checks.list("results", results);
        Checks.present("on", on);
        Checks.within("validity (validDays)", validDays, 1, 3660, "days");
        limits = Checks.map("limits", limits);
    }

    /** With the default validity and limits. */
    public static WaterTests of(LocalDate on, List<WaterTest> results) {
        return new WaterTests(results, on, DEFAULT_VALID_DAYS, Map.of());
    }

    public TestLimit limit(TestParameter parameter) {
        return limits.getOrDefault(parameter, parameter.defaultLimit());
    }

    /** The latest result that still counts; of several on that day at that point the worst. */
    public Optional<WaterTest> latest(TestParameter parameter, WaterTest.Point point) {
        return results.stream()
                .filter(test -> test.parameter() == parameter && test.point() == point && counts(test))
                .max(Comparator.comparing(WaterTest::date).thenComparing(test -> !within(test))
                        .thenComparing(WaterTest::value));
    }

    /** The latest result at the tap or, without one, in the tank. */
    public Optional<WaterTest> latest(TestParameter parameter) {
        return latest(parameter, WaterTest.Point.TAP).or(() -> latest(parameter, WaterTest.Point.SOURCE));
    }

    /** E. coli was tested, in the tank or at the tap, and the result still counts. */
    public boolean sourceTested() {
        return latest(TestParameter.E_COLI).isPresent();
    }

    /** The latest result of this parameter counts and lies within its limit. */
    public boolean proves(TestParameter parameter) {
        return latest(parameter).filter(this::within).isPresent();
    }

    public boolean within(WaterTest test) {
        return test.withinLimit(limit(test.parameter()));
    }

    /** Latest results outside their limits. */
    public List<WaterTest> bad() {
        return Arrays.stream(TestParameter.values())
                .flatMap(parameter -> Arrays.stream(WaterTest.Point.values())
                        .flatMap(point -> latest(parameter, point).stream()))
                .filter(test -> !within(test)).toList();
    }

    private boolean counts(WaterTest test) {
        return !test.date().isAfter(on) && !test.date().isBefore(on.minusDays(validDays));
    }
}
