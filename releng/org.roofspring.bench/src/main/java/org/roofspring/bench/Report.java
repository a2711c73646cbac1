package org.roofspring.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Notes are printed at once, to standard error; results at the end, to standard output. */
final class Report {

    private final List<String> results = new ArrayList<>();

    void note(String text) {
        System.err.println(text);
    }

    void figure(String name, double value, String unit) {
        results.add(String.format(Locale.ROOT, "figure %s %.4g %s", name, value, unit));
    }

    void ratio(String name, double value) {
        results.add(String.format(Locale.ROOT, "ratio %s %.3f", name, value));
    }

    void print() {
        results.forEach(System.out::println);
    }
}
