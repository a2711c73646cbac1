package org.roofspring.cli.internal;

import java.io.IOException;
import java.nio.file.Path;

import org.roofspring.calc.Outcome;
import org.roofspring.calc.standard.answer.DutyAnswer;
import org.roofspring.hydraulics.pump.PumpFile;
import org.roofspring.hydraulics.pump.PumpSet;
import org.roofspring.hydraulics.pump.SystemCurve;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Where a pump settles on a pipe run. */
@Command(name = "duty", description = "Duty point of a pump on a rising main.")
public final class DutyCommand extends AnswerCommand {
    @Option(names = "--pump", required = true, paramLabel = "FILE",
            description = "CSV with units in the header, such as flow[L/s],head[m],efficiency[%%],npshr[m]")
    private Path pump;

    @Mixin
    private LineOptions line;

    @Override
    Outcome answer() throws IOException {
        SystemCurve system = line.system();
        PumpSet pumps = line.arranged(PumpFile.read(InputFiles.existing("pump file", pump)));
        return DutyAnswer.of(null, pumps, system);
    }
}
