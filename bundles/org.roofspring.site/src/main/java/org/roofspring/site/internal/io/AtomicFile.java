package org.roofspring.site.internal.io;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;

import org.roofspring.site.io.SiteFileException;

/** Replaces a file whole or not at all: a new file beside it is written, forced to disk and renamed over it. */
public final class AtomicFile {
    private AtomicFile() {
    }

    /**
     * Writes the bytes as the content of the file.
     *
     * @throws SiteFileException when the disk refuses; the old file is then as it was
     */
    public static void write(Path file, byte[] bytes) throws SiteFileException {
        Path target = file.toAbsolutePath();
        Path temporary = null;
        try {
            if (Files.exists(target)) {
                target = target.toRealPath();
            }
            if (Files.isDirectory(target)) {
                throw new SiteFileException(file + " is a folder; name a file in it, such as "
                        + file.resolve("my.site"));
            }
            temporary = Files.createTempFile(target.getParent(), ".", ".site.tmp");
            writeForced(temporary, bytes);
            copyPermissions(target, temporary);
            rename(temporary, target);
            temporary = null;
            forceFolder(target.getParent());
        } catch (SiteFileException e) {
            throw e;
        } catch (IOException e) {
            throw new SiteFileException(file + " could not be written: " + reason(e, target.getParent()), e);
        } finally {
            delete(temporary);
        }
    }

    private static String reason(IOException e, Path folder) {
        if (e instanceof NoSuchFileException) {
            return "the folder " + folder + " does not exist";
        }
        if (e instanceof AccessDeniedException) {
            return "no permission to write in " + folder;
        }
        return e.getMessage() == null ? e.toString() : e.getMessage();
    }

    private static void writeForced(Path file, byte[] bytes) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            ByteBuffer buffer = ByteBuffer.wrap(bytes);
            while (buffer.hasRemaining()) {
                channel.write(buffer);
            }
            channel.force(true);
        }
    }

    /** The temporary file is readable by its owner alone; the new file shall be as readable as the old one was. */
    private static void copyPermissions(Path old, Path temporary) throws IOException {
        PosixFileAttributeView view = Files.getFileAttributeView(temporary, PosixFileAttributeView.class);
        if (view != null) {
            Path model = Files.exists(old) ? old : freshFile(old.getParent());
            try {
                view.setPermissions(Files.getPosixFilePermissions(model));
            } finally {
                if (model != old) {
                    Files.delete(model);
                }
            }
        }
    }

    /** An empty file made the ordinary way, so that it has the permissions that the person wants for new files. */
    private static Path freshFile(Path folder) throws IOException {
        return Files.createFile(folder.resolve("." + System.nanoTime() + ".site.tmp"));
    }

    private static void rename(Path temporary, Path target) throws IOException {
        try {
            Files.move(temporary, target, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(temporary, target, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    /** Makes the rename last through a power cut; systems that cannot open a folder do it by themselves. */
    private static void forceFolder(Path folder) throws IOException {
        if (Files.getFileAttributeView(folder, PosixFileAttributeView.class) != null) {
            try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
                channel.force(true);
            }
        }
    }

    private static void delete(Path temporary) throws SiteFileException {
        if (temporary != null) {
            try {
                Files.deleteIfExists(temporary);
            } catch (IOException e) {
                throw new SiteFileException(temporary + " was left behind and could not be deleted", e);
            }
        }
    }
}
