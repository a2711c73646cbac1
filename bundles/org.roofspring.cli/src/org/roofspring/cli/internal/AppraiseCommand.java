package org.roofspring.cli.internal;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;

import org.roofspring.calc.engine.CalculationRegistry;
import org.roofspring.calc.engine.CalculationRunner;
import org.roofspring.calc.engine.SiteResults;
import org.roofspring.site.Site;
import org.roofspring.site.io.SiteFileException;
import org.roofspring.site.io.SiteFiles;
import org.roofspring.site.snapshot.SiteSnapshot;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Every calculation that applies to a site. */
@Command(name = "appraise", description = "Runs every calculation that applies to a site, prints the answer and writes result files.")
public final class AppraiseCommand implements Callable<Integer> {
    private final CalculationRegistry registry;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "SITE", description = "a .site file")
    private Path file;

    @Option(names = "--out", paramLabel = "DIR", description = "folder for the result files; made if it is not there")
    private Path out;

    @Option(names = "--format", split = ",", defaultValue = "json",
            description = "of the result files: json, csv (every table), html and pdf (the design report) [${DEFAULT-VALUE}]")
    private List<String> formats;

    @Option(names = "--json", description = "write one JSON object and nothing else")
    private boolean json;

    @Option(names = "--date", paramLabel = "YYYY-MM-DD", converter = DayOption.class,
            description = "day of the design report [today]")
    private LocalDate date;

    @Option(names = "--force", description = "overwrite result files")
    private boolean force;

    public AppraiseCommand(CalculationRegistry registry) {
        this.registry = registry;
    }

    @Override
    public Integer call() throws IOException {
        ResultFiles files = out == null ? null : new ResultFiles(out, formats, force);
        Site site;
        try {
            site = SiteFiles.load(InputFiles.existing("site file", file));
        } catch (SiteFileException e) {
            throw new Failures.BadInputException(e.getMessage(), e);
        }
        if (files != null) {
            files.warmUp();
        }
        Path folder = file.toAbsolutePath().getParent();
        SiteSnapshot snapshot = SiteSnapshot.of(site, 1, folder);
        SiteResults results = new CalculationRunner(registry).run(snapshot);
        if (files != null) {
            files.write(snapshot, results, date == null ? LocalDate.now() : date);
        }
        spec.commandLine().getOut().println(json ? AppraisalJson.write(site, results) : AppraisalText.write(site, results));
        return 0;
    }
}
