package org.roofspring.cli.internal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Writes a file whole or not at all, and over another only when that was asked for. */
final class WholeFile {
    private WholeFile() {
    }

    /** Refuses a file that is there already, unless it may be overwritten. */
    static void check(Path path, boolean force) {
        if (Files.exists(path) && !force) {
            throw new Failures.BadInputException(path + " is there already; --force overwrites it");
        }
    }

    static void write(Path path, byte[] content) throws IOException {
        // not a temporary file of the platform: those can be read by their owner alone
        Path part = path.resolveSibling("." + path.getFileName() + ".part");
        try {
            Files.write(part, content);
            Files.move(part, path, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            Files.deleteIfExists(part);
        }
    }
}
