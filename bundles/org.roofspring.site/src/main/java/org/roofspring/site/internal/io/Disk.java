package org.roofspring.site.internal.io;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Path;

/**
 * The single steps that saving takes on a disk. Between any two of them the power may go or the program be killed,
 * which tests do on purpose.
 */
public interface Disk {
    /** The content of a file, up to the limit; null when there is no such file. */
    byte[] read(Path file, int limit) throws IOException;

    /** Makes an empty file of a new name that begins so, readable by its owner alone. */
    Path create(Path folder, String prefix) throws IOException;

    /** Fills a file; the bytes may still be in memory only. */
    void write(Path file, byte[] bytes) throws IOException;

    /** Makes one file as readable as another is; as any new file where the other does not exist. */
    void copyPermissions(Path model, Path file) throws IOException;

    /** Returns when the content of the file is on the disk. */
    void force(Path file) throws IOException;

    /** Gives a file the name of another, which is gone in the same instant. */
    void rename(Path from, Path to) throws IOException, AtomicMoveNotSupportedException;

    /** As {@link #rename} on a drive that cannot do it in one instant. */
    void replace(Path from, Path to) throws IOException;

    /** Returns when the names in the folder are on the disk. */
    void forceFolder(Path folder) throws IOException;

    /** Deletes a file if it is there. */
    void delete(Path file) throws IOException;

    /** Deletes files whose names begin so and that a save which was cut off more than an hour ago has left behind. */
    void deleteLeftovers(Path folder, String prefix) throws IOException;
}
