package org.roofspring.cli.internal;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

import org.osgi.framework.Bundle;
import org.osgi.framework.FrameworkUtil;
import org.osgi.framework.Version;
import org.roofspring.calc.Finding;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.engine.CalculationResult;
import org.roofspring.calc.engine.SiteResults;
import org.roofspring.report.CsvReport;
import org.roofspring.report.DesignReport;
import org.roofspring.report.HtmlReport;
import org.roofspring.report.PdfReport;
import org.roofspring.report.ReportDocument;
import org.roofspring.report.ReportSettings;
import org.roofspring.site.snapshot.SiteSnapshot;

/** Result files of an appraisal; each is written whole or not at all, and none is overwritten unasked. */
final class ResultFiles {
    private static final List<String> FORMATS = List.of("json", "html", "pdf", "csv");
    private final Path folder;
    private final Set<String> formats;
    private final boolean force;

    ResultFiles(Path folder, List<String> formats, boolean force) {
        this.folder = folder;
        this.formats = new TreeSet<>(formats.stream().map(String::trim).toList());
        this.force = force;
        for (String format : this.formats) {
            if (!FORMATS.contains(format)) {
                throw new Failures.BadInputException("--format is \"" + format + "\"; " + String.join(", ", FORMATS) + " are accepted");
            }
        }
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            throw new Failures.BadInputException("--out " + folder + " is a file; a folder is needed");
        }
    }

    /** While the calculations run, another core can make ready what writing a report takes. */
    void warmUp() {
        if (formats.contains("html") || formats.contains("pdf")) {
            Thread thread = new Thread(DesignReport::warmUp, "report warm-up");
            thread.setDaemon(true);
            thread.start();
        }
    }

    /** @param date day of the design report */
    void write(SiteSnapshot snapshot, SiteResults results, LocalDate date) throws IOException {
        Map<Path, byte[]> contents = new LinkedHashMap<>();
        if (formats.contains("json")) {
            contents.put(folder.resolve("appraisal.json"), utf8(AppraisalJson.write(snapshot.site(), results) + "\n"));
        }
        if (formats.stream().anyMatch(format -> !format.equals("json"))) {
            ReportDocument report = DesignReport.build(snapshot, results,
                    new ReportSettings(date, AppraisalText.unitSystem(snapshot.site().getPreferredUnits()), productVersion()));
            addReport(report, results, contents);
        }
        for (Path path : contents.keySet()) {
            WholeFile.check(path, force);
        }
        Files.createDirectories(folder);
        for (Map.Entry<Path, byte[]> file : contents.entrySet()) {
            WholeFile.write(file.getKey(), file.getValue());
        }
    }

    private void addReport(ReportDocument report, SiteResults results, Map<Path, byte[]> contents) {
        if (formats.contains("html")) {
            contents.put(folder.resolve("report.html"), utf8(HtmlReport.write(report)));
        }
        if (formats.contains("pdf")) {
            contents.put(folder.resolve("report.pdf"), PdfReport.write(report));
        }
        if (formats.contains("csv")) {
            contents.put(folder.resolve("findings.csv"), utf8(findings(results)));
            results.results().forEach(result -> tables(result, contents));
            CsvReport.write(report).forEach((name, text) -> contents.put(folder.resolve("report." + name + ".csv"), utf8(text)));
        }
    }

    private static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    /** Version without the time of the build, so that the same sources write the same report. */
    private static String productVersion() {
        Bundle bundle = FrameworkUtil.getBundle(ResultFiles.class);
        if (bundle == null) {
            return "outside the framework";
        }
        Version version = bundle.getVersion();
        return version.getMajor() + "." + version.getMinor() + "." + version.getMicro();
    }

    private static String findings(SiteResults results) {
        StringBuilder csv = new StringBuilder(CsvText.row("calculation", "finding", "element", "title", "value", "unit"));
        for (CalculationResult result : results.results()) {
            result.completed().ifPresent(outcome -> {
                for (Finding finding : outcome.findings()) {
                    CsvText.value(finding.value()).ifPresent(value -> csv.append(CsvText.row(result.descriptor().id(),
                            finding.id(), finding.elementId() == null ? "" : finding.elementId(), finding.title(),
                            value.number(), value.unit())));
                }
            });
        }
        return csv.toString();
    }

    /** One file for each table, and one for each daily series. */
    private void tables(CalculationResult result, Map<Path, byte[]> contents) {
        result.completed().ifPresent(outcome -> {
            for (Finding finding : outcome.findings()) {
                Path path = folder.resolve(result.descriptor().id() + "." + finding.id()
                        + (finding.elementId() == null ? "" : "." + finding.elementId()) + ".csv");
                if (finding.value() instanceof FindingValue.Table table) {
                    contents.put(path, utf8(CsvText.table(table)));
                } else if (finding.value() instanceof FindingValue.Daily daily) {
                    contents.put(path, utf8(daily(daily)));
                }
            }
        });
    }

    private static String daily(FindingValue.Daily daily) {
        StringBuilder csv = new StringBuilder("date,value [" + daily.unit().symbol() + "]\n");
        for (int day = 0; day < daily.days(); day++) {
            csv.append(daily.firstDay().plusDays(day)).append(',').append(daily.value(day)).append('\n');
        }
        return csv.toString();
    }
}
