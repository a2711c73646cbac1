package org.roofspring.arch;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.SortedMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.jar.Manifest;
import java.util.stream.Stream;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;

/** The built bundles of this checkout: their class files and manifests. */
final class Bundles {
    static final List<String> KERNELS = List.of("quantity", "rain", "storage", "hydraulics", "drainage", "treatment", "economy");
    static final List<String> HEADLESS = List.of("site", "site.edit", "calc", "calc.testkit", "kernel.testkit", "calc.standard", "calc.engine", "drawing", "report", "icalendar", "cli");
    static final List<String> SCREEN = List.of("ui", "ui.parts", "ui.treatment", "ui.pumps", "help");

    private static final Map<List<String>, JavaClasses> IMPORTED = new ConcurrentHashMap<>();
    private static final Path FOLDER = Path.of("..").toAbsolutePath().normalize();

    private Bundles() {
    }

    /** Bundles that are built in this checkout, without tests and examples; name without the common prefix. */
    static SortedMap<String, Path> built() {
        SortedMap<String, Path> bundles = new TreeMap<>();
        try (Stream<Path> folders = Files.list(FOLDER)) {
            folders.filter(folder -> folder.getFileName().toString().startsWith("org.roofspring."))
                    .filter(folder -> !folder.getFileName().toString().endsWith(".tests"))
                    .filter(folder -> Files.isDirectory(folder.resolve("target/classes")))
                    .forEach(folder -> bundles.put(folder.getFileName().toString().substring("org.roofspring.".length()), folder));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bundles;
    }

    /** Class files of bundles; reading them is slow, so each set is read once. */
    static JavaClasses classes(List<String> names) {
        return IMPORTED.computeIfAbsent(names, Bundles::imported);
    }

    private static JavaClasses imported(List<String> names) {
        List<Path> paths = built().entrySet().stream().filter(bundle -> names.contains(bundle.getKey()))
                .map(bundle -> bundle.getValue().resolve("target/classes")).toList();
        return new ClassFileImporter().importPaths(paths);
    }

    static Manifest manifest(Path folder) {
        Path written = folder.resolve("META-INF/MANIFEST.MF");
        Path generated = folder.resolve("target/classes/META-INF/MANIFEST.MF");
        try (InputStream in = Files.newInputStream(Files.exists(written) ? written : generated)) {
            return new Manifest(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
