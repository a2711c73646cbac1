package org.roofspring.site.internal.io;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Path;

/** Replaces a file whole or not at all: a new file beside it is written, forced to disk and renamed over it. */
final class AtomicFile {
    private final Disk disk;

    AtomicFile(Disk disk) {
        this.disk = disk;
    }

    /**
     * Writes the bytes as the content of the file and returns when they are on the disk.
     *
     * @param file  by its real path
     * @param model the file whose permissions it gets
     * @return whether the drive replaced it in one instant; if not, a power cut could have left no file
     * @throws IOException when the disk refuses; the old file is then as it was
     */
    boolean write(Path file, Path model, byte[] bytes) throws IOException {
        Path folder = file.getParent();
        Path temporary = disk.create(folder, prefix(file));
        boolean done = false;
        try {
            disk.write(temporary, bytes);
            disk.copyPermissions(model, temporary);
            disk.force(temporary);
            boolean atomic = rename(temporary, file);
            done = true;
            disk.forceFolder(folder);
            return atomic;
        } catch (IOException e) {
            if (!done) {
                discard(temporary, e);
            }
            throw e;
        }
    }

    /** How the temporary files of a file begin. */
    static String prefix(Path file) {
        return "." + file.getFileName() + ".";
    }

    private boolean rename(Path temporary, Path file) throws IOException {
        try {
            disk.rename(temporary, file);
            return true;
        } catch (AtomicMoveNotSupportedException e) {
            disk.replace(temporary, file);
            return false;
        }
    }

    private void discard(Path temporary, IOException why) {
        try {
            disk.delete(temporary);
        } catch (IOException e) {
            why.addSuppressed(e);
        }
    }
}
