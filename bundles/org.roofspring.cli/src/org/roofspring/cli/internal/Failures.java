package org.roofspring.cli.internal;

import java.io.IOException;
import java.util.Set;
import java.util.concurrent.CancellationException;

import org.roofspring.quantity.QuantityException;

import picocli.CommandLine;

/** Turns whatever went wrong into one sentence on standard error and an exit status. */
public final class Failures {
    public static final int INTERNAL = 1;
    public static final int BAD_INPUT = 2;
    public static final int NO_ANSWER = 3;

    private Failures() {
    }

    /** Input that is wrong: names where, what, and what is accepted. */
    static final class BadInputException extends RuntimeException {
        private static final long serialVersionUID = 1L;

        BadInputException(String message) {
            super(message);
        }

        BadInputException(String message, Throwable cause) {
            super(message, cause);
        }
    }

    /** Sound input without an answer: says why. */
    static final class NoAnswerException extends RuntimeException {
        private static final long serialVersionUID = 1L;

        NoAnswerException(String message) {
            super(message);
        }
    }

    /** Wrong usage. */
    public static int usage(CommandLine.ParameterException e, String[] arguments) {
        CommandLine command = e.getCommandLine();
        say(command, wrong(e) + suggestion(e) + " (see " + command.getCommandSpec().qualifiedName() + " --help)");
        return BAD_INPUT;
    }

    private static String wrong(CommandLine.ParameterException e) {
        if (!(e instanceof CommandLine.UnmatchedArgumentException unmatched) || unmatched.isUnknownOption()) {
            return e.getMessage().replaceFirst("^Error: ", "");
        }
        Set<String> commands = e.getCommandLine().getSubcommands().keySet();
        String given = "\"" + unmatched.getUnmatched().get(0) + "\" is ";
        return commands.isEmpty() ? given + "one argument too many"
                : given + "not a command; accepted are " + String.join(", ", commands);
    }

    private static String suggestion(CommandLine.ParameterException e) {
        if (e instanceof CommandLine.UnmatchedArgumentException unmatched && !unmatched.getSuggestions().isEmpty()) {
            return "; did you mean " + unmatched.getSuggestions().get(0) + "?";
        }
        return "";
    }

    /** A failure while a command ran. */
    public static int execution(Exception e, CommandLine command, CommandLine.ParseResult result) {
        boolean trace = command.getCommandSpec().root().userObject() instanceof RootCommand root && root.trace();
        if (trace) {
            e.printStackTrace(command.getErr());
        }
        if (e instanceof NoAnswerException) {
            say(command, e.getMessage());
            return NO_ANSWER;
        }
        if (e instanceof BadInputException || e instanceof QuantityException || e instanceof IllegalArgumentException
                || e instanceof IOException) {
            say(command, e.getMessage() == null ? e.toString() : e.getMessage());
            return BAD_INPUT;
        }
        if (e instanceof CancellationException) {
            say(command, "Cancelled.");
            return INTERNAL;
        }
        say(command, "Internal fault: " + e + (trace ? "" : " (run again with --trace and report it)"));
        return INTERNAL;
    }

    private static void say(CommandLine command, String message) {
        command.getErr().println(message.replaceAll("\\s*\\R\\s*", " "));
    }
}
