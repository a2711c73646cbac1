package org.roofspring.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;

/** Runs other programs. */
final class Programs {

    private Programs() {
    }

    /** Standard output of a program. */
    static String run(List<String> command) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start();
        String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
        int status = process.waitFor();
        if (status != 0) {
            throw new IOException(String.join(" ", command) + " ended with status " + status);
        }
        return output;
    }

    /** Whether a program starts and ends well. */
    static boolean works(List<String> command) throws InterruptedException {
        try {
            return new ProcessBuilder(command).redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD).start().waitFor() == 0;
        } catch (IOException e) {
            return false; // there is no such program
        }
    }

    /** Compiles a C source; gives the program. */
    static Path compile(Path source, Path program) throws IOException, InterruptedException {
        run(List.of("gcc", "-O3", "-march=native", "-ffast-math", "-o", program.toString(), source.toString(), "-lm"));
        return program;
    }
}
