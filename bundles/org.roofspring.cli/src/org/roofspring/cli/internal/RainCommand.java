package org.roofspring.cli.internal;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.roofspring.calc.Outcome;
import org.roofspring.calc.standard.answer.AnswerBuilder;
import org.roofspring.calc.standard.answer.RainAnswer;
import org.roofspring.rain.MissingRainException;
import org.roofspring.rain.RainReading;
import org.roofspring.rain.RainRecord;
import org.roofspring.rain.RainStatistics;
import org.roofspring.rain.SynthesisComparison;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What a rain record says, as it is or changed, and how far synthetic rain fitted to it can be trusted. */
@Command(name = "rain", description = "Reads a rain record, reports its quality and its statistics; mends, scales or "
        + "stresses it, and sets synthetic rain beside it.")
public final class RainCommand extends AnswerCommand {
    @Parameters(paramLabel = "FILE", description = "GHCN-Daily .dly or station CSV, or a CSV with a date and a depth "
            + "column")
    private Path file;

    @Mixin
    private RainOptions options;

    @Mixin
    private RainChanges changes;

    @Option(names = "--synthetic", paramLabel = "REPEATS", description = "fit synthetic rain, invent the span of the "
            + "record so many times, 20 to 10000, and compare; 100 gives steady limits")
    private Integer synthetic;

    @Option(names = "--seed", defaultValue = "1", description = "of the synthetic rain [${DEFAULT-VALUE}]")
    private long seed;

    @Option(names = "--write", paramLabel = "FILE", description = "write the days, as changed, as a CSV that every "
            + "command reads")
    private Path write;

    @Option(names = "--force", description = "overwrite the file of --write")
    private boolean force;

    @Override
    Outcome answer() throws IOException {
        if (write != null) {
            WholeFile.check(write, force);
        }
        if (synthetic != null && (synthetic < 20 || synthetic > 10_000)) {
            throw new Failures.BadInputException("--synthetic is " + synthetic + "; 20 to 10000 is accepted");
        }
        RainReading reading = options.read(file);
        try {
            List<String> done = new ArrayList<>();
            RainRecord record = changes.apply(reading.record(), options, done);
            AnswerBuilder answer = new AnswerBuilder(null)
                    .include(RainAnswer.of(null, RainStatistics.of(record), reading.quality()));
            if (changes.any()) {
                answer.text("origin", "What was done to the rain", String.join(" ", done));
            }
            if (synthetic != null) {
                RainAnswer.synthesis(answer, SynthesisComparison.of(record, synthetic, seed, () -> false));
            }
            if (write != null) {
                WholeFile.write(write, csv(record).getBytes(StandardCharsets.UTF_8));
            }
            return answer.build();
        } catch (MissingRainException e) {
            return new Outcome.NotComputable(new Outcome.Problem(e.getMessage()));
        }
    }

    private static String csv(RainRecord record) {
        StringBuilder csv = new StringBuilder(CsvText.row("date", "precipitation[mm]"));
        for (int day = 0; day < record.days(); day++) {
            csv.append(CsvText.row(record.date(day).toString(),
                    record.isMissing(day) ? "" : Double.toString(record.depthMm(day))));
        }
        return csv.toString();
    }
}
