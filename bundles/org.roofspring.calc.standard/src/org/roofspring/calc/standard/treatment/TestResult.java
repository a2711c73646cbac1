package org.roofspring.calc.standard.treatment;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;

import org.roofspring.site.NamedElement;
import org.roofspring.site.WaterParameter;
import org.roofspring.treatment.safety.TestLimit;
import org.roofspring.treatment.safety.TestParameter;

/**
 * A test or reading of the site, in the unit its limit is stated in.
 *
 * @param element    where it was taken; null where that is not said
 * @param parameter  what was looked for
 * @param known      the same in the kernel, where the kernel knows it
 * @param label      of the parameter, in running text
 * @param unit       of value and limit; empty for a pure number or a count
 * @param value      empty where the unit cannot be read
 * @param asWritten  value and unit as entered
 * @param limit      that it is held against; empty where there is none
 * @param date       of the sample; null where it is not given
 * @param laboratory who tested
 * @param problem    why the result cannot be judged; empty where it can
 */
record TestResult(NamedElement element, WaterParameter parameter, Optional<TestParameter> known, String label,
        String unit, OptionalDouble value, String asWritten, Optional<TestLimit> limit, LocalDate date,
        String laboratory, Optional<String> problem) {

    /** A date and a value that can be read. */
    boolean readable() {
        return value.isPresent() && date != null;
    }

    /** Within the limit; empty where it cannot be judged. */
    Optional<Boolean> within() {
        return readable() && limit.isPresent() ? Optional.of(limit.get().allows(value.getAsDouble()))
                : Optional.empty();
    }
}
