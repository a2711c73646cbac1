package org.roofspring.cli.internal;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Gathers the ways of disinfection; answers nothing itself. */
@Command(name = "disinfect", description = "Doses, contact and times of disinfection.",
        synopsisSubcommandLabel = "METHOD",
        subcommands = { ChlorineCommand.class, UvCommand.class, BoilCommand.class, SolarCommand.class })
public final class DisinfectCommand implements Runnable {
    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        throw new CommandLine.ParameterException(spec.commandLine(),
                "A method is missing: " + String.join(", ", spec.subcommands().keySet()));
    }
}
