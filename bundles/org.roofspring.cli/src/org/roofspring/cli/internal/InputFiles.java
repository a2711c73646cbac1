package org.roofspring.cli.internal;

import java.nio.file.Files;
import java.nio.file.Path;

/** Says in one sentence that a file to read is not there. */
final class InputFiles {
    private InputFiles() {
    }

    static Path existing(String what, Path file) {
        if (Files.isDirectory(file)) {
            throw new Failures.BadInputException("The " + what + " " + file + " is a folder; a file is needed");
        }
        if (!Files.exists(file)) {
            throw new Failures.BadInputException("There is no " + what + " " + file);
        }
        if (!Files.isReadable(file)) {
            throw new Failures.BadInputException("The " + what + " " + file + " cannot be read; check its permissions");
        }
        return file;
    }
}
