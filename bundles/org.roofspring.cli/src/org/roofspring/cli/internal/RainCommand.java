package org.roofspring.cli.internal;

import java.io.IOException;
import java.nio.file.Path;

import org.roofspring.calc.Outcome;
import org.roofspring.calc.standard.answer.RainAnswer;
import org.roofspring.rain.RainReading;
import org.roofspring.rain.RainStatistics;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** What a rain record says. */
@Command(name = "rain", description = "Reads a rain record, reports its quality and its statistics.")
public final class RainCommand extends AnswerCommand {
    @Parameters(paramLabel = "FILE", description = "GHCN-Daily .dly or station CSV, or a CSV with a date and a depth column")
    private Path file;

    @Mixin
    private RainOptions options;

    @Override
    Outcome answer() throws IOException {
        RainReading reading = options.read(file);
        return RainAnswer.of(null, RainStatistics.of(reading.record()), reading.quality());
    }
}
