package org.roofspring.cli.tests;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;

/** Files that come with the sources. */
final class DemoData {
    private DemoData() {
    }

    /** The real four-year record; its origin stands in the README beside it. */
    static Path realRain() {
        return file("rain/real/seattle-weather.csv");
    }

    /** An invented record of forty years. */
    static Path inventedRain() {
        return file("rain/upland-40y.csv");
    }

    /** An invented site: {@code hill-school} or {@code household}. */
    static Path site(String name) {
        return file(name + ".site");
    }

    private static Path file(String name) {
        String folder = System.getProperty("roofspring.demo-data");
        assertTrue(folder != null, "the system property roofspring.demo-data must name the folder demo-data");
        Path file = Path.of(folder).resolve(name).normalize();
        assertTrue(Files.isReadable(file), () -> file + " cannot be read");
        return file;
    }
}
