package org.roofspring.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.Modifier;
import java.net.URI;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

import org.roofspring.calc.Calculation;
import org.roofspring.calc.CalculationInfo;
import org.roofspring.calc.engine.CalculationRegistry;
import org.roofspring.calc.engine.CalculationRunner;
import org.roofspring.calc.engine.SiteResults;
import org.roofspring.calc.standard.StorageBalanceCalculation;
import org.roofspring.quantity.UnitSystem;
import org.roofspring.site.io.SiteFiles;
import org.roofspring.site.snapshot.SiteSnapshot;

/** A demonstration site with all built-in calculations, computed once for all tests. */
record DemoReport(SiteSnapshot snapshot, SiteResults results, ReportDocument document, String html, byte[] pdf) {
    static final LocalDate DAY = LocalDate.of(2026, 1, 31);
    private static final Map<String, DemoReport> KNOWN = new ConcurrentHashMap<>();

    static DemoReport of(String name) {
        return KNOWN.computeIfAbsent(name, DemoReport::compute);
    }

    static ReportSettings settings() {
        return new ReportSettings(DAY, UnitSystem.METRIC, "0.1.0");
    }

    private static DemoReport compute(String name) {
        try {
            Path file = Path.of(System.getProperty("roofspring.demo-data", "../../demo-data")).resolve(name + ".site");
            SiteSnapshot snapshot = SiteSnapshot.of(SiteFiles.load(file), 1, file.getParent());
            CalculationRegistry registry = new CalculationRegistry();
            calculations().forEach(registry::add);
            SiteResults results = new CalculationRunner(registry).run(snapshot);
            ReportDocument document = DesignReport.build(snapshot, results, settings());
            return new DemoReport(snapshot, results, document, HtmlReport.write(document), PdfReport.write(document));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Every calculation of the standard bundle, so that one that is added later is in the test without a change. */
    private static List<Calculation> calculations() throws IOException {
        List<Calculation> calculations = new ArrayList<>();
        Class<?> known = StorageBalanceCalculation.class;
        URI place = URI.create(known.getResource(known.getSimpleName() + ".class").toString());
        if (place.getScheme().equals("jar")) {
            try (FileSystem jar = FileSystems.newFileSystem(place, Map.of())) {
                addFrom(jar.getPath("org/roofspring/calc/standard"), calculations);
            }
        } else {
            addFrom(Path.of(place).getParent(), calculations);
        }
        return calculations;
    }

    private static void addFrom(Path folder, List<Calculation> calculations) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            for (String name : files.map(file -> file.getFileName().toString())
                    .filter(n -> n.matches("\\w+Calculation\\.class"))
                    .sorted().toList()) {
                Class<?> type = Class.forName("org.roofspring.calc.standard." + name.replace(".class", ""));
                if (Calculation.class.isAssignableFrom(type) && !Modifier.isAbstract(type.getModifiers())
                        && type.isAnnotationPresent(CalculationInfo.class)) {
                    calculations.add((Calculation) type.getConstructor().newInstance());
                }
            }
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }
}
