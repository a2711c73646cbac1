package org.roofspring.cli.internal;

import java.io.IOException;
import java.nio.file.Path;

import org.roofspring.calc.Outcome;
import org.roofspring.calc.standard.GravitySupplyCalculation;

import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** What every tap of a site gets. */
@Command(name = "gravity", description = "Flow and head at every tap of a site, the weakest tap, and the breaks of a school.")
public final class GravityCommand extends AnswerCommand {
    @Parameters(paramLabel = "SITE", description = "a .site file")
    private Path file;

    private SiteInput input;

    @Override
    String name(String elementId) {
        return input.name(elementId);
    }

    @Override
    Outcome answer() throws IOException {
        input = SiteInput.load(file);
        return input.outcome(new GravitySupplyCalculation());
    }
}
