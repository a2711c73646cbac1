package org.roofspring.cli;

import java.io.PrintWriter;
import java.util.Objects;

import org.roofspring.calc.engine.CalculationRegistry;
import org.roofspring.cli.internal.Failures;
import org.roofspring.cli.internal.RootCommand;

import picocli.CommandLine;

/** The command line as a function of its arguments; ends nothing and holds no state. */
public final class RoofspringCommandLine {
    private final CalculationRegistry registry;

    /** @param registry the calculations that {@code appraise} runs */
    public RoofspringCommandLine(CalculationRegistry registry) {
        this.registry = Objects.requireNonNull(registry);
    }

    /**
     * Runs one command.
     *
     * @param out receives the answer and nothing else
     * @param err receives messages
     * @return 0 done; 1 internal fault; 2 wrong usage or bad input; 3 sound input without an answer
     */
    public int run(String[] arguments, PrintWriter out, PrintWriter err) {
        CommandLine line = new CommandLine(new RootCommand(), new CommandFactory(registry));
        line.setOut(out);
        line.setErr(err);
        line.setParameterExceptionHandler(Failures::usage);
        line.setExecutionExceptionHandler(Failures::execution);
        line.setCaseInsensitiveEnumValuesAllowed(true);
        line.setUsageHelpLongOptionsMaxWidth(32);
        line.setUsageHelpWidth(110);
        // a file whose name begins with @ is a file, not a list of arguments
        line.setExpandAtFiles(false);
        int status = line.execute(arguments);
        out.flush();
        err.flush();
        return status;
    }

    /** Hands the registry to the one command that runs a whole site. */
    private record CommandFactory(CalculationRegistry registry) implements CommandLine.IFactory {
        @Override
        public <K> K create(Class<K> type) throws Exception {
            try {
                return type.getConstructor(CalculationRegistry.class).newInstance(registry);
            } catch (NoSuchMethodException e) {
                return CommandLine.defaultFactory().create(type);
            }
        }
    }
}
