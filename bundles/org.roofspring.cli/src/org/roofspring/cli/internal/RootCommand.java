package org.roofspring.cli.internal;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/** The command without a subcommand: says what there is. */
@Command(name = "roofspring",
        description = "Engineering for living on rain from your own roof. Values carry units, such as 1.2L/s or 41.8mm.",
        synopsisSubcommandLabel = "COMMAND",
        subcommands = { RainCommand.class, StorageCommand.class, SizeCommand.class, SurfaceCommand.class,
                DaysLeftCommand.class, IntensityCommand.class,
                GutterCommand.class, FirstFlushCommand.class, PipeCommand.class, DutyCommand.class,
                PumpsCommand.class, GravityCommand.class, DisinfectCommand.class, TrainCommand.class,
                EconomyCommand.class, StagesCommand.class, UpkeepCommand.class, AppraiseCommand.class },
        footer = { "", "Exit status: 0 done; 1 internal fault; 2 wrong usage or bad input; 3 sound input without an answer." })
public final class RootCommand implements Runnable {
    @Spec
    private CommandSpec spec;

    @Option(names = "--trace", scope = ScopeType.INHERIT, description = "show the stack trace of a failure")
    private boolean trace;

    @Option(names = { "-h", "--help" }, usageHelp = true, scope = ScopeType.INHERIT, description = "show this help")
    private boolean help;

    boolean trace() {
        return trace;
    }

    @Override
    public void run() {
        throw new CommandLine.ParameterException(spec.commandLine(), "A command is missing: " + String.join(", ", spec.subcommands().keySet()));
    }
}
