package org.roofspring.cli.internal;

import java.io.IOException;
import java.util.concurrent.Callable;

import org.roofspring.calc.Outcome;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** A command that asks one question and writes the answer as a table or as JSON. */
@Command
abstract class AnswerCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Option(names = "--json", description = "write one JSON object and nothing else")
    private boolean json;

    /** Works the answer out from the options. */
    abstract Outcome answer() throws IOException;

    /** The name in the JSON object. */
    String calculation() {
        String name = spec.qualifiedName(" ");
        return name.substring(name.indexOf(' ') + 1);
    }

    /** What people call an element, for the table. */
    String name(String elementId) {
        return elementId;
    }

    CommandSpec spec() {
        return spec;
    }

    boolean json() {
        return json;
    }

    /** The answer as it is printed. */
    String written(Outcome.Completed completed) {
        return json ? AnswerJson.write(calculation(), completed) : AnswerTable.write(completed, this::name);
    }

    @Override
    public final Integer call() throws IOException {
        switch (answer()) {
            case Outcome.Completed completed -> {
                spec.commandLine().getOut().println(written(completed));
                return 0;
            }
            case Outcome.NotComputable none -> throw new Failures.NoAnswerException(
                    String.join(" ", none.problems().stream().map(Outcome.Problem::text).toList()));
        }
    }
}
