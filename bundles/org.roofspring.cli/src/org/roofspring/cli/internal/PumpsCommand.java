package org.roofspring.cli.internal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.roofspring.calc.Outcome;
import org.roofspring.calc.standard.answer.PumpsAnswer;
import org.roofspring.hydraulics.pump.PumpCurve;
import org.roofspring.hydraulics.pump.PumpFile;
import org.roofspring.hydraulics.pump.PumpSet;
import org.roofspring.hydraulics.pump.SystemCurve;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Many pumps side by side on one pipe run. */
@Command(name = "pumps", description = "Compares candidates for a pump on one rising main.")
public final class PumpsCommand extends AnswerCommand {
    @Parameters(paramLabel = "CANDIDATES",
            description = "a folder of pump files as for duty, or one CSV of many pumps with a column named pump")
    private Path candidates;

    @Mixin
    private LineOptions line;

    @Override
    Outcome answer() throws IOException {
        SystemCurve system = line.system();
        List<PumpSet> sets = new ArrayList<>();
        for (Path file : files()) {
            for (PumpCurve curve : PumpFile.readAll(file)) {
                sets.add(line.arranged(curve));
            }
        }
        return PumpsAnswer.of(sets, system);
    }

    /** The file itself, or the pump files of the folder in the order of their names. */
    private List<Path> files() throws IOException {
        if (!Files.isDirectory(candidates)) {
            return List.of(InputFiles.existing("file of candidates", candidates));
        }
        try (Stream<Path> inside = Files.list(candidates)) {
            List<Path> files = inside.filter(file -> file.getFileName().toString().toLowerCase(java.util.Locale.ROOT)
                    .endsWith(".csv") && Files.isRegularFile(file)).sorted().toList();
            if (files.isEmpty()) {
                throw new Failures.BadInputException("The folder " + candidates + " holds no file that ends in .csv; pump"
                        + " files such as for duty --pump are accepted");
            }
            return files;
        }
    }
}
