package org.roofspring.treatment.safety;

import java.time.LocalDate;

import org.roofspring.treatment.internal.Checks;

/**
 * A test result.
 *
 * @param parameter  what was measured
 * @param value      in the parameter's unit, 0 to 1e9
 * @param date       of the sample
 * @param laboratory who tested it; "own kit" for a test at home
 * @param point      where the sample was drawn
 */
public record WaterTest(TestParameter parameter, double value, LocalDate date, String laboratory, Point point) {

    /** Where a sample is drawn. */
    public enum Point {
        /** In the tank, before treatment. */
        SOURCE,
        /** Where the water is used, behind the train. */
        TAP
    }

    public WaterTest {
        Checks.present("parameter", parameter);
        Checks.within(parameter.label() + " (value)", value, 0, 1e9, parameter.unit());
        Checks.present("date", date);
        Checks.text("laboratory", laboratory);
        Checks.present("point", point);
    }

    /** Judged by the default limit. */
    public boolean withinLimit() {
        return withinLimit(parameter.defaultLimit());
    }

    public boolean withinLimit(TestLimit limit) {
        return limit.allows(value);
    }

    /** One line: "lead 0.02 mg/L on 2025-03-01 by ...". */
    public String text() {
        String behind = parameter.unit().isEmpty() ? "" : " " + parameter.unit();
        return parameter.label() + " " + Checks.shown(value) + behind + " on " + date + " by " + laboratory
                + (point == Point.SOURCE ? ", in the tank" : ", at the tap");
    }
}
