package org.roofspring.ui.parts.storage;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;

import org.roofspring.quantity.QuantityFormat;
import org.roofspring.ui.look.DateTicks;

/**
 * An axis: what it measures and in which unit, from where to where, and its marks.
 *
 * @param title with the unit in brackets
 * @param from  value at its begin
 * @param to    value at its end; greater than {@code from}
 * @param ticks marks, no more than there is room for
 */
record Axis(String title, double from, double to, IntFunction<List<Tick>> ticks) {

    /** A mark. */
    record Tick(double at, String label) {
    }

    /** Marks at round numbers. */
    static Axis linear(String title, double from, double to, QuantityFormat format) {
        return new Axis(title, from, to, most -> {
            double step = step((to - from) / Math.max(1, most));
            List<Tick> ticks = new ArrayList<>();
            for (double i = Math.ceil(from / step - 1e-9); i * step <= to + step * 1e-9; i++) {
                ticks.add(new Tick(i * step, format.number(i * step)));
            }
            return ticks;
        });
    }

    /** The least of 1, 2 and 5 times a power of ten that is not below a width. */
    private static double step(double least) {
        double power = Math.pow(10, Math.floor(Math.log10(least)));
        for (int factor : new int[] { 1, 2, 5 }) {
            if (factor * power >= least * (1 - 1e-9)) {
                return factor * power;
            }
        }
        return 10 * power;
    }

    /** Days from a date on, marked at the first days of weeks, months or years. */
    static Axis dates(LocalDate first, int days) {
        return new Axis("Date", 0, days, most -> DateTicks.of(first, 0, days, Math.max(1, most)).stream()
                .map(tick -> new Tick(tick.day(), tick.label())).toList());
    }

    /** Where a value lies, in pixels between two ends. */
    int pixel(double value, int start, int end) {
        return (int) Math.round(start + (value - from) / (to - from) * (end - start));
    }
}
